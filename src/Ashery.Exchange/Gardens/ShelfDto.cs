using System.ComponentModel;

namespace Ashery.Exchange.Gardens;

[Description("A bag on the shelf.")]
public sealed record BagDto
{
    [Description("Own key within the garden; the material id when left out.")]
    public string? Id { get; init; }

    [Description("Material of the catalogue. Leave out when the bag is described under own.")]
    public string? Material { get; init; }

    [Description("What the bag is called, when not as in the catalogue.")]
    public string? Name { get; init; }

    [Description("What this bag's label says, percent by weight: N, P2O5, K2O, other nutrients as the element. What is left out stays as in the catalogue.")]
    public IReadOnlyDictionary<string, double>? Label { get; init; }

    [Description("g left; leave out for as much as wanted.")]
    public double? Stock { get; init; }

    [Description("Paid for a full bag, in the garden's currency; leave out when unknown.")]
    public double? Price { get; init; }

    [Description("g in a full bag.")]
    public double? Size { get; init; }

    [Description("A material that is not in the catalogue, described in full.")]
    public OwnMaterialDto? Own { get; init; }
}

[Description("A material that is not in the catalogue.")]
public sealed record OwnMaterialDto
{
    public string? Id { get; init; }

    public string? Name { get; init; }

    [Description("straight, slowRelease, calciumMagnesium, liming, traceElement, acid, organicMeal, bulkyOrganic or filler.")]
    public string? Kind { get; init; }

    [Description("Percent by weight: N, P2O5, K2O, other nutrients as the element.")]
    public IReadOnlyDictionary<string, double>? Label { get; init; }

    [Description("Nitrogen by form, percent by weight.")]
    public NitrogenDto? Nitrogen { get; init; }

    public bool IsLiquid { get; init; }

    [Description("Dissolves clear at feed strength.")]
    public bool Dissolves { get; init; }

    [Description("g/mL, loose poured, of a solid.")]
    public SpreadDto? BulkDensity { get; init; }

    [Description("g/mL at 20 degrees Celsius, of a liquid.")]
    public double? LiquidDensity { get; init; }

    [Description("By weight, sodium nitrate = 100.")]
    public double? SaltIndex { get; init; }

    [Description("kg CaCO3 a kg; positive acidifies.")]
    public double? LimeEquivalent { get; init; }

    [Description("Percent of water as sold.")]
    public double? Moisture { get; init; }

    [Description("Group of the dry compatibility chart.")]
    public string? CompatibilityGroup { get; init; }

    [Description("What it sends into solution: calcium, sulfate, phosphate, ammonium and so on.")]
    public IReadOnlyList<string>? Ions { get; init; }

    [Description("Keys of what can hurt: oxidiser, dust and so on.")]
    public IReadOnlyList<string>? Hazards { get; init; }
}

[Description("Nitrogen by form, percent by weight.")]
public sealed record NitrogenDto
{
    public double Ammonium { get; init; }

    public double Nitrate { get; init; }

    public double Urea { get; init; }

    public double Organic { get; init; }

    public double SlowSynthetic { get; init; }
}
