using System.Globalization;

namespace Ashery.Trials.Results;

/// <summary>The answer in sentences: the estimate with its interval first, p after it, and no more than the figures say.</summary>
public static class TrialAnswer
{
    public static IReadOnlyList<string> Of(TrialReport report)
    {
        if (report.Warnings.FirstOrDefault(static w => w.Stops) is { } stop)
        {
            return ["These figures cannot answer. " + stop.Words];
        }

        return [.. report.Comparisons.Select(c => One(report, c))];
    }

    private static string One(TrialReport report, Comparison c)
    {
        var (feed, against, what) = (Name(report, c.Feed), Name(report, c.Against), report.Trial.Measure.Name);
        if (c is not { Estimate: { } estimate, Low: { } low, High: { } high, P: { } p })
        {
            return $"{feed} against {against}: no estimate can be had{(c.PermutationP is { } alone ? $"; permutation p {P(alone)}" : string.Empty)}.";
        }

        var percent = (100 * (1 - report.Limit.Level)).ToString("0.#", CultureInfo.InvariantCulture);
        var chances = $"{percent} % interval {Figure(low)} to {Figure(high)}; p {P(p)}{(c.PermutationP is { } drawn ? $", by permutation {P(drawn)}" : string.Empty)}";
        var unit = report.Trial.Measure.Unit.Length > 0 ? " " + report.Trial.Measure.Unit : string.Empty;
        var said = report.IsRatio
            ? $"{feed}: {Figure(estimate)} times the {what} of {against} ({chances})."
            : $"{feed}: {Figure(Math.Abs(estimate))}{unit} {(estimate < 0 ? "less" : "more")} {what} than {against} ({chances}).";
        return said + (c.Shows(report.IsRatio) == true ? string.Empty : $" That includes no difference: this trial does not tell them apart, nor does it show that they are alike.");
    }

    /// <summary>Three digits that count.</summary>
    public static string Figure(double value)
    {
        var size = Math.Abs(value);
        return size >= 1000 ? (Math.Round(value / Math.Pow(10, Math.Floor(Math.Log10(size)) - 2)) * Math.Pow(10, Math.Floor(Math.Log10(size)) - 2)).ToString("0", CultureInfo.InvariantCulture)
            : value.ToString(size switch { >= 100 => "0", >= 10 => "0.0", >= 1 => "0.00", >= 0.1 => "0.000", 0 => "0", _ => "0.0000" }, CultureInfo.InvariantCulture);
    }

    public static string P(double p) => p < 0.001 ? "below 0.001" : p.ToString(p < 0.1 ? "0.000" : "0.00", CultureInfo.InvariantCulture);

    private static string Name(TrialReport report, string id) => report.Trial.Find(id)?.Name ?? id;
}
