using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Pots;
using Ashery.Quantities;
using Ashery.Solutions.Waters;

namespace Ashery.Gardens;

/// <summary>The whole garden as one immutable value. Stages take what they need from it.</summary>
public sealed record Garden
{
    public required string Name { get; init; }

    public required Place Place { get; init; }

    /// <summary>True for the invented garden of the first start.</summary>
    public bool IsDemo { get; init; }

    public IReadOnlyList<Bag> Shelf { get; init; } = [];

    public IReadOnlyList<Scoop> Scoops { get; init; } = [];

    public IReadOnlyList<Pot> Pots { get; init; } = [];

    /// <summary>Recipes the grower kept, by which the year feeds.</summary>
    public IReadOnlyList<Feed> Feeds { get; init; } = [];

    /// <summary>Reports of the waters this grower uses, as typed.</summary>
    public IReadOnlyList<WaterReport> Waters { get; init; } = [];

    /// <summary>Season and dose rules the grower changed: rule id to setting.</summary>
    public IReadOnlyDictionary<string, string> RuleChanges { get; init; } = new Dictionary<string, string>();

    public GardenSettings Settings { get; init; } = new();
}

/// <summary>A bag on the shelf.</summary>
/// <param name="Id">Own key within the garden.</param>
/// <param name="Material">The material with this bag's own label.</param>
/// <param name="Stock">What is left; null for as much as wanted.</param>
/// <param name="Price">Paid for a full bag, in the garden's currency; null when unknown.</param>
/// <param name="Size">A full bag.</param>
public sealed record Bag(string Id, Material Material, Mass? Stock, double? Price, Mass? Size)
{
    public double? PricePerKg => Price is { } p && Size is { Grams: > 0 } s ? p / s.Kilograms : null;

    public Offer ToOffer() => new(Material, PricePerKg, Stock);
}

/// <summary>How this grower likes to see and measure.</summary>
public sealed record GardenSettings
{
    /// <summary>ISO 4217 code; only printed.</summary>
    public string Currency { get; init; } = "EUR";

    public bool UsUnits { get; init; }

    /// <summary>Scale resolution, g.</summary>
    public double ScaleStep { get; init; } = 1;

    /// <summary>Scoop used by default, by name; null to weigh.</summary>
    public string? Scoop { get; init; }

    /// <summary>Water used by default, by the id of one of the garden's waters; null for pure water.</summary>
    public string? Water { get; init; }
}
