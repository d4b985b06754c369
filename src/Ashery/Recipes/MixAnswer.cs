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

    /// <summary>The limits that the certificate's row multipliers belong to, in their order.</summary>
    public IReadOnlyList<string> CertificateRows { get; init; } = [];

    /// <summary>The lower bound on the ratio error that the certificate proves, worked out in decimal arithmetic; null without one.</summary>
    public decimal? CertificateBound { get; init; }

    /// <summary>The strongest blend at exactly the wanted ratio; null when no blend has it.</summary>
    public Recipe? AtExactRatio { get; init; }

    /// <summary>Set when the wish cannot be met: exit code 1.</summary>
    public OutOfReach? OutOfReach { get; init; }

    /// <summary>Set when there are blends and none of them has quite the wanted ratio: what stands in the way.</summary>
    public OutOfReach? NearMiss { get; init; }

    /// <summary>Blends none of which is worse than another in error, cost, number of materials and strength all at once.</summary>
    public required IReadOnlyList<Recipe> Trade { get; init; }

    /// <summary>True when every set of materials within the limits was looked at or ruled out for <see cref="Trade"/>.</summary>
    public bool TradeExact { get; init; } = true;

    /// <summary>How many more blends would trade, beyond those listed.</summary>
    public int TradeLeft { get; init; }

    /// <summary>Best blend that avoids a warning of the first blend, by the warning's field.</summary>
    public IReadOnlyDictionary<string, Recipe> Instead { get; init; } = new Dictionary<string, Recipe>();

    public IReadOnlyList<Problem> Problems { get; init; } = [];

    /// <summary>Materials that no blend within the limits can use, and why.</summary>
    public IReadOnlyList<LeftOutMaterial> LeftOut { get; init; } = [];

    /// <summary>In whole steps and not proved: how much lower the error of the best could still be.</summary>
    public double WholeStepGap { get; init; }

    /// <summary>In whole steps: the error of the best blend in free amounts, which no steps can better; else null.</summary>
    public double? FreeError { get; init; }

    /// <summary>What was asked, with what was filled in for it.</summary>
    public MixRequest? Request { get; init; }
}

/// <summary>A real answer when the wish is out of reach.</summary>
/// <param name="Why">In a sentence.</param>
/// <param name="Nearest">The nearest blend.</param>
/// <param name="FallsShort">The nutrient that falls short most.</param>
/// <param name="ToBuy">The one material that closes the gap best, and the error that would remain; null when none does.</param>
public sealed record OutOfReach(string Why, Recipe? Nearest, Nutrient? FallsShort, MaterialToBuy? ToBuy);

/// <summary>A material that was offered and could not be used.</summary>
/// <param name="MaterialId">Which.</param>
/// <param name="Reason">The limit that rules it out, in the words it was given in.</param>
public sealed record LeftOutMaterial(string MaterialId, string Reason);

/// <summary>One material that would close the gap.</summary>
/// <param name="MaterialId">Key in the catalogue.</param>
/// <param name="Name">As a grower says it.</param>
/// <param name="RemainingError">Mean relative deviation that would remain with it.</param>
/// <param name="Strength">N + P2O5 + K2O of the strongest blend at the ratio with it, mass fraction; null when the ratio stays out of reach.</param>
public sealed record MaterialToBuy(string MaterialId, string Name, double RemainingError, double? Strength);
