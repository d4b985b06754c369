using Ashery.Trials.Chances;
using Ashery.Trials.Designs;
using Ashery.Trials.Fits;

namespace Ashery.Trials.Results;

/// <summary>A figure from a pot.</summary>
/// <param name="Pot">Key of the pot, as on its tag.</param>
/// <param name="Value">Counted or measured.</param>
/// <param name="Date">When; null when it was looked at once.</param>
public sealed record TrialReading(string Pot, double Value, DateOnly? Date = null);

/// <summary>What a trial is judged by.</summary>
/// <param name="Trial">With its layout.</param>
/// <param name="Readings">In any order.</param>
public sealed record AnalysisRequest(Trial Trial, IReadOnlyList<TrialReading> Readings)
{
    /// <summary>Which look this is, from 1; null for the last.</summary>
    public int? Look { get; init; }
}

/// <summary>What a trial showed.</summary>
public sealed record TrialReport
{
    public required Trial Trial { get; init; }

    /// <summary>The look and the chance of a false alarm it may use.</summary>
    public required LookLimit Limit { get; init; }

    /// <summary>From 1.</summary>
    public required int Look { get; init; }

    /// <summary>One figure a pot.</summary>
    public required IReadOnlyList<PotResult> Pots { get; init; }

    public required IReadOnlyList<GroupResult> Groups { get; init; }

    /// <summary>Feeds against the control, or all pairs; the larger mean need not come first.</summary>
    public required IReadOnlyList<Comparison> Comparisons { get; init; }

    /// <summary>Whether any feed does anything; null when the data cannot answer.</summary>
    public required OverallTest? Overall { get; init; }

    /// <summary>Model behind the intervals.</summary>
    public required FittedModel Model { get; init; }

    /// <summary>Effects of the factors the feeds are made of; empty without factors.</summary>
    public IReadOnlyList<FactorEffect> Factors { get; init; } = [];

    /// <summary>All readings of pots that were measured on several days, in a model with a level of each pot's own; null otherwise.</summary>
    public RepeatedFit? Repeated { get; init; }

    public required IReadOnlyList<TrialWarning> Warnings { get; init; }

    /// <summary>Whether ratios (of counts) or differences (of measurements) are compared.</summary>
    public bool IsRatio => Trial.Measure.Kind == MeasureKind.Count;

    public bool CannotAnswer => Warnings.Any(static w => w.Stops);
}

/// <summary>The one figure of a pot.</summary>
public sealed record PotResult(string Pot, int Block, string Treatment, double Value, int Readings);

/// <summary>The pots of one feed as they are.</summary>
public sealed record GroupResult(string Treatment, string Name, int Pots, double Mean, double? Deviation, double Least, double Most);

/// <summary>One feed against another.</summary>
/// <param name="Feed">Key of the feed.</param>
/// <param name="Against">Key of the one it is compared with.</param>
/// <param name="Estimate">Ratio of counts or difference of measurements, block for block; null when it cannot be had.</param>
/// <param name="Low">Low end of the interval; all intervals of a trial hold together.</param>
/// <param name="High">High end.</param>
/// <param name="P">Adjusted for the number of comparisons.</param>
/// <param name="PAlone">As if this were the only comparison.</param>
/// <param name="StandardError">Of the difference, or of the ln ratio.</param>
/// <param name="PermutationP">From drawing the lots again within blocks, adjusted by Holm's steps; null when it cannot be had.</param>
public sealed record Comparison(string Feed, string Against, double? Estimate, double? Low, double? High, double? P, double? PAlone, double? StandardError, double? PermutationP)
{
    /// <summary>Whether the interval leaves out no difference; null when there is none.</summary>
    public bool? Shows(bool ratio) => Low is { } low && High is { } high ? low > (ratio ? 1 : 0) || high < (ratio ? 1 : 0) : null;
}

/// <summary>A test of all feeds at once.</summary>
/// <param name="F">Mean square of feeds over the residual one, or Wald's statistic of counts by its degrees of freedom, scaled.</param>
/// <param name="Df">Of the feeds.</param>
/// <param name="ResidualDf">Of the residuals.</param>
/// <param name="P">From the model.</param>
/// <param name="PermutationP">From lots drawn again.</param>
/// <param name="Arrangements">How many were looked at.</param>
/// <param name="Exact">True when these are all there are.</param>
public sealed record OverallTest(double F, int Df, int ResidualDf, double P, double PermutationP, int Arrangements, bool Exact);

/// <summary>The model that was fitted.</summary>
public sealed record FittedModel
{
    /// <summary><c>linear</c>, <c>negativeBinomial</c>, <c>poisson</c>, or <c>none</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Whether blocks are in it.</summary>
    public bool Blocks { get; init; }

    /// <summary>How the family of comparisons is held together: <c>tukey</c>, <c>dunnett</c>, <c>holm</c>, <c>none</c>.</summary>
    public string Family { get; init; } = "none";

    public int ResidualDf { get; init; }

    /// <summary>Standard deviation of a pot about the model; of measurements.</summary>
    public double? ResidualDeviation { get; init; }

    /// <summary>Shape of the spread between pots; of counts that vary more than chance.</summary>
    public double? Theta { get; init; }

    public double? ThetaError { get; init; }

    /// <summary>Residual deviance of the Poisson model.</summary>
    public double? PoissonDeviance { get; init; }

    /// <summary>Pearson's X² of the Poisson model over its degrees of freedom: 1 where counts scatter by chance alone.</summary>
    public double? PoissonDispersion { get; init; }

    /// <summary>What squared standard errors of counts were multiplied by, from 1.</summary>
    public double? Scale { get; init; }

    /// <summary>Terms one after the other; of measurements.</summary>
    public IReadOnlyList<AnovaRow> Anova { get; init; } = [];
}

/// <summary>What one level of a factor does against the first, all else alike.</summary>
public sealed record FactorEffect(string Factor, string Level, string Against, double Estimate, double Low, double High, double P);

/// <summary>The model of repeated measurements.</summary>
/// <param name="PotDeviation">Between pots fed alike.</param>
/// <param name="ResidualDeviation">Within a pot, from day to day.</param>
/// <param name="Comparisons">As in the report; no permutation.</param>
/// <param name="Df">Of the comparisons: pots less what the model takes.</param>
public sealed record RepeatedFit(double PotDeviation, double ResidualDeviation, IReadOnlyList<Comparison> Comparisons, int Df);
