namespace Ashery.RootZone.Draws;

/// <summary>
/// Shares of variance from two independent designs A and B and, for each group, A with the group's columns from B. First order by Saltelli and others 2010 (Computer
/// Physics Communications 181:259-270, table 2 b), V = mean f(B) (f(AB) - f(A)); total by Jansen 1999 (Computer Physics Communications 117:35-43), V = mean (f(A) - f(AB))² / 2;
/// both from memory. Values are centred first, which changes no expectation and quietens the first.
/// </summary>
public static class SobolShares
{
    private const int Blocks = 10;

    /// <summary>Shares of one group.</summary>
    /// <param name="a">Model at the rows of A.</param>
    /// <param name="b">At the rows of B.</param>
    /// <param name="mixed">At the rows of A with the group's columns from B.</param>
    public static SobolShare Of(ReadOnlySpan<double> a, ReadOnlySpan<double> b, ReadOnlySpan<double> mixed)
    {
        if (a.Length < 2 || a.Length != b.Length || a.Length != mixed.Length)
        {
            throw new ArgumentException("The three designs have as many rows, two at least.", nameof(mixed));
        }

        var (mean, variance) = Moments(a, b);
        if (!(variance > 0))
        {
            return default;
        }

        var (first, total) = Sums(a, b, mixed, mean, 0, a.Length);
        return new(first / variance, total / variance, Error(a, b, mixed, mean, variance));
    }

    /// <summary>Mean and variance of both designs together.</summary>
    public static (double Mean, double Variance) Moments(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0, square = 0;
        foreach (var v in a)
        {
            sum += v;
        }

        foreach (var v in b)
        {
            sum += v;
        }

        var mean = sum / (a.Length + b.Length);
        foreach (var v in a)
        {
            square += (v - mean) * (v - mean);
        }

        foreach (var v in b)
        {
            square += (v - mean) * (v - mean);
        }

        return (mean, square / (a.Length + b.Length - 1));
    }

    private static (double First, double Total) Sums(ReadOnlySpan<double> a, ReadOnlySpan<double> b, ReadOnlySpan<double> mixed, double mean, int from, int to)
    {
        double first = 0, total = 0;
        for (var i = from; i < to; i++)
        {
            first += (b[i] - mean) * (mixed[i] - a[i]);
            total += (a[i] - mixed[i]) * (a[i] - mixed[i]);
        }

        return (first / (to - from), total / (2 * (to - from)));
    }

    // Standard error of the first-order share from the scatter of ten blocks of rows.
    private static double Error(ReadOnlySpan<double> a, ReadOnlySpan<double> b, ReadOnlySpan<double> mixed, double mean, double variance)
    {
        if (a.Length < 2 * Blocks)
        {
            return double.NaN;
        }

        double sum = 0, square = 0;
        for (var k = 0; k < Blocks; k++)
        {
            var first = Sums(a, b, mixed, mean, a.Length * k / Blocks, a.Length * (k + 1) / Blocks).First / variance;
            sum += first;
            square += first * first;
        }

        return Math.Sqrt(Math.Max(0, (square - (sum * sum / Blocks)) / (Blocks - 1) / Blocks));
    }
}

/// <summary>Shares of variance, parts of 1.</summary>
/// <param name="First">What would go if this were known, on its own; an estimate, so slightly below 0 where it is nothing.</param>
/// <param name="Total">What this has a part in, together with others.</param>
/// <param name="Error">Standard error of the first; not a number with few rows.</param>
public readonly record struct SobolShare(double First, double Total, double Error);
