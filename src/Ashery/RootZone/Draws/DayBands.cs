namespace Ashery.RootZone.Draws;

/// <summary>One evening of one figure over all draws: the shares of draws below.</summary>
/// <param name="P5">5 % of draws lie below.</param>
/// <param name="P25">25 %.</param>
/// <param name="P50">Half.</param>
/// <param name="P75">75 %.</param>
/// <param name="P95">95 %.</param>
public readonly record struct DayBand(double P5, double P25, double P50, double P75, double P95);

/// <summary>A figure through the run.</summary>
/// <param name="Figure">Which.</param>
/// <param name="Days">One band an evening.</param>
public sealed record DayBands(PotFigure Figure, IReadOnlyList<DayBand> Days);
