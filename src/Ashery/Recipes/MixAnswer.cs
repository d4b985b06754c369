using Ashery.Blending;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>The answer to a wish: blends, what they trade, and what stands in the way.</summary>
public sealed record MixAnswer
{
    /// <summary>The wish as understood, crop resolved to its ratio.</summary>
    public required Wish Wish { get; init; }

    /// <summary>Best first.</summary>
    public required IReadOnlyList<Recipe> Blends { get; init; }

    /// <summary>True when no blend within the limits comes before those shown.</summary>
    public required bool Proved { get; init; }

    public Certificate? Certificate { get; init; }

    /// <summary>The strongest blend at exactly the wanted ratio; null when no blend has it.</summary>
    public Recipe? AtExactRatio { get; init; }

    /// <summary>Set when the wish cannot be met: exit code 1.</summary>
    public OutOfReach? OutOfReach { get; init; }

    /// <summary>Blends none of which is worse than another in error, cost, number of materials and strength all at once.</summary>
    public required IReadOnlyList<Recipe> Trade { get; init; }

    /// <summary>Best blend that avoids a warning of the first blend, by the warning's field.</summary>
    public IReadOnlyDictionary<string, Recipe> Instead { get; init; } = new Dictionary<string, Recipe>();

    public IReadOnlyList<Problem> Problems { get; init; } = [];
}

/// <summary>A real answer when the wish is out of reach.</summary>
/// <param name="Why">In a sentence.</param>
/// <param name="Nearest">The nearest blend.</param>
/// <param name="FallsShort">The nutrient that falls short most.</param>
/// <param name="ToBuy">The one material that closes the gap best, and the error that would remain; null when none does.</param>
public sealed record OutOfReach(string Why, Recipe? Nearest, Nutrient? FallsShort, MaterialToBuy? ToBuy);

/// <summary>One material that would close the gap.</summary>
public sealed record MaterialToBuy(string MaterialId, string Name, double RemainingError, double? Strength);
