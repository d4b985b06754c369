using System.ComponentModel;
using System.Text.Json.Serialization;
using Ashery.Crops;
using Ashery.Exchange.Json;
using Ashery.Sources;

namespace Ashery.Exchange.Catalogue;

/// <summary>JSON of <c>ashery crops</c>.</summary>
[Description("Crops of the catalogue.")]
public sealed record CropsJson(IReadOnlyList<CropJson> Crops);

/// <summary>A crop; <see cref="Sheet"/> only where single crops were asked for.</summary>
public sealed record CropJson(
    string Id,
    string Name,
    string? Latin,
    [property: JsonConverter(typeof(WordConverter<FeederClass>))] FeederClass Feeder,
    [property: Description("Wanted N : P2O5 : K2O.")] CropRatioJson Ratio,
    CropSheetJson? Sheet);

/// <summary>A wanted ratio with its source.</summary>
public sealed record CropRatioJson(
    double N,
    [property: JsonPropertyName("P2O5")] double P2O5,
    [property: JsonPropertyName("K2O")] double K2O,
    string AsPrinted,
    string Source,
    [property: JsonConverter(typeof(WordConverter<Provenance>))] Provenance Provenance,
    string? Note);

/// <summary>Everything known of a crop.</summary>
public sealed record CropSheetJson(
    [property: Description("mg N per litre of constant liquid feed.")] CropRangeJson LiquidNitrogen,
    [property: Description("g N per litre of medium a season.")] CropRangeJson SeasonNitrogen,
    CropRangeJson? MediumPh,
    [property: Description("Electrical conductivity of the saturated medium extract, mS/cm.")] CropRangeJson? SaturatedExtractEc,
    [property: Description("Degrees Celsius below which growth stops.")] double? BaseCelsius,
    [property: JsonConverter(typeof(WordConverter<PhosphorusSensitivity>))] PhosphorusSensitivity PhosphorusSensitivity,
    bool AcidLoving,
    bool ChlorideSensitive,
    IReadOnlyList<string> Notes);

/// <summary>A published range.</summary>
public sealed record CropRangeJson(
    double Low,
    double High,
    string Source,
    [property: JsonConverter(typeof(WordConverter<Provenance>))] Provenance Provenance,
    string? Note,
    [property: Description("True when the crop has no figure of its own and its feeder class stands in.")] bool FromFeederClass);
