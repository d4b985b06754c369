using Ashery.Compatibility;
using Ashery.Feeds;
using Ashery.Problems;
using Ashery.Recipes;

namespace Ashery.Stock;

/// <summary>What to weigh for a batch, from which bag in which order, with what to mind.</summary>
public sealed record BatchProposal
{
    public required Feed Feed { get; init; }

    /// <summary>g asked for.</summary>
    public required double Grams { get; init; }

    public required DateOnly Day { get; init; }

    /// <summary>In the order of weighing: the largest part first, of each part the bag that expires first.</summary>
    public required IReadOnlyList<ProposedWeighing> Weighings { get; init; }

    /// <summary>The mix as proposed: cautions, pairs, how it keeps.</summary>
    public required Recipe Recipe { get; init; }

    /// <summary>Pairs that may not be mixed dry, worst first; where one is a hard stop the batch is not made.</summary>
    public required IReadOnlyList<PairVerdict> Stops { get; init; }

    /// <summary>Lot number it will get.</summary>
    public required string Lot { get; init; }

    public required UseBy UseBy { get; init; }

    /// <summary>What is short, past its date or too small for the scale.</summary>
    public required IReadOnlyList<Problem> Notes { get; init; }

    /// <summary>True when no setting may let these parts be mixed dry.</summary>
    public bool IsForbidden => Stops.Any(static p => p.DryToday.IsHardStop);
}

/// <summary>One thing to put on the scale.</summary>
/// <param name="BagId">Line of the shelf; the material's id where no line has it.</param>
/// <param name="MaterialId">Material of that bag.</param>
/// <param name="Name">As the bag is called.</param>
/// <param name="Grams">g to weigh, in whole steps of the scale where it can.</param>
/// <param name="Bag">The bag to take it from; null when no line of the shelf has the material.</param>
/// <param name="IsShort">True when no bag holds this part.</param>
public sealed record ProposedWeighing(string BagId, string MaterialId, string Name, double Grams, StockBag? Bag, bool IsShort)
{
    public Guid? Bought => Bag?.Bought;
}
