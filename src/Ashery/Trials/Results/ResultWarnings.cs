using Ashery.Trials.Designs;

namespace Ashery.Trials.Results;

/// <summary>What the figures of a trial cannot tell, in words.</summary>
internal static class ResultWarnings
{
    private const double FarOff = 3;

    /// <summary>Before any model; the feeds that have figures.</summary>
    public static IReadOnlyList<string> Before(Trial trial, IReadOnlyList<TrialReading> readings, IReadOnlyList<PotResult> pots, List<TrialWarning> warnings)
    {
        var with = pots.Select(static p => p.Pot).ToHashSet(StringComparer.Ordinal);
        var missing = trial.Layout.Where(p => !with.Contains(p.Pot)).Select(static p => p.Pot).ToList();
        var present = trial.Treatments.Where(t => pots.Any(p => p.Treatment == t.Id)).Select(static t => t.Id).ToList();
        if (missing.Count > 0)
        {
            warnings.Add(new("missing", FormattableString.Invariant($"No figure from {Some(missing)}. If pots are missing because of their feed, as dead ones may be, what is left flatters it.")));
        }

        foreach (var lost in trial.Treatments.Where(t => !present.Contains(t.Id)))
        {
            warnings.Add(new("empty-feed", $"No pot of {lost.Name} has a figure: nothing can be said of it.", Stops: present.Count < 2));
        }

        if (present.Count >= 2 && present.All(f => pots.Count(p => p.Treatment == f) == 1))
        {
            warnings.Add(new("one-pot", "One pot a feed proves nothing: two pots that are fed alike differ too, and here nobody can tell how much.", Stops: true));
        }
        else if (present.Where(f => pots.Count(p => p.Treatment == f) == 1).Select(f => trial.Find(f)!.Name).ToList() is { Count: > 0 } single)
        {
            warnings.Add(new("single-pot", $"Only one pot of {string.Join(" and of ", single)}: by itself it proves nothing, and its interval leans on the other feeds' pots to vary as it does."));
        }

        var visits = pots.Select(static p => p.Readings).Distinct().ToList();
        if (visits.Count > 1)
        {
            warnings.Add(new("uneven-visits", "Pots were not looked at equally often" + (trial.Measure.Summary == PotSummary.Sum ? ": a sum of fewer visits is smaller by itself." : ".")));
        }

        if (trial.Measure.Summary == PotSummary.Slope && (visits.Min() < 2 || readings.Any(static r => r.Date is null)))
        {
            warnings.Add(new("no-slope", "Growth a day needs two dated figures from each pot.", Stops: true));
        }

        if (pots.Count > 0 && pots.All(static p => p.Value == 0))
        {
            warnings.Add(new("all-zero", trial.Measure.Kind == MeasureKind.Count ? "Every pot bore nothing: there is nothing to compare yet." : "Every figure is 0: there is nothing to compare.", Stops: true));
        }

        return present;
    }

    public static void NoResiduals(List<TrialWarning> warnings) =>
        warnings.Add(new("no-repeats", "After feeds and blocks nothing is left to tell how much pots differ by themselves: no interval can be had. More pots a feed are needed.", Stops: true));

    public static void Bare(Trial trial, IReadOnlyList<string> bare, List<TrialWarning> warnings)
    {
        foreach (var feed in bare)
        {
            warnings.Add(new("separation", $"Every pot of {trial.Find(feed)!.Name} bore nothing. Against it a ratio has no end, so no interval is given; the permutation p stands alone."));
        }
    }

    /// <summary>After the model.</summary>
    public static void After(TrialReport report, List<TrialWarning> warnings)
    {
        if (report.Model.PoissonDispersion is > 1.5 and { } dispersion)
        {
            warnings.Add(new("overdispersed", FormattableString.Invariant($"Pots differ {dispersion:0.0} times as much (in variance) as counting alone would make them. The negative binomial model allows for it; a Poisson model would promise too much.")));
        }

        if (report.Comparisons.Any(static c => c.Estimate is null) && !warnings.Exists(static w => w.Id is "separation"))
        {
            warnings.Add(new("apart", "Some feeds never stand in a block together, nor are linked by one that does: they cannot be compared."));
        }

        if (report.Look < report.Trial.Looks)
        {
            warnings.Add(new("early-look", FormattableString.Invariant($"This is look {report.Look} of {report.Trial.Looks}. A p counts here only below {report.Limit.Level:0.#####}, and the intervals are as wide as that asks.")));
        }

        foreach (var pot in Outliers(report))
        {
            warnings.Add(new("far-off", $"Pot {pot} is far from the others of its feed. Look at the record and the pot again; do not leave it out because it does not fit."));
        }
    }

    // More than three standard deviations of the model from the mean of its feed, its block's share taken off.
    private static IEnumerable<string> Outliers(TrialReport report)
    {
        if (report.Model.ResidualDeviation is not { } deviation)
        {
            yield break;
        }

        var whole = report.Pots.Average(static p => p.Value);
        foreach (var pot in report.Pots)
        {
            var feed = report.Groups.First(g => g.Treatment == pot.Treatment).Mean;
            var block = report.Model.Blocks ? report.Pots.Where(p => p.Block == pot.Block).Average(static p => p.Value) - whole : 0;
            if (Math.Abs(pot.Value - feed - block) > FarOff * deviation)
            {
                yield return pot.Pot;
            }
        }
    }

    private static string Some(List<string> pots) =>
        pots.Count <= 8 ? "pot " + string.Join(", ", pots) : FormattableString.Invariant($"{pots.Count} pots ({string.Join(", ", pots.Take(6))} and others)");
}
