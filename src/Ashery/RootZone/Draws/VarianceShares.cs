using Ashery.Problems;

namespace Ashery.RootZone.Draws;

/// <summary>Which unknown matters most: variance of the forecast shared out among groups of unknowns.</summary>
public static class VarianceShares
{
    /// <summary>Rows of the two designs; a pair of runs and one for each group are made of each.</summary>
    public const int UsualRows = 256;

    /// <summary>Runs (groups + 2) x rows draws and shares out the variance of each target.</summary>
    public static Result<IReadOnlyList<TargetShares>> Run(PotForecastRequest request, int rows = UsualRows, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        var problems = ForecastCheck.Of(request);
        if (rows is < 20 or > PotForecastRequest.MostDraws)
        {
            problems.Add(new("draws", "Shares of variance need 20 rows or more.", "256 are usual."));
        }

        if (problems.Exists(static p => p.Severity == Severity.Error))
        {
            return Result.Fail<IReadOnlyList<TargetShares>>(problems);
        }

        var space = request.Space ?? DrawSpace.Of(request.Scenario);
        List<UncertainGroup> groups = [.. space.Figures.Select(static f => f.Group).Distinct().Order()];
        if (request.Weather.Varies)
        {
            groups.Insert(0, UncertainGroup.Weather);
        }

        var ids = space.Figures.Select(static f => f.Id).ToList();
        var (a, b) = (LatinHypercube.Of(ids, rows, request.Seed, 1), LatinHypercube.Of(ids, rows, request.Seed, 2));
        var runner = new DrawRunner(request.Scenario, request.Weather, request.From, request.Days, space);
        var designs = groups.Count + 2;
        var found = new double[TargetSink.Targets][][];
        for (var t = 0; t < found.Length; t++)
        {
            found[t] = [.. Enumerable.Range(0, designs).Select(_ => new double[rows])];
        }

        // Rows one after another, all designs of a row together: they share one weather but for the weather's own.
        runner.Each(rows, request.Threads, (desk, row) =>
        {
            var shares = new double[space.Count];
            for (var design = 0; design < designs; design++)
            {
                var group = design < 2 ? (UncertainGroup?)null : groups[design - 2];
                for (var j = 0; j < shares.Length; j++)
                {
                    shares[j] = (design == 1 || space.Figures[j].Group == group ? b : a)[(row * shares.Length) + j];
                }

                var sink = default(TargetSink);
                runner.Run(desk, shares, design == 1 || group == UncertainGroup.Weather ? rows + row : row, ref sink);
                for (var t = 0; t < found.Length; t++)
                {
                    found[t][design][row] = sink.Of((PotTarget)t);
                }
            }
        }, progress, cancellation);
        return Result.Of<IReadOnlyList<TargetShares>>([.. found.Select((f, t) => Shares((PotTarget)t, groups, f))]);
    }

    private static TargetShares Shares(PotTarget target, List<UncertainGroup> groups, double[][] found)
    {
        var (mean, variance) = SobolShares.Moments(found[0], found[1]);
        var shares = groups.Select((g, i) => new GroupShare(g, SpreadRows.NameOf(g), SobolShares.Of(found[0], found[1], found[i + 2])));
        return new(target, mean, Math.Sqrt(variance), [.. shares.OrderByDescending(static s => s.Share.Total)]);
    }
}

/// <summary>Variance of a target and who makes it.</summary>
/// <param name="Target">Which.</param>
/// <param name="Mean">Over all draws.</param>
/// <param name="Deviation">Standard deviation over all draws.</param>
/// <param name="Groups">Largest total share first.</param>
public sealed record TargetShares(PotTarget Target, double Mean, double Deviation, IReadOnlyList<GroupShare> Groups);

/// <summary>A group's part in the variance.</summary>
public sealed record GroupShare(UncertainGroup Group, string Name, SobolShare Share);
