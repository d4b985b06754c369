using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Quantities;

namespace Ashery.Recipes;

/// <summary>What a grower wants mixed, from what, within which limits.</summary>
public sealed record MixRequest
{
    public required Wish Wish { get; init; }

    public required IReadOnlyList<Offer> Offers { get; init; }

    public MixLimits Limits { get; init; } = new();

    /// <summary>Most materials in a blend.</summary>
    public int AtMost { get; init; } = 4;

    /// <summary>How many blends.</summary>
    public int Best { get; init; } = 20;

    /// <summary>Batch to weigh out; null shows shares of one kilogram.</summary>
    public BatchWindow? Batch { get; init; }

    public Measuring Measuring { get; init; } = new Measuring.Freely();

    public RankBy Rank { get; init; } = RankBy.TypicalAnalysis;

    /// <summary>Seed of the draws over label ranges and scoop errors.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How many draws; 0 leaves uncertainty out.</summary>
    public int Draws { get; init; }

    /// <summary>What could be bought when the wish is out of reach; null for the whole catalogue, empty for no such advice.</summary>
    public IReadOnlyList<Material>? Shop { get; init; }
}

/// <summary>What is wanted of the nutrients.</summary>
/// <param name="Shares">
/// Label basis. For a ratio any scale (3 : 1 : 2); for a grade mass fractions. Secondary and trace nutrients may be
/// among them. A nutrient with zero is wanted absent only when <paramref name="IsGrade"/> is false and it is N, P or K.
/// </param>
/// <param name="IsGrade">True when each figure is a content to reach at least.</param>
/// <param name="Name">What to call it: <c>3:1:2</c>, or the crop.</param>
public sealed record Wish(IReadOnlyDictionary<Nutrient, double> Shares, bool IsGrade, string Name);

/// <summary>From and to, in grams; equal for an exact batch.</summary>
public sealed record BatchWindow(Mass From, Mass To);

/// <summary>How parts are measured out.</summary>
public abstract record Measuring
{
    private Measuring()
    {
    }

    /// <summary>Any amount.</summary>
    public sealed record Freely : Measuring;

    /// <summary>By a scale in whole steps.</summary>
    public sealed record ByScale(Mass Step) : Measuring;

    /// <summary>By whole level scoops.</summary>
    public sealed record ByScoop(Scoop Scoop) : Measuring;
}

public enum RankBy
{
    /// <summary>By the error at typical analyses.</summary>
    TypicalAnalysis,

    /// <summary>By the 95th percentile of the error over draws.</summary>
    Percentile95,
}
