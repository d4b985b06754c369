using Ashery.Exchange.Json;
using Ashery.Trials.Designs;

namespace Ashery.Exchange.Trials;

/// <summary>The answer of <c>ashery trial design --json</c>. Chances, differences and spreads are parts of 1.</summary>
public sealed record TrialPlanJson
{
    public required string Name { get; init; }

    public required int Seed { get; init; }

    /// <summary>Fewest pots a feed that reach the wished chance; null when even 200 are too few.</summary>
    public required int? PotsAFeedNeeded { get; init; }

    /// <summary>All pots of the trial that is needed.</summary>
    public required int? PotsNeeded { get; init; }

    /// <summary>Chance to see the difference with that number.</summary>
    public required double? PowerThen { get; init; }

    /// <summary>Pots a feed in the layout.</summary>
    public required int PotsAFeedLaidOut { get; init; }

    /// <summary>Chance with these.</summary>
    public required double? PowerHere { get; init; }

    /// <summary>Smallest gain over the control that these would show with the wished chance.</summary>
    public required double? SmallestSeen { get; init; }

    /// <summary>Simulated trials behind each chance; 0 where a formula is exact.</summary>
    public required int Simulated { get; init; }

    public required IReadOnlyList<PowerAtJson> Curve { get; init; }

    public required IReadOnlyList<TrialFeedJson> Feeds { get; init; }

    public required IReadOnlyList<TrialPlaceJson> Layout { get; init; }

    /// <summary>Pots that fill no block.</summary>
    public required IReadOnlyList<string> Spare { get; init; }

    public required IReadOnlyList<TrialLookJson> Looks { get; init; }

    public required IReadOnlyList<TrialWarningJson> Warnings { get; init; }

    public static TrialPlanJson Of(TrialPlan plan) => new()
    {
        Name = plan.Trial.Name,
        Seed = plan.Trial.Seed,
        PotsAFeedNeeded = plan.PotsNeeded,
        PotsNeeded = plan.PotsNeeded * plan.Trial.Treatments.Count,
        PowerThen = plan.PowerThen,
        PotsAFeedLaidOut = plan.PotsLaidOut,
        PowerHere = plan.PowerHere,
        SmallestSeen = plan.SmallestSeen,
        Simulated = plan.Simulated,
        Curve = [.. plan.Curve.Select(static c => new PowerAtJson(c.PotsAFeed, c.Power))],
        Feeds = [.. plan.Trial.Treatments.Select(static t => new TrialFeedJson(t.Id, t.Name, t.IsControl, t.Code))],
        Layout = [.. plan.Trial.Layout.Select(static p => new TrialPlaceJson(p.Pot, p.Block, p.Treatment))],
        Spare = [.. plan.Spare.Select(static p => p.Id)],
        Looks = [.. plan.Looks.Select(static l => new TrialLookJson(l.Fraction, l.Limit, l.Level))],
        Warnings = [.. plan.Warnings.Select(static w => new TrialWarningJson(w.Id, w.Words, w.Stops))],
    };

    public static string Write(TrialPlan plan) => AsheryJson.Write(Of(plan), TrialJsonContext.Shared.TrialPlanJson);
}

/// <summary>Chance with so many pots a feed.</summary>
public sealed record PowerAtJson(int PotsAFeed, double Power);

/// <summary>A feed with the code on its tags.</summary>
public sealed record TrialFeedJson(string Id, string Name, bool Control, string? Code);

/// <summary>A pot with its block and feed.</summary>
public sealed record TrialPlaceJson(string Pot, int Block, string Feed);

/// <summary>A look: part of the pots or visits that are in, |z| to pass, p to be below.</summary>
public sealed record TrialLookJson(double Fraction, double Limit, double Level);

/// <summary>What the grower must know; nothing can be answered when it stops.</summary>
public sealed record TrialWarningJson(string Id, string Words, bool Stops);
