namespace Ashery.Planning.Fit;

/// <summary>The steps in which doses are searched: multiples of the rule of thumb's full dose.</summary>
internal static class FitLevels
{
    private static readonly double[] Steps = [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3];

    public static int Count => Steps.Length;

    public static double At(int index) => Steps[index];

    public static int IndexOf(double level) => Array.FindLastIndex(Steps, s => s <= level + 1e-9);

    /// <summary>The step at or below.</summary>
    public static double AtMost(double level) => Steps[Math.Max(0, IndexOf(level))];
}
