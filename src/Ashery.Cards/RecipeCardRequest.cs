using Ashery.Cards.Pictures;
using Ashery.Crops;
using Ashery.Gardens;
using Ashery.Planning;
using Ashery.Pots;
using Ashery.Recipes;

namespace Ashery.Cards;

/// <summary>What a recipe card or a bag label is made from.</summary>
public sealed record RecipeCardRequest
{
    /// <summary>What the grower calls the mix.</summary>
    public required string Name { get; init; }

    public required Recipe Recipe { get; init; }

    /// <summary>The day it is mixed; the lot number carries it.</summary>
    public required DateOnly MadeOn { get; init; }

    /// <summary>What was wished for: <c>3:1:4</c>, or the crop; null when the recipe came from elsewhere.</summary>
    public string? Wish { get; init; }

    /// <summary>What becomes of the mix; decides which verdicts on pairs and which cautions are printed.</summary>
    public BlendUse Use { get; init; } = BlendUse.DryStored;

    /// <summary>Doses in walking order; empty when there are no pots.</summary>
    public IReadOnlyList<PotDose> Doses { get; init; } = [];

    /// <summary>Units and currency.</summary>
    public GardenSettings Settings { get; init; } = new();

    /// <summary>The growing rules, with the grower's changes: how to flush a pot that got too much.</summary>
    public RuleBook Rules { get; init; } = RuleBook.Default;

    /// <summary>The triangle to print; null for none.</summary>
    public TriangleView? Triangle { get; init; }

    public Paper Paper { get; init; } = Paper.A5;
}

/// <summary>A pot with the dose it gets.</summary>
public sealed record PotDose(Pot Pot, Dose Dose)
{
    /// <summary>Doses with their pots, in the walking order of the garden; doses of pots it does not have are left out.</summary>
    public static IReadOnlyList<PotDose> Walk(IEnumerable<Dose> doses, Garden garden)
    {
        var pots = garden.Pots.ToDictionary(p => p.Id, StringComparer.Ordinal);
        return [.. WalkingOrder.Of(doses, garden).Where(s => pots.ContainsKey(s.PotId)).Select(s => new PotDose(pots[s.PotId], s.Dose))];
    }
}
