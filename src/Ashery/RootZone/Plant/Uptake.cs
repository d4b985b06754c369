using System.Runtime.Intrinsics;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Plant;

/// <summary>
/// Uptake by demand: what new growth holds and a part of what the plant lacks, as far as the pore water gives it,
/// U = D S/(S + W half + D): never more than the demand D nor than what is dissolved, S.
/// </summary>
internal static class Uptake
{
    /// <param name="s">Pools; pore water at the last equilibrium.</param>
    /// <param name="l">Ledger.</param>
    /// <param name="p">Parameters.</param>
    /// <param name="growth">Dry matter the step would make, well fed, g.</param>
    /// <param name="transpired">L.</param>
    /// <param name="water">Water the pore water was in equilibrium with, L.</param>
    public static void Run(ref PotPools s, ref PotLedger l, PotParameters p, double growth, double transpired, double water)
    {
        var active = growth > 0 ? p.CatchUp : 0;
        var taken = default(Ions);
        var (w, grown, want, lack) = (Vector256.Create(water), Vector256.Create(growth * p.FlowerDemand), Vector256.Create(s.Biomass), Vector256.Create(active));
        for (var i = 0; i < Ions.Width; i += Vector256<double>.Count)
        {
            var there = Vector256.Min(w * IonMath.Load(in s.Solution, i), IonMath.Load(in s.Mobile, i));
            var wanted = IonMath.Load(in p.Wanted, i);
            var missing = Vector256.Max(Vector256<double>.Zero, (want * wanted) - IonMath.Load(in s.InPlant, i));
            var demand = (grown * wanted) + (lack * missing);
            IonMath.Store(demand * there / (there + (w * IonMath.Load(in p.HalfUptake, i)) + demand), ref taken, i);
        }

        Nitrogen(in s, p, growth * p.FlowerDemand, active, water, ref taken);

        // Sodium and chloride are not wanted; some comes with the water stream.
        var stream = p.SaltWithWater * transpired;
        taken[Ion.Sodium] = Math.Min(stream * s.Solution[Ion.Sodium], s.Mobile[Ion.Sodium]);
        taken[Ion.Chloride] = Math.Min(stream * s.Solution[Ion.Chloride], s.Mobile[Ion.Chloride]);
        IonMath.Add(ref s.InPlant, in taken);
        IonMath.Move(ref s.Mobile, in taken, ref l.TakenUp);
    }

    // Ammonium and nitrate serve one demand, each by its part of what is dissolved.
    private static void Nitrogen(in PotPools s, PotParameters p, double growth, double active, double water, ref Ions taken)
    {
        var nitrate = Math.Min(water * s.Solution[Ion.Nitrate], s.Mobile[Ion.Nitrate]);
        var ammonium = Math.Min(water * s.Solution[Ion.Ammonium], s.Mobile[Ion.Ammonium]);
        var there = nitrate + ammonium;
        var missing = Math.Max(0, (s.Biomass * p.NitrogenWanted) - s.InPlant[Ion.Nitrate] - s.InPlant[Ion.Ammonium]);
        var demand = (growth * p.NitrogenWanted) + (active * missing);
        var share = demand / (there + (water * p.HalfNitrogen) + demand);
        taken[Ion.Nitrate] = share * nitrate;
        taken[Ion.Ammonium] = share * ammonium;
    }
}
