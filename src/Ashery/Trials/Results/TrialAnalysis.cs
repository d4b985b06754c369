using Ashery.Problems;
using Ashery.Trials.Chances;
using Ashery.Trials.Designs;

namespace Ashery.Trials.Results;

/// <summary>Judges a trial: estimates with intervals, tests beside them, and warnings where the figures cannot answer.</summary>
public static class TrialAnalysis
{
    public static Result<TrialReport> Of(AnalysisRequest request)
    {
        var trial = request.Trial;
        var wrong = TrialCheck.Of(trial);
        if (request.Look is { } asked && !(asked >= 1 && asked <= trial.Looks))
        {
            wrong.Add(new("look", FormattableString.Invariant($"Look {asked} of {trial.Looks} cannot be."), "Name the look you are at, from 1 to the number that was planned."));
        }

        if (wrong.Count > 0)
        {
            return Result.Fail<TrialReport>(wrong);
        }

        var figures = PotFigures.Of(trial, request.Readings);
        if (!figures.Ok)
        {
            return Result.Fail<TrialReport>(figures.Problems);
        }

        var look = request.Look ?? trial.Looks;
        var limit = TrialDesign.Looks(trial)[look - 1];
        var pots = figures.Value;
        var warnings = new List<TrialWarning>();
        var present = ResultWarnings.Before(trial, request.Readings, pots, warnings);
        var report = new TrialReport
        {
            Trial = trial,
            Limit = limit,
            Look = look,
            Pots = pots,
            Groups = [.. trial.Treatments.Where(t => pots.Any(p => p.Treatment == t.Id)).Select(t => Group(t, [.. pots.Where(p => p.Treatment == t.Id).Select(static p => p.Value)]))],
            Comparisons = [],
            Overall = null,
            Model = new() { Kind = "none" },
            Warnings = warnings,
        };
        if (report.CannotAnswer)
        {
            return Result.Of(report);
        }

        var pairs = Pairs(trial, present);
        report = trial.Measure.Kind == MeasureKind.Count ? CountAnalysis.Of(report, pairs, present, warnings) : GrowthAnalysis.Of(report, pairs, present, request.Readings, warnings);
        report = WithPermutations(report, present, warnings);
        ResultWarnings.After(report, warnings);
        return Result.Of(report);
    }

    /// <summary>The feeds with their index against which, in the order of the trial.</summary>
    private static List<(string Feed, string Against)> Pairs(Trial trial, IReadOnlyList<string> present)
    {
        var pairs = new List<(string, string)>();
        if (trial.Control is { } control && present.Contains(control.Id))
        {
            pairs.AddRange(present.Where(f => f != control.Id).Select(f => (f, control.Id)));
            return pairs;
        }

        for (var a = 0; a < present.Count; a++)
        {
            for (var b = a + 1; b < present.Count; b++)
            {
                pairs.Add((present[b], present[a]));
            }
        }

        return pairs;
    }

    private static GroupResult Group(Treatment treatment, double[] values)
    {
        var mean = values.Average();
        double? deviation = values.Length > 1 ? Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1)) : null;
        return new(treatment.Id, treatment.Name, values.Length, mean, deviation, values.Min(), values.Max());
    }

    private static TrialReport WithPermutations(TrialReport report, IReadOnlyList<string> present, List<TrialWarning> warnings)
    {
        var whole = Permutation.Test(report.Pots, present, report.Trial.Seed);
        var each = report.Comparisons.Select(c => Permutation.Test(report.Pots, [c.Feed, c.Against], report.Trial.Seed)).ToList();
        var adjusted = Holm.Adjust([.. each.Select(static p => p.P)]);
        if (whole.Smallest > report.Limit.Level)
        {
            warnings.Add(new("few-arrangements", FormattableString.Invariant($"So few pots can be drawn by lot in so few ways that no permutation p can be below {whole.Smallest:0.###}: it cannot confirm anything here, only the model can, and it leans on its assumptions.")));
        }

        else if (each.Count > 0 && Math.Min(1, each.Count * each.Min(static p => p.Smallest)) is var least && least > report.Limit.Level)
        {
            warnings.Add(new("few-pair-arrangements", FormattableString.Invariant($"The pots of two feeds alone can be drawn by lot in so few ways that no permutation p of a single comparison can be below {least:0.###} here; the one of all feeds together can.")));
        }

        return report with
        {
            Comparisons = [.. report.Comparisons.Select((c, i) => c with { PermutationP = adjusted[i] })],
            Overall = report.Overall is { } overall ? overall with { PermutationP = whole.P, Arrangements = whole.Arrangements, Exact = whole.Exact } : null,
        };
    }
}
