using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Solutions.Can;

/// <summary>How strong a feed is made. A litre of water is taken as a kilogram.</summary>
/// <param name="GramsPerLitre">g of the whole feed a litre, where that is what was asked.</param>
/// <param name="Nutrient">The nutrient whose mg/L was asked, else null.</param>
/// <param name="MilligramsPerLitre">mg/L of that nutrient as the element.</param>
public sealed record CanStrength(double? GramsPerLitre, Nutrient? Nutrient, double MilligramsPerLitre)
{
    /// <summary>Strongest that is taken for a slip of the pen, g a litre.</summary>
    public const double Most = 3000;

    /// <summary>So many grams of feed a litre.</summary>
    public static CanStrength Of(double gramsPerLitre) => new(gramsPerLitre, null, 0);

    /// <summary>So many mg/L of a nutrient, as the element.</summary>
    public static CanStrength Of(Nutrient nutrient, double milligramsPerLitre) => new(null, nutrient, milligramsPerLitre);

    /// <summary>What leaves an injector that takes one part of a stock into so many parts of feed.</summary>
    public static CanStrength Injected(double stockGramsPerLitre, double ratio) => Of(stockGramsPerLitre / ratio);

    /// <summary>The parts of a feed in their proportions, in grams a kilogram of water at this strength.</summary>
    public Result<IReadOnlyList<CanAddition>> Apply(IReadOnlyList<CanAddition> parts)
    {
        double whole = 0, nutrient = 0;
        foreach (var part in parts)
        {
            whole += part.Grams;
            nutrient += Nutrient is { } n ? part.Grams * part.Material.Content(n) : 0;
        }

        if (!(whole > 0))
        {
            return Result.Fail<IReadOnlyList<CanAddition>>("strength", "There is nothing to make a feed of.", "Name at least one material.");
        }

        if (Nutrient is not null && !(nutrient > 0))
        {
            return Result.Fail<IReadOnlyList<CanAddition>>("strength", $"The feed gives no {Nutrient} to solution, so that no strength follows from it.", "Ask for a strength in g/L.");
        }

        var grams = GramsPerLitre ?? (MilligramsPerLitre / 1000 / nutrient * whole);
        if (!(grams > 0 && grams <= Most))
        {
            return Result.Fail<IReadOnlyList<CanAddition>>("strength", FormattableString.Invariant($"{grams:0.###} g of feed in a litre cannot be."),
                FormattableString.Invariant($"Ask for more than 0 and at most {Most} g a litre; 0.5 to 2 g/L is common for pots."));
        }

        var scaled = new CanAddition[parts.Count];
        for (var i = 0; i < scaled.Length; i++)
        {
            scaled[i] = parts[i] with { Grams = parts[i].Grams * grams / whole };
        }

        return Result.Of<IReadOnlyList<CanAddition>>(scaled);
    }
}
