using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Ashery.Solutions.Waters;

namespace Ashery.Exchange.Waters;

/// <summary>Writes a water file.</summary>
internal static class WaterFileWriter
{
    private static readonly JsonWriterOptions Look = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(WaterReport report)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Look))
        {
            Object(json, report);
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    /// <summary>The report as an object of another file.</summary>
    public static void Object(Utf8JsonWriter json, WaterReport report)
    {
        json.WriteStartObject();
        json.WriteString("id", report.Id);
        json.WriteString("name", report.Name);
        if (report.Note is { } note)
        {
            json.WriteString("note", note);
        }

        json.WriteStartObject("ions");
        foreach (var line in report.Lines)
        {
            Line(json, line);
        }

        json.WriteEndObject();
        Number(json, "pH", report.PH);
        if (report.Ec is { } ec)
        {
            Figure(json, "ec", ec.Value, ec.Unit == "mS/cm" ? null : ec.Unit, below: false);
            Number(json, "ecCelsius", ec.Celsius is 25 ? null : ec.Celsius);
        }

        Number(json, "celsius", report.Celsius);
        json.WriteEndObject();
    }

    private static void Line(Utf8JsonWriter json, WaterLine line) => Figure(json, line.Name, line.Value, line.Unit, line.Below);

    private static void Figure(Utf8JsonWriter json, string name, double value, string? unit, bool below)
    {
        if (unit is null)
        {
            Value(json, name, value, below);
            return;
        }

        json.WriteStartObject(name);
        Value(json, "value", value, below);
        json.WriteString("unit", unit);
        json.WriteEndObject();
    }

    private static void Value(Utf8JsonWriter json, string name, double value, bool below)
    {
        if (below)
        {
            json.WriteString(name, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"<{value:R}"));
        }
        else
        {
            json.WriteNumber(name, value);
        }
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } v)
        {
            json.WriteNumber(name, v);
        }
    }
}
