using Ashery.Problems;

namespace Ashery.Solutions.Acids;

/// <summary>An acid as it stands on the shelf: which, and how strong.</summary>
/// <param name="Acid">Which.</param>
/// <param name="Strength">g of the pure acid in a g of it.</param>
/// <param name="Density">g/mL at 20 °C; null for crystals, which are weighed.</param>
/// <param name="FromDensity">True when the strength was read from the density.</param>
public sealed record AcidBottle(Acid Acid, double Strength, double? Density, bool FromDensity)
{
    private const double Least = 0.005;

    public bool IsCrystals => Density is null;

    /// <summary>True when the law on explosives precursors limits who may buy and keep it at this strength.</summary>
    public bool IsRestricted => Acid.RestrictedAbove is { } limit && Strength > limit;

    /// <summary>g as it stands for so much pure acid.</summary>
    public double Grams(double pureGrams) => pureGrams / Strength;

    /// <summary>mL as it stands for so much pure acid; null for crystals.</summary>
    public double? Millilitres(double pureGrams) => Density is { } density ? Grams(pureGrams) / density : null;

    /// <summary>A bottle of this mass fraction (0.6 is 60 %).</summary>
    public static Result<AcidBottle> OfStrength(Acid acid, double strength)
    {
        if (!(strength >= Least && strength <= acid.MostStrength))
        {
            return Result.Fail<AcidBottle>(
                "strength",
                FormattableString.Invariant($"{strength * 100:0.##} % is not a strength of {acid.Name}: it is {Least * 100:0.#} to {acid.MostStrength * 100:0} % by mass here."),
                FormattableString.Invariant($"Read the percent by mass on the label, as {acid.UsualStrength * 100:0} %."));
        }

        var crystals = strength > acid.CrystalsAbove;
        return Result.Of(new AcidBottle(acid, strength, crystals ? null : acid.Density.At(strength), FromDensity: false));
    }

    /// <summary>A bottle whose density (g/mL at 20 °C) was read or weighed.</summary>
    public static Result<AcidBottle> OfDensity(Acid acid, double density)
    {
        var table = acid.Density;
        var found = double.IsFinite(density) ? table.Strengths(density) : [];
        if (found.Count == 0 || found[0] < Least)
        {
            return Result.Fail<AcidBottle>(
                "density",
                FormattableString.Invariant($"{density:0.####} g/mL is not a density of {acid.Name}: its solutions weigh {table.At(Least):0.###} to {table.Heaviest:0.###} g/mL at 20 °C."),
                "Weigh 10 mL at 20 °C and divide the grams by 10, or give the percent by mass of the label.");
        }

        return found.Count > 1
            ? Result.Fail<AcidBottle>(
                "density",
                FormattableString.Invariant($"{density:0.####} g/mL fits {found[0] * 100:0.#} % and {found[^1] * 100:0.#} %: near its strongest, {acid.Name} gets lighter again."),
                "Give the percent by mass of the label instead.")
            : Result.Of(new AcidBottle(acid, found[0], density, FromDensity: true));
    }
}
