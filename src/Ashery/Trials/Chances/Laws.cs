using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Ashery.Trials.Chances;

/// <summary>The distributions that analyses hang on, from MathNet.Numerics, which is loaded at the first call and not before.</summary>
internal static class Laws
{
    /// <summary>Φ(z) of the standard normal.</summary>
    public static double Normal(double z) => 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));

    public static double NormalQuantile(double p) => MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, p);

    /// <summary>P(|T| &gt; |t|) of Student's t; no end of degrees of freedom is the normal.</summary>
    public static double StudentBothTails(double t, double df) =>
        double.IsPositiveInfinity(df)
            ? SpecialFunctions.Erfc(Math.Abs(t) / Math.Sqrt(2))
            : SpecialFunctions.BetaRegularized(df / 2, 0.5, df / (df + (t * t)));

    /// <summary>The t that is passed on both sides together with chance <paramref name="alpha"/>.</summary>
    public static double StudentBothSides(double alpha, double df) =>
        double.IsPositiveInfinity(df) ? NormalQuantile(1 - (alpha / 2)) : StudentT.InvCDF(0, 1, df, 1 - (alpha / 2));

    /// <summary>P(F &gt; f).</summary>
    public static double FTail(double f, double df1, double df2) =>
        f <= 0 ? 1 : SpecialFunctions.BetaRegularized(df2 / 2, df1 / 2, df2 / (df2 + (df1 * f)));

    /// <summary>P(X² &gt; x).</summary>
    public static double ChiSquaredTail(double x, double df) => x <= 0 ? 1 : SpecialFunctions.GammaUpperRegularized(df / 2, x / 2);

    public static double LogGamma(double x) => SpecialFunctions.GammaLn(x);

    public static double Digamma(double x) => SpecialFunctions.DiGamma(x);

    /// <summary>ψ′(x) for x &gt; 0: raised by the recurrence, then the asymptotic series (Abramowitz and Stegun 6.4.6 and 6.4.12; from memory).</summary>
    public static double Trigamma(double x)
    {
        var sum = 0.0;
        for (; x < 12; x++)
        {
            sum += 1 / (x * x);
        }

        var r = 1 / (x * x);
        return sum + (1 / x) + (r / 2) + (r / x * ((1.0 / 6) - (r * ((1.0 / 30) - (r * ((1.0 / 42) - (r * ((1.0 / 30) - (r * 5 / 66)))))))));
    }
}
