using Ashery.Problems;

namespace Ashery.Trials.Designs;

/// <summary>Chance to see the wished difference with so many pots a feed.</summary>
public sealed record PowerAt(int PotsAFeed, double Power);

/// <summary>A trial that is laid out, with what it can show.</summary>
public sealed record TrialPlan
{
    /// <summary>With its layout, and codes when it is blind.</summary>
    public required Trial Trial { get; init; }

    /// <summary>Fewest pots a feed that reach the wished chance; null when even the most are too few.</summary>
    public required int? PotsNeeded { get; init; }

    /// <summary>Chance with the needed number.</summary>
    public required double? PowerThen { get; init; }

    /// <summary>Pots a feed in the layout; 0 when no pots were named.</summary>
    public required int PotsLaidOut { get; init; }

    /// <summary>Chance with the pots laid out; null when it cannot be told.</summary>
    public required double? PowerHere { get; init; }

    /// <summary>Smallest gain, as a part of the control, that the pots laid out would show with the wished chance; null when none would.</summary>
    public required double? SmallestSeen { get; init; }

    /// <summary>Chances over numbers of pots, for a picture.</summary>
    public required IReadOnlyList<PowerAt> Curve { get; init; }

    /// <summary>Pots that fill no block.</summary>
    public required IReadOnlyList<TrialPot> Spare { get; init; }

    /// <summary>Simulated trials behind each chance; 0 where a formula is exact.</summary>
    public required int Simulated { get; init; }

    /// <summary>Limits of the looks; a single one at the end by default.</summary>
    public required IReadOnlyList<Chances.LookLimit> Looks { get; init; }

    public required IReadOnlyList<TrialWarning> Warnings { get; init; }
}

/// <summary>Something the grower must know about a trial.</summary>
/// <param name="Id">Key, such as <c>one-pot</c>.</param>
/// <param name="Words">In a sentence or two.</param>
/// <param name="Stops">True when no answer can be had.</param>
public sealed record TrialWarning(string Id, string Words, bool Stops = false);

/// <summary>Designs a trial: how many pots, and which pot gets what.</summary>
public static class TrialDesign
{
    /// <summary>Simulated trials behind a chance of counts.</summary>
    public const int UsualDraws = 10_000;

    /// <summary>No grower's trial has more pots a feed.</summary>
    public const int MostPotsAFeed = 200;

    /// <summary>Lays a trial out by its seed and says what it can show.</summary>
    public static Result<TrialPlan> Plan(Trial trial, int draws = UsualDraws) => Make(trial, draws, anew: true);

    /// <summary>What a trial that was laid out before can show; its layout and codes stay.</summary>
    public static Result<TrialPlan> Kept(Trial trial, int draws = UsualDraws) => Make(trial, draws, anew: trial.Layout.Count == 0);

    private static Result<TrialPlan> Make(Trial trial, int draws, bool anew)
    {
        var wrong = TrialCheck.Of(anew ? trial with { Layout = [] } : trial);
        if (draws is < 100 or > 100_000)
        {
            wrong.Add(new("draws", FormattableString.Invariant($"{draws} simulated trials are not between 100 and 100000."), "Leave it out for 10000."));
        }

        if (wrong.Count > 0)
        {
            return Result.Fail<TrialPlan>(wrong);
        }

        trial = !anew ? trial : trial with
        {
            Treatments = [.. trial.Treatments.Select(static t => t with { Code = null })],
            Layout = BlockLayout.Draw(trial),
        };
        // Codes come from a stream of their own, so that turning a trial blind changes no layout.
        if (trial.Blind && trial.Treatments.Any(static t => t.Code is null))
        {
            trial = trial with { Treatments = BlockLayout.WithCodes(trial.Treatments, trial.Seed) };
        }

        var looks = Looks(trial);
        var power = new PowerSearch(trial, looks[^1].Level, draws);
        var needed = power.Fewest(MostPotsAFeed);
        var here = trial.Layout.Count / trial.Treatments.Count;
        var chance = here > 1 ? power.At(here) : double.NaN;
        var laid = trial.Layout.Select(static p => p.Pot).ToHashSet(StringComparer.Ordinal);
        var plan = new TrialPlan
        {
            Trial = trial,
            PotsNeeded = needed,
            PowerThen = needed is { } n ? power.At(n) : null,
            PotsLaidOut = here,
            PowerHere = double.IsNaN(chance) ? null : chance,
            SmallestSeen = here > 1 ? PowerSearch.Smallest(trial, here, looks[^1].Level, draws) : null,
            Curve = power.Known(),
            Spare = [.. trial.Pots.Where(p => !laid.Contains(p.Id))],
            Simulated = trial.Measure.Kind == MeasureKind.Count ? draws : 0,
            Looks = looks,
            Warnings = [],
        };
        return Result.Of(plan with { Warnings = DesignWarnings.Of(plan) });
    }

    /// <summary>Limits of equally spaced looks.</summary>
    public static IReadOnlyList<Chances.LookLimit> Looks(Trial trial) =>
        Chances.Spending.Limits(trial.Spending, [.. Enumerable.Range(1, trial.Looks).Select(k => k / (double)trial.Looks)], trial.Wish.Alpha);
}
