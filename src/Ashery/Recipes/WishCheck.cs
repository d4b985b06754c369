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

        foreach (var (nutrient, figure) in figures)
        {
            if (figure <= 0 && nutrient is not (Nutrient.N or Nutrient.P or Nutrient.K))
            {
                var symbol = LabelBasis.Symbol(nutrient);
                return Result.Fail<Wish>(
                    $"{field}, {symbol}", $"{symbol} is wanted as zero.", $"Leave it out, or limit it, as in --limit \"{symbol}<=0.1%\".");
            }
        }

        var wanted = figures.Values.Where(static f => f > 0).ToList();
        return wanted.Max() / wanted.Min() > WidestSpan
            ? Result.Fail<Wish>(
                field, "The largest part is more than ten million times the smallest.", "Bring the parts to one unit, as in 17:5:24 Fe 0.1.")
            : Result.Of(new Wish(figures, IsGrade: false, Name(figures, ':')), notes);
    }

    /// <param name="percents">Percent by weight, label basis.</param>
    /// <param name="field">For messages.</param>
    /// <param name="notes">Passed on with the wish.</param>
    public static Result<Wish> Grade(IReadOnlyDictionary<Nutrient, double> percents, string field, IReadOnlyList<Problem> notes)
    {
        if (Figures(percents, field) is { } problem)
        {
            return Result.Fail<Wish>(problem);
        }

        var sum = percents.Values.Sum();
        if (sum > 100)
        {
            return Result.Fail<Wish>(
                field, $"The parts add up to {Say.Number(sum)} %, more than the blend itself.", "Bring them to 100 % or less, as in 12-4-20.");
        }

        var fractions = percents.ToDictionary(static p => p.Key, static p => p.Value / 100);
        return Result.Of(new Wish(fractions, IsGrade: true, Name(percents, '-')), notes);
    }

    private static Problem? Figures(IReadOnlyDictionary<Nutrient, double> figures, string field)
    {
        foreach (var (nutrient, figure) in figures)
        {
            if (!double.IsFinite(figure) || figure < 0)
            {
                return new Problem($"{field}, {LabelBasis.Symbol(nutrient)}", "The figure is not a number from zero up.", "Write one, as in 17:5:24.");
            }
        }

        return figures.Values.Any(static f => f > 0)
            ? null
            : new Problem(field, "Every part is zero, so nothing is wanted.", "Give at least one nutrient a figure above zero, as in 17:5:24.");
    }

    private static string Name(IReadOnlyDictionary<Nutrient, double> figures, char between)
    {
        var name = string.Join(between, new[] { Nutrient.N, Nutrient.P, Nutrient.K }.Select(n => Say.Number(figures.GetValueOrDefault(n))));
        foreach (var (nutrient, figure) in figures.OrderBy(static f => f.Key))
        {
            if (nutrient > Nutrient.K)
            {
                name += $" {LabelBasis.Symbol(nutrient)} {Say.Number(figure)}";
            }
        }

        return name;
    }
}
