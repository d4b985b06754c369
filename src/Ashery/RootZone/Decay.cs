using System.Runtime.CompilerServices;

namespace Ashery.RootZone;

/// <summary>First-order loss without an exponential.</summary>
internal static class Decay
{
    /// <summary>√12, where the approximant is at its top.</summary>
    public const double Steepest = 3.4641016151377544;

    /// <summary>
    /// 1 - exp(-x) by its Padé approximant x/(1 + x/2 + x²/12): always below 1, so that no pool goes negative; 0.1 % off at x = 1.
    /// Past its top at √12 the top stands, 0.93.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Share(double x)
    {
        x = Math.Min(x, Steepest);
        return x / (1 + (x * (0.5 + (x * (1.0 / 12)))));
    }
}
