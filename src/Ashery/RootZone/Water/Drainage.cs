using System.Runtime.Intrinsics;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Water;

/// <summary>Water above container capacity runs out below, before the plant takes its share of the day, and takes salts along.</summary>
internal static class Drainage
{
    /// <summary>
    /// Mixed reservoir with a bypass: c = e c(pore) + (1 - e) c(poured on), e the mixing of the medium; full mixing, e = 1, loses
    /// LF I/(W + I) of a dissolved salt.
    /// </summary>
    /// <param name="s">Pools at equilibrium with all their water.</param>
    /// <param name="l">Ledger.</param>
    /// <param name="p">Parameters.</param>
    /// <param name="brought">What the water poured on brought, mol.</param>
    /// <param name="inflow">How much was poured on and rained in, L.</param>
    /// <returns>Litres drained.</returns>
    public static double Run(ref PotPools s, ref PotLedger l, PotParameters p, in Ions brought, double inflow)
    {
        var drained = s.Water - p.Capacity;
        if (drained <= 0)
        {
            return 0;
        }

        var past = inflow > 0 ? Math.Min(1 - p.Mixing, inflow / drained) : 0;
        var pore = Vector256.Create((1 - past) * drained);
        var poured = Vector256.Create(inflow > 0 ? past * drained / inflow : 0);
        var leached = default(Ions);
        for (var i = 0; i < Ions.Width; i += Vector256<double>.Count)
        {
            IonMath.Store((pore * IonMath.Load(in s.Solution, i)) + (poured * IonMath.Load(in brought, i)), ref leached, i);
        }

        IonMath.Move(ref s.Mobile, in leached, ref l.Leached);
        s.Water -= drained;
        l.Drained += drained;
        return drained;
    }
}
