using Ashery.Nutrients;

namespace Ashery.Feeds;

/// <summary>A feed ready to give: what one gram of it holds and does.</summary>
public sealed record Feed
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required FeedKind Kind { get; init; }

    /// <summary>Parts by mass fraction, by material id.</summary>
    public required IReadOnlyDictionary<string, double> Parts { get; init; }

    public required LabelAnalysis Label { get; init; }

    public NitrogenForms Nitrogen { get; init; }

    /// <summary>By weight, sodium nitrate = 100; null when a part has no published figure.</summary>
    public double? SaltIndex { get; init; }

    /// <summary>kg CaCO3 a kg; positive acidifies; null when a part has no figure.</summary>
    public double? LimeEquivalent { get; init; }

    /// <summary>g/mL loose, for scoops.</summary>
    public double? BulkDensity { get; init; }

    public bool Dissolves { get; init; }
}

/// <summary>The kinds of feed a year alternates.</summary>
public enum FeedKind
{
    Mineral,
    Organic,
    Foliar,
    TraceElements,
    Inoculant,
}
