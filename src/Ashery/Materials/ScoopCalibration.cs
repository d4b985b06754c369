using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Materials;

/// <summary>
/// Grams a scoop from the grower's own weighing: fill so many level scoops, weigh them together, divide. Weighed several times over, it also
/// says how much one scoop differs from the next.
/// </summary>
public static class ScoopCalibration
{
    /// <summary>Fewer scoops and the scale's own step shows in the result.</summary>
    public const int UsualCount = 10;

    /// <summary>Standard deviations on either side of the mean that the range covers.</summary>
    private const double Width = 2;

    /// <summary>Mean of one weighing; lowest and highest are the mean too, as nothing is known of the spread.</summary>
    /// <param name="count">Level scoops weighed together.</param>
    /// <param name="together">What they weighed.</param>
    /// <param name="scaleStep">Resolution of the scale, g.</param>
    public static Result<Spread> Of(int count, Mass together, double scaleStep = 0)
    {
        if (Wrong(count, together) is { } problem)
        {
            return Result.Fail<Spread>(problem);
        }

        var mean = together.Grams / count;
        return scaleStep > 0.05 * together.Grams
            ? Result.Of(Spread.Exactly(mean), new Problem("scoop", FormattableString.Invariant($"A scale in steps of {scaleStep:0.##} g is coarse for {together.Grams:0.##} g."),
                FormattableString.Invariant($"Weigh more scoops together: {Math.Ceiling(count * scaleStep * 20 / together.Grams):0} or more."), Severity.Warning))
            : Result.Of(Spread.Exactly(mean));
    }

    /// <summary>
    /// Mean of several weighings of the same number of scoops, and the range of a single scoop: mean ± 2 s √count, where s is the standard
    /// deviation of the means (the mean of n scoops varies √n times less than one scoop).
    /// </summary>
    public static Result<Spread> Of(int count, IReadOnlyList<Mass> weighings)
    {
        if (weighings.Count == 0)
        {
            return Result.Fail<Spread>("scoop", "No weighing is given.", "Weigh ten level scoops together.");
        }

        var mean = 0.0;
        foreach (var weighing in weighings)
        {
            if (Wrong(count, weighing) is { } problem)
            {
                return Result.Fail<Spread>(problem);
            }

            mean += weighing.Grams / count / weighings.Count;
        }

        if (weighings.Count == 1)
        {
            return Result.Of(Spread.Exactly(mean));
        }

        var squares = 0.0;
        foreach (var weighing in weighings)
        {
            var off = (weighing.Grams / count) - mean;
            squares += off * off;
        }

        var single = Width * Math.Sqrt(squares / (weighings.Count - 1) * count);
        return Result.Of(new Spread(Math.Max(0, mean - single), mean, mean + single));
    }

    private static Problem? Wrong(int count, Mass together) => count is < 1 or > 1000
        ? new Problem("scoop", FormattableString.Invariant($"{count} scoops is not a number of scoops to weigh."), "Fill 1 to 1000 level scoops; ten is usual.")
        : double.IsFinite(together.Grams) && together.Grams > 0
            ? null
            : new Problem("scoop", "The scoops weigh nothing.", "Give what they weighed together, such as 52g.");
}
