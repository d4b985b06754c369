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

    /// <summary>Percent of chloride or sodium that any bag may hold as an impurity (common practice, no source).</summary>
    private const double UsualSalt = 3;

    /// <summary>What passes the limit among the nutrients, each explained; empty when all is well or nothing is known of the pure salt.</summary>
    /// <param name="field">What to call the label.</param>
    /// <param name="label">Contents on the label basis.</param>
    /// <param name="nutrients">The nutrients typed.</param>
    /// <param name="limit">The material whose pure composition is the limit; null when none is known.</param>
    /// <param name="name">What to call the material.</param>
    /// <param name="lines">The lines as typed, where known: they tell on which basis a figure was meant.</param>
    public static IReadOnlyList<Problem> Check(
        string field, LabelAnalysis label, Nutrient[] nutrients, Material? limit, string name, IReadOnlyList<LabelLine>? lines = null)
    {
        if (limit?.Pure is not { } pure)
        {
            return [];
        }

        var slack = limit.PureIsLimit ? Rounding : IdealRounding;
        List<Problem>? problems = null;
        foreach (var n in nutrients)
        {
            var typed = label.Percent(n);
            var most = Math.Max(pure.Percent(n), Impurity(limit, n));
            if (typed > most + slack)
            {
                var line = lines?.FirstOrDefault(l => LabelItems.NutrientOf(l.Item) == n && !LabelItems.IsNitrogenForm(l.Item));
                var symbol = line is null ? LabelBasis.Symbol(n) : LabelItems.Symbol(line.Item);
                (problems ??= []).Add(most <= 0
                    ? new Problem($"{field}, {symbol}", FormattableString.Invariant($"{name} holds no {symbol}, the label says {typed:0.##} %."), "Choose another material, or set it to 0.")
                    : Above($"{field}, {symbol}", line, typed, most, slack, symbol));
            }
        }

        return problems ?? [];
    }

    // What the trade's bags are known to carry beside the salt itself; chloride and sodium come along in small amounts nearly everywhere.
    private static double Impurity(Material limit, Nutrient n)
    {
        var known = limit.LabelSpread.TryGetValue(n, out var spread) ? spread.Max * 100 : limit.Label.Percent(n);
        return limit.Pure![n] > 0 && limit.PureIsLimit ? 0 : Math.Max(known, n is Nutrient.Cl or Nutrient.Na ? UsualSalt : 0);
    }

    private static Problem Above(string field, LabelLine? line, double typed, double most, double slack, string symbol)
    {
        // The limit in the unit of the line as it was typed.
        var scale = line is null ? 1 : LabelItems.ToLabelBasis(line.Item);
        var wayOut = FormattableString.Invariant($"At most {most / scale:0.##} % is possible: check the label.");
        if (line is not null && LabelItems.Twin(line.Item) is { } twin && line.Percent * LabelItems.ToLabelBasis(twin) <= most + slack)
        {
            wayOut = FormattableString.Invariant($"As {twin} it would fit: if the bag prints {line.Percent:0.##} % {twin}, type it as {twin}. Otherwise check the label.");
        }

        return new Problem(field, FormattableString.Invariant($"{typed / scale:0.##} % is more than the pure salt holds ({most / scale:0.##} % {symbol})."), wayOut);
    }
}
