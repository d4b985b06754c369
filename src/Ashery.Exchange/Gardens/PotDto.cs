using System.ComponentModel;

namespace Ashery.Exchange.Gardens;

[Description("A pot, or a group of equal pots, with what grows in it. Give volume, or diameter and height.")]
public sealed record PotDto
{
    [Description("Own key within the garden.")]
    public string? Id { get; init; }

    public string? Name { get; init; }

    [Description("Crop of the catalogue.")]
    public string? Crop { get; init; }

    [Description("Litres of medium.")]
    public double? Volume { get; init; }

    [Description("Inside diameter at the rim, cm.")]
    public double? Diameter { get; init; }

    [Description("Inside height, cm.")]
    public double? Height { get; init; }

    [Description("Inside diameter at the bottom, cm; leave out for the usual taper.")]
    public double? BottomDiameter { get; init; }

    [Description("peatMix, barkMix, coirMix, loamMix or mineral.")]
    public string? Medium { get; init; }

    [Description("seedling, liner, young, mature, rootBound or dormant; worked out from planted when left out.")]
    public string? Stage { get; init; }

    [Description("When sown, struck or planted, YYYY-MM-DD.")]
    public string? Planted { get; init; }

    [Description("Last repotting, YYYY-MM-DD.")]
    public string? LastRepotted { get; init; }

    [Description("How many equal pots; 1 when left out.")]
    public int? Count { get; init; }

    [Description("Where it stands.")]
    public string? Place { get; init; }

    [Description("Whether it needs trace elements; leave out to judge from medium and last repotting.")]
    public bool? NeedsTraceElements { get; init; }

    [Description("Whether a test says the medium holds little phosphorus.")]
    public bool? LowPhosphorus { get; init; }
}

[Description("A feed kept ready. What is left out is worked out from its parts.")]
public sealed record FeedDto
{
    public string? Id { get; init; }

    public string? Name { get; init; }

    [Description("mineral, organic, foliar, traceElements or inoculant.")]
    public string? Kind { get; init; }

    [Description("Share of each material by weight, as fractions that add up to 1.")]
    public IReadOnlyDictionary<string, double>? Parts { get; init; }

    [Description("Percent by weight: N, P2O5, K2O, other nutrients as the element.")]
    public IReadOnlyDictionary<string, double>? Label { get; init; }

    public NitrogenDto? Nitrogen { get; init; }

    [Description("By weight, sodium nitrate = 100.")]
    public double? SaltIndex { get; init; }

    [Description("kg CaCO3 a kg; positive acidifies.")]
    public double? LimeEquivalent { get; init; }

    [Description("g/mL loose.")]
    public double? BulkDensity { get; init; }

    public bool? Dissolves { get; init; }
}
