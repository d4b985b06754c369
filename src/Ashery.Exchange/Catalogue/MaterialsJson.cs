using System.ComponentModel;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;
using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Exchange.Catalogue;

/// <summary>JSON of <c>ashery materials</c>.</summary>
[Description("Materials of the catalogue.")]
public sealed record MaterialsJson(IReadOnlyList<MaterialJson> Materials);

/// <summary>A material; <see cref="Sheet"/> only where single materials were asked for.</summary>
public sealed record MaterialJson(
    string Id,
    string Name,
    [property: JsonConverter(typeof(WordConverter<MaterialKind>))] MaterialKind Kind,
    [property: Description("Percent by weight as a label prints it: N, P2O5, K2O, all others as the element.")]
    IReadOnlyDictionary<string, double> Label,
    MaterialSheetJson? Sheet);

/// <summary>Everything known of a material.</summary>
public sealed record MaterialSheetJson(
    IReadOnlyList<string> OtherNames,
    string? Formula,
    bool IsLiquid,
    [property: Description("Dissolves clear at feed strength.")] bool Dissolves,
    [property: Description("Percent by weight: ammonium, nitrate, urea, organic, slowSynthetic.")]
    IReadOnlyDictionary<string, double> Nitrogen,
    [property: Description("g/mL, loose.")] RangeJson? BulkDensity,
    [property: Description("g/mL at 20 degrees Celsius.")] double? LiquidDensity,
    [property: Description("By weight, sodium nitrate = 100.")] FigureJson? SaltIndex,
    [property: Description("kg CaCO3 a kg; positive acidifies.")] FigureJson? LimeEquivalent,
    [property: Description("Percent relative humidity at 30 degrees Celsius above which it takes up water.")] FigureJson? CriticalHumidity,
    [property: Description("g of product a kg of water.")] IReadOnlyList<SolubilityJson> Solubility,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Regulations,
    IReadOnlyList<PublishedFigureJson> Figures);

/// <summary>Lowest, typical and highest.</summary>
public sealed record RangeJson(double Min, double Typical, double Max);

/// <summary>A figure in use, with its source.</summary>
public sealed record FigureJson(
    double Value,
    string Source,
    [property: JsonConverter(typeof(WordConverter<Provenance>))] Provenance Provenance,
    string? Note);

/// <summary>Solubility at a temperature.</summary>
public sealed record SolubilityJson(double Celsius, double GramsPerKgWater);

/// <summary>A published figure, in use or kept beside the one in use.</summary>
public sealed record PublishedFigureJson(
    string Property,
    string Unit,
    double? Min,
    double? Typical,
    double? Max,
    string Source,
    [property: JsonConverter(typeof(WordConverter<Provenance>))] Provenance Provenance,
    string? Note,
    [property: Description("True for the figure that is calculated with.")] bool InUse);
