using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Crops;

/// <summary>Turns a row of data/crops/crops.json into a <see cref="Crop"/>.</summary>
internal static class CropRow
{
    public static Crop Read(JsonElement row)
    {
        var ratio = row.GetProperty("ratio");
        var phosphorus = row.GetProperty("phosphorus");
        var temperature = row.TryGetProperty("temperature", out var t) ? t : (JsonElement?)null;
        var chloride = row.TryGetProperty("chlorideSensitive", out var c) ? c : (JsonElement?)null;
        return new()
        {
            Id = row.Text("id"),
            Name = row.Text("name"),
            Latin = row.TextOrNull("latin"),
            Feeder = Feeder(row.Text("feeder")),
            Ratio = new(
                ratio.Number("n"), ratio.Number("p2O5"), ratio.Number("k2O"), ratio.Text("asPrinted"), ratio.Text("source"), ratio.Provenance(), ratio.TextOrNull("note")),
            LiquidNitrogen = Range(row, "liquidNitrogen"),
            SeasonNitrogen = Range(row, "seasonNitrogen"),
            MediumPh = Range(row, "mediumPh"),
            SaturatedExtractEc = Range(row, "saturatedExtractEc"),
            BaseCelsius = temperature?.Number("base"),
            OptimumCelsius = temperature is { } o ? (o.Number("optimumLow"), o.Number("optimumHigh")) : null,
            TemperatureSource = Origin(temperature),
            Phosphorus = Sensitivity(phosphorus.Text("level")),
            PhosphorusSource = Origin(phosphorus),
            AcidLoving = row.Flag("acidLoving"),
            ChlorideSensitive = chloride is not null,
            ChlorideSource = Origin(chloride),
            Notes = row.Texts("notes"),
        };
    }

    public static SourcedRange? Range(JsonElement row, string key) => row.TryGetProperty(key, out var r)
        ? new(r.Number("low"), r.Number("high"), r.Text("source"), r.Provenance(), r.TextOrNull("note"))
        : null;

    public static FeederClass Feeder(string word) => word switch
    {
        "light" => FeederClass.Light,
        "medium" => FeederClass.Medium,
        "heavy" => FeederClass.Heavy,
        _ => throw DataRows.Unknown(word),
    };

    private static FigureSource? Origin(JsonElement? figure) => figure is { } f ? new(f.Text("source"), f.Provenance(), f.TextOrNull("note")) : null;

    private static PhosphorusSensitivity Sensitivity(string word) => word switch
    {
        "low" => PhosphorusSensitivity.Low,
        "moderate" => PhosphorusSensitivity.Moderate,
        "high" => PhosphorusSensitivity.High,
        _ => throw DataRows.Unknown(word),
    };
}
