using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>Checks the figures of a wish and names it.</summary>
internal static class WishCheck
{
    /// <summary>Shares further apart than this are a slip of the pen, and would only be noise in the search.</summary>
    private const double WidestSpan = 1e7;

    public static Result<Wish> Ratio(IReadOnlyDictionary<Nutrient, double> figures, string field, IReadOnlyList<Problem> notes)
    {
        if (Figures(figures, field) is { } problem)
        {
            return Result.Fail<Wish>(problem);
        }

        for (var nutrient = Nutrient.Ca; nutrient <= Nutrient.Na; nutrient++)
        {
            if (figures.TryGetValue(nutrient, out var figure) && figure <= 0)
            {
                var symbol = LabelBasis.Symbol(nutrient);
                return Result.Fail<Wish>(
                    $"{field}, {symbol}", $"{symbol} is wanted as zero.", $"Leave it out, or limit it, as in --limit \"{symbol}<=0.1%\".");
            }
        }

        var wish = new Wish(figures, IsGrade: false, Name(figures, ':', 1));
        return Span(Wanted.Of(wish).Parts) > WidestSpan
            ? Result.Fail<Wish>(
                field, "The largest part is more than ten million times the smallest.", "Bring the parts to one unit, as in 3:1:2 Fe 0.1.")
            : Result.Of(wish, notes);
    }

    /// <param name="fractions">Mass fractions, label basis.</param>
    /// <param name="field">For messages.</param>
    /// <param name="notes">Passed on with the wish.</param>
    public static Result<Wish> Grade(IReadOnlyDictionary<Nutrient, double> fractions, string field, IReadOnlyList<Problem> notes)
    {
        if (Figures(fractions, field) is { } problem)
        {
            return Result.Fail<Wish>(problem);
        }

        var wish = new Wish(fractions, IsGrade: true, Name(fractions, '-', 100));
        var sum = Wanted.Of(wish).Sum;
        return sum > 1 + 1e-12
            ? Result.Fail<Wish>(
                field, $"The parts add up to {Say.Percent(sum)}, more than the blend itself.", "Bring them to 100 % or less, as in 10-5-10.")
            : Result.Of(wish, notes);
    }

    private static Problem? Figures(IReadOnlyDictionary<Nutrient, double> figures, string field)
    {
        var any = false;
        for (var nutrient = Nutrient.N; nutrient <= Nutrient.Na; nutrient++)
        {
            if (!figures.TryGetValue(nutrient, out var figure))
            {
                continue;
            }

            if (!double.IsFinite(figure) || figure < 0)
            {
                return new Problem($"{field}, {LabelBasis.Symbol(nutrient)}", "The figure is not a number from zero up.", "Write one, as in 3:1:2.");
            }

            any |= figure > 0;
        }

        return any
            ? null
            : new Problem(field, "Every part is zero, so nothing is wanted.", "Give at least one nutrient a figure above zero, as in 3:1:2.");
    }

    private static double Span(double[] parts)
    {
        var (least, most) = (parts[0], parts[0]);
        foreach (var part in parts)
        {
            least = Math.Min(least, part);
            most = Math.Max(most, part);
        }

        return most / least;
    }

    private static string Name(IReadOnlyDictionary<Nutrient, double> figures, char between, double scale)
    {
        var name = $"{Written(Nutrient.N)}{between}{Written(Nutrient.P)}{between}{Written(Nutrient.K)}";
        for (var nutrient = Nutrient.Ca; nutrient <= Nutrient.Na; nutrient++)
        {
            if (figures.ContainsKey(nutrient))
            {
                name += $" {LabelBasis.Symbol(nutrient)} {Written(nutrient)}";
            }
        }

        return name;

        string Written(Nutrient nutrient) => Say.Number(figures.TryGetValue(nutrient, out var figure) ? figure * scale : 0);
    }
}
