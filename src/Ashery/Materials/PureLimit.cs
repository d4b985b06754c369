using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Materials;

/// <summary>No honest label says more than the pure salt holds; a figure that does is often the other basis, and then says so.</summary>
public static class PureLimit
{
    /// <summary>Points of percent a printed label may pass the pure salt by rounding: 11-0-0 is printed on a salt of 10.93 % N.</summary>
    public const double Rounding = 0.2;

    /// <summary>Points allowed where the formula is an ideal that real bags run a little above.</summary>
    public const double IdealRounding = 1.0;

    /// <summary>What passes the limit among the nutrients, worst explained; empty when all is well or nothing is known of the pure salt.</summary>
    public static IReadOnlyList<Problem> Check(
        string field, LabelAnalysis label, IReadOnlyList<Nutrient> nutrients, Material? limit, string name)
    {
        if (limit?.Pure is not { } pure)
        {
            return [];
        }

        var slack = limit.PureIsLimit ? Rounding : IdealRounding;
        List<Problem>? problems = null;
        foreach (var n in nutrients)
        {
            var (typed, most) = (label.Percent(n), pure.Percent(n));
            if (typed > most + slack)
            {
                (problems ??= []).Add(Explain($"{field}, {LabelBasis.Symbol(n)}", n, typed, most, name));
            }
        }

        return problems ?? [];
    }

    private static Problem Explain(string field, Nutrient n, double typed, double most, string name)
    {
        var symbol = LabelBasis.Symbol(n);
        if (most <= 0)
        {
            return new Problem(field, FormattableString.Invariant($"{name} holds no {symbol}, the label says {typed:0.##} %."), "Choose another material, or set it to 0.");
        }

        // An element typed as itself is turned into the oxide before it comes here: a figure too high by the factor was the oxide already.
        var oxide = Oxide(n);
        var asTyped = typed * oxide.Factor;
        var wayOut = oxide.Factor < 1 && asTyped <= most + Rounding
            ? FormattableString.Invariant($"If the bag prints {oxide.Element} as the oxide, {asTyped:0.##} is the {oxide.Name} figure: type it as {oxide.Name}. Otherwise check the label.")
            : FormattableString.Invariant($"At most {most:0.##} % is possible: check the label.");
        return new Problem(field, FormattableString.Invariant($"{typed:0.##} % is more than the pure salt holds ({most:0.##} % {symbol})."), wayOut);
    }

    private static (double Factor, string Element, string Name) Oxide(Nutrient n) => n switch
    {
        Nutrient.P => (LabelBasis.PhosphorusInP2O5, "phosphorus", "P2O5"),
        Nutrient.K => (LabelBasis.PotassiumInK2O, "potassium", "K2O"),
        _ => (1, string.Empty, string.Empty),
    };
}
