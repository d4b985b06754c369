namespace Ashery.Trials.Chances;

/// <summary>Student's t when there is a difference: P(T ≤ x) = E Φ(x S − δ), S = √(χ²/df).</summary>
internal static class NoncentralT
{
    public static double Below(double x, double df, double shift) =>
        Math.Clamp(Quadrature.OverScale(s => Laws.Normal((x * s) - shift), df), 0, 1);

    /// <summary>Chance that |T| passes <paramref name="limit"/>: the power of a test of both sides.</summary>
    public static double Power(double limit, double df, double shift) => 1 - Below(limit, df, shift) + Below(-limit, df, shift);
}
