using Ashery.Exchange.Json;
using Ashery.Trials.Results;

namespace Ashery.Exchange.Trials;

/// <summary>
/// The answer of <c>ashery trial analyse --json</c>. Estimates are ratios of counts or differences of measurements in their unit; intervals hold together
/// at the level of the look; p is adjusted for the number of comparisons.
/// </summary>
public sealed record TrialReportJson
{
    public required string Name { get; init; }

    /// <summary>The answer in sentences, estimate and interval first.</summary>
    public required IReadOnlyList<string> Answer { get; init; }

    /// <summary><c>ratio</c> or <c>difference</c>.</summary>
    public required string Scale { get; init; }

    public required string Unit { get; init; }

    public required int Look { get; init; }

    public required int Looks { get; init; }

    /// <summary>What a p must be below at this look.</summary>
    public required double Level { get; init; }

    public required IReadOnlyList<ComparisonJson> Comparisons { get; init; }

    public required IReadOnlyList<GroupJson> Groups { get; init; }

    public required OverallJson? Overall { get; init; }

    public required FittedModelJson Model { get; init; }

    /// <summary>What each level of a factor does, all else alike; not adjusted.</summary>
    public required IReadOnlyList<FactorJson> Factors { get; init; }

    public required RepeatedJson? Repeated { get; init; }

    /// <summary>One figure a pot.</summary>
    public required IReadOnlyList<TrialPotJson> Pots { get; init; }

    public required IReadOnlyList<TrialWarningJson> Warnings { get; init; }

    public static TrialReportJson Of(TrialReport r) => new()
    {
        Name = r.Trial.Name,
        Answer = TrialAnswer.Of(r),
        Scale = r.IsRatio ? "ratio" : "difference",
        Unit = r.Trial.Measure.Unit,
        Look = r.Look,
        Looks = r.Trial.Looks,
        Level = r.Limit.Level,
        Comparisons = [.. r.Comparisons.Select(Of)],
        Groups = [.. r.Groups.Select(static g => new GroupJson(g.Treatment, g.Name, g.Pots, g.Mean, g.Deviation, g.Least, g.Most))],
        Overall = r.Overall is { } o ? new(o.F, o.Df, o.ResidualDf, o.P, o.PermutationP, o.Arrangements, o.Exact) : null,
        Model = new(
            r.Model.Kind, r.Model.Blocks, r.Model.Family, r.Model.ResidualDf, r.Model.ResidualDeviation, r.Model.Theta, r.Model.ThetaError, r.Model.Scale, r.Model.PoissonDeviance, r.Model.PoissonDispersion,
            [.. r.Model.Anova.Select(static a => new AnovaJson(a.Term, a.Df, a.SumOfSquares, a.F, a.P))]),
        Factors = [.. r.Factors.Select(static f => new FactorJson(f.Factor, f.Level, f.Against, f.Estimate, f.Low, f.High, f.P))],
        Repeated = r.Repeated is { } s ? new(s.PotDeviation, s.ResidualDeviation, s.Df, [.. s.Comparisons.Select(Of)]) : null,
        Pots = [.. r.Pots.Select(static p => new TrialPotJson(p.Pot, p.Block, p.Treatment, p.Value, p.Readings))],
        Warnings = [.. r.Warnings.Select(static w => new TrialWarningJson(w.Id, w.Words, w.Stops))],
    };

    public static string Write(TrialReport report) => AsheryJson.Write(Of(report), TrialJsonContext.Shared.TrialReportJson);

    private static ComparisonJson Of(Comparison c) => new(c.Feed, c.Against, c.Estimate, c.Low, c.High, c.P, c.PAlone, c.StandardError, c.PermutationP);
}

/// <summary>One feed against another; what cannot be had is null.</summary>
public sealed record ComparisonJson(string Feed, string Against, double? Estimate, double? Low, double? High, double? P, double? PAlone, double? StandardError, double? PermutationP);

/// <summary>Pots of a feed as they are.</summary>
public sealed record GroupJson(string Feed, string Name, int Pots, double Mean, double? Deviation, double Least, double Most);

/// <summary>All feeds at once, by the model and by lots drawn again.</summary>
public sealed record OverallJson(double F, int Df, int ResidualDf, double P, double PermutationP, int Arrangements, bool Exact);

/// <summary>The model: <c>linear</c>, <c>negativeBinomial</c>, <c>poisson</c> or <c>none</c>.</summary>
public sealed record FittedModelJson(
    string Kind, bool Blocks, string Family, int ResidualDf, double? ResidualDeviation, double? Theta, double? ThetaError, double? ErrorScale, double? PoissonDeviance, double? PoissonDispersion, IReadOnlyList<AnovaJson> Anova);

/// <summary>A row of the analysis of variance, each term after the ones above it.</summary>
public sealed record AnovaJson(string Term, int Df, double SumOfSquares, double? F, double? P);

/// <summary>A level of a factor against its first.</summary>
public sealed record FactorJson(string Factor, string Level, string Against, double Estimate, double Low, double High, double P);

/// <summary>All readings, each pot with a level of its own.</summary>
public sealed record RepeatedJson(double PotDeviation, double ResidualDeviation, int Df, IReadOnlyList<ComparisonJson> Comparisons);

/// <summary>The one figure of a pot.</summary>
public sealed record TrialPotJson(string Pot, int Block, string Feed, double Value, int Readings);
