using System.Text.Json.Serialization;
using Ashery.Sources;

namespace Ashery.Crops;

// Shapes of data/crops/*.json. They differ from the values the library hands on only where JSON is written by hand.

internal sealed record CropRow(
    string Id,
    string Name,
    string? Latin,
    FeederClass Feeder,
    RatioRow Ratio,
    RangeRow? LiquidNitrogen,
    RangeRow? SeasonNitrogen,
    RangeRow? MediumPh,
    RangeRow? SaturatedExtractEc,
    TemperatureRow? Temperature,
    PhosphorusRow Phosphorus,
    bool AcidLoving,
    SourceRow? ChlorideSensitive,
    string[] Notes)
{
    public Crop ToCrop() => new()
    {
        Id = Id,
        Name = Name,
        Latin = Latin,
        Feeder = Feeder,
        Ratio = new(Ratio.N, Ratio.P2O5, Ratio.K2O, Ratio.AsPrinted, Ratio.Source, Ratio.Provenance, Ratio.Note),
        LiquidNitrogen = LiquidNitrogen?.ToRange(),
        SeasonNitrogen = SeasonNitrogen?.ToRange(),
        MediumPh = MediumPh?.ToRange(),
        SaturatedExtractEc = SaturatedExtractEc?.ToRange(),
        BaseCelsius = Temperature?.Base,
        OptimumCelsius = Temperature is { } t ? (t.OptimumLow, t.OptimumHigh) : null,
        TemperatureSource = Temperature is { } f ? new(f.Source, f.Provenance, f.Note) : null,
        Phosphorus = Phosphorus.Level,
        PhosphorusSource = new(Phosphorus.Source, Phosphorus.Provenance, Phosphorus.Note),
        AcidLoving = AcidLoving,
        ChlorideSensitive = ChlorideSensitive is not null,
        ChlorideSource = ChlorideSensitive is { } c ? new(c.Source, c.Provenance, c.Note) : null,
        Notes = Notes,
    };
}

internal sealed record RatioRow(double N, double P2O5, double K2O, string AsPrinted, string Source, Provenance Provenance, string? Note);

internal sealed record RangeRow(double Low, double High, string Source, Provenance Provenance, string? Note)
{
    public SourcedRange ToRange() => new(Low, High, Source, Provenance, Note);
}

internal sealed record TemperatureRow(double Base, double OptimumLow, double OptimumHigh, string Source, Provenance Provenance, string? Note);

internal sealed record PhosphorusRow(PhosphorusSensitivity Level, string Source, Provenance Provenance, string? Note);

internal sealed record SourceRow(string Source, Provenance Provenance, string? Note);

internal sealed record FeederClassRow(FeederClass Feeder, RangeRow SeasonNitrogen, RangeRow LiquidNitrogen);

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UseStringEnumConverter = true,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow)]
[JsonSerializable(typeof(CropRow[]))]
[JsonSerializable(typeof(FeederClassRow[]))]
internal sealed partial class CropJson : JsonSerializerContext;
