using System.Globalization;
using System.Text.Json;
using Ashery.Exchange.Json;
using Ashery.Problems;
using Ashery.Solutions.Waters;

namespace Ashery.Exchange.Waters;

/// <summary>Reads a water file by hand, so that every wrong field is named and a verb starts quickly.</summary>
internal sealed class WaterFileReader
{
    private const int LongestName = 120, LongestNote = 1000, MostLines = 60;

    private readonly List<Problem> problems = [];
    private readonly List<WaterLine> lines = [];
    private string? id, name, note;
    private double? pH, celsius;
    private WaterConductivity? ec;
    private double? ecCelsius;

    public Result<WaterReport> Read(string text)
    {
        if (text.Length > WaterFile.LongestText)
        {
            return Result.Fail<WaterReport>("water", "The text is longer than 256 kB; no water report is.", "Check that it is the right file.");
        }

        if (HalfSigns.In(text, "water") is { } half)
        {
            return Result.Fail<WaterReport>(half);
        }

        try
        {
            using var document = JsonDocument.Parse(text, new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
            return Read(document.RootElement);
        }
        catch (JsonException wrong)
        {
            var line = string.Create(CultureInfo.InvariantCulture, $"water, line {(wrong.LineNumber ?? 0) + 1}");
            return Result.Fail<WaterReport>(
                line, "This is not JSON.", "A water file looks like { \"name\": \"tap\", \"ions\": { \"Ca\": 62, \"Mg\": 8.5 }, \"alkalinity\": 140, \"pH\": 7.4 }; figures take a point, names take double quotes.");
        }
    }

    /// <summary>A report that stands inside another file.</summary>
    public static Result<WaterReport> ReadElement(JsonElement root) => new WaterFileReader().Read(root);

    private Result<WaterReport> Read(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            return Result.Fail<WaterReport>("water", "A water file is one object in braces; this is not.", "Give one water a file, as in { \"ions\": { \"Ca\": 62 }, \"alkalinity\": 140 }.");
        }

        foreach (var property in root.EnumerateObject())
        {
            Field(property);
        }

        if (problems.Count == 0 && lines.Count == 0 && ec is null)
        {
            problems.Add(new("water", "The report is empty: no ion, no alkalinity, no conductivity.", "Give what the laboratory printed; conductivity alone gives a rough guess."));
        }

        var called = name ?? id ?? "water";
        return problems.Count > 0
            ? Result.Fail<WaterReport>(problems)
            : Result.Of(new WaterReport
            {
                Id = id ?? called,
                Name = called,
                Lines = lines,
                PH = pH,
                Ec = ec is null ? null : ec with { Celsius = ecCelsius ?? ec.Celsius },
                Celsius = celsius,
                Note = note,
            });
    }

    private void Field(JsonProperty property)
    {
        switch (property.Name)
        {
            case "id": id = Once(id, property, LongestName); break;
            case "name": name = Once(name, property, LongestName); break;
            case "note": note = Once(note, property, LongestNote); break;
            case "pH" or "ph" or "PH": Number(ref pH, property); break;
            case "celsius": Number(ref celsius, property); break;
            case "ecCelsius": Number(ref ecCelsius, property); break;
            case "ec" or "EC": Conductivity(property); break;
            case "ions" or "mg_per_L" or "mgPerL" or "mg/L" when property.Value.ValueKind == JsonValueKind.Object:
                foreach (var ion in property.Value.EnumerateObject())
                {
                    // A table of a laboratory often has the pH among its lines.
                    if (ion.Name is "pH" or "ph" or "PH")
                    {
                        Number(ref pH, ion);
                    }
                    else
                    {
                        Line(ion, $"{property.Name}.{ion.Name}");
                    }
                }

                break;
            case "ions" or "mg_per_L" or "mgPerL" or "mg/L": Wrong(property.Name, property.Value, "an object: { \"Ca\": 62, \"Mg\": 8.5 }"); break;
            default:
                if (WaterQuantity.Named(property.Name) is null)
                {
                    problems.Add(new(
                        Shown(property.Name), "There is no such field in a water file.",
                        "Use id, name, note, ions, alkalinity, hardness, pH, ec, ecCelsius, celsius, or an ion by its symbol (Ca, Mg, Na, K, NH4, NO3, SO4, Cl, PO4, B, Fe, Mn, Zn, Cu)."));
                }
                else
                {
                    Line(property, property.Name);
                }

                break;
        }
    }

    private void Line(JsonProperty property, string path)
    {
        if (lines.Count == MostLines)
        {
            problems.Add(new("ions", "There are more than 60 lines.", "Keep the ions; leave out the rest."));
            return;
        }

        if (Figure(property.Value, Shown(path)) is var (figure, unit))
        {
            lines.Add(new(property.Name, figure.Value, unit, figure.Below));
        }
    }

    private void Conductivity(JsonProperty property)
    {
        if (ec is not null)
        {
            Twice(property);
        }
        else if (Figure(property.Value, property.Name) is var (figure, unit))
        {
            ec = new(figure.Value, unit ?? "mS/cm");
        }
    }

    // 62, "62", "<0.05" or { "value": 62, "unit": "mg/L as CaCO3" }.
    private (WaterFigure Figure, string? Unit)? Figure(JsonElement value, string path)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Number: return Take(value.GetRawText(), path) is { } number ? (number, null) : null;
            case JsonValueKind.String: return Take(value.GetString()!, path) is { } text ? (text, null) : null;
            case JsonValueKind.Object: return Nested(value, path);
            default: Wrong(path, value, "a number, or { \"value\": 12, \"unit\": \"°dH\" }"); return null;
        }
    }

    private (WaterFigure Figure, string? Unit)? Nested(JsonElement value, string path)
    {
        WaterFigure? figure = null;
        string? unit = null;
        foreach (var part in value.EnumerateObject())
        {
            switch (part.Name)
            {
                case "value" when part.Value.ValueKind is JsonValueKind.Number or JsonValueKind.String:
                    figure = Take(part.Value.ValueKind == JsonValueKind.Number ? part.Value.GetRawText() : part.Value.GetString()!, path);
                    if (figure is null)
                    {
                        return null;
                    }

                    break;
                case "unit" when part.Value.ValueKind == JsonValueKind.String && part.Value.GetString()!.Length <= LongestName: unit = part.Value.GetString(); break;
                case "value": Wrong(path + ".value", part.Value, "a number"); return null;
                case "unit": Wrong(path + ".unit", part.Value, "a short word in quotes, such as \"mmol/L\""); return null;
                default: problems.Add(new($"{path}.{Shown(part.Name)}", "There is no such field here.", "Give value and unit.")); return null;
            }
        }

        if (figure is null)
        {
            problems.Add(new(path, "The value is missing.", "Write { \"value\": 12, \"unit\": \"°dH\" }."));
            return null;
        }

        return (figure, unit);
    }

    private WaterFigure? Take(string text, string path)
    {
        var read = WaterNumber.Read(text, path);
        problems.AddRange(read.Problems);
        return read.Value;
    }

    private void Number(ref double? field, JsonProperty property)
    {
        if (field is not null)
        {
            Twice(property);
        }
        else if (property.Value.ValueKind == JsonValueKind.Number && property.Value.TryGetDouble(out var value) && double.IsFinite(value))
        {
            field = value;
        }
        else if (property.Value.ValueKind == JsonValueKind.String)
        {
            field = Take(property.Value.GetString()!, property.Name)?.Value;
        }
        else
        {
            Wrong(property.Name, property.Value, "a number");
        }
    }

    private string? Once(string? before, JsonProperty property, int longest)
    {
        if (before is not null)
        {
            Twice(property);
            return before;
        }

        if (property.Value.ValueKind != JsonValueKind.String)
        {
            Wrong(property.Name, property.Value, "a text in quotes");
            return null;
        }

        var text = property.Value.GetString()!;
        if (string.IsNullOrWhiteSpace(text) || text.Length > longest || text.Any(char.IsControl))
        {
            problems.Add(new(property.Name, string.Create(CultureInfo.InvariantCulture, $"This is empty, longer than {longest} signs or holds unprintable ones."), "Give a short text, or leave it out."));
            return null;
        }

        return text;
    }

    private void Twice(JsonProperty property) => problems.Add(new(property.Name, "This is there twice.", "Keep one."));

    private void Wrong(string path, JsonElement value, string wanted) => problems.Add(new(
        path,
        value.ValueKind switch
        {
            JsonValueKind.Object => "An object in braces stands here.",
            JsonValueKind.Array => "A list stands here.",
            JsonValueKind.Null => "A null stands here.",
            JsonValueKind.True or JsonValueKind.False => "True or false stands here.",
            JsonValueKind.String => "A text stands here.",
            _ => "A number stands here that cannot be used.",
        },
        $"Give {wanted}, or leave it out."));

    private static string Shown(string text) => text.Length > 40 ? text[..40] + "..." : text;
}
