using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Plant;

/// <summary>
/// Uptake by demand: what new growth holds and a part of what the plant lacks, as far as the pore water gives it,
/// dU/dt = D S/(S + H) with the dissolved S and the half S of Michaelis and Menten (H as concentration times water). What is taken
/// is made up from the exchange, the dissolved part of a form staying what it was. A plant that holds its fill takes no more.
/// </summary>
internal static class Uptake
{
    // Keeps nothing over nothing from being asked, mol.
    private const double Nothing = 1e-30;

    // When exchanged ammonium feeds the demand, nitrate alone must not be taken below zero.
    private const double MostOfPool = 0.95;

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
        var most = Vector256.Create(s.Biomass * p.Luxury);
        for (var i = 0; i < Ions.Width; i += Vector256<double>.Count)
        {
            var there = IonMath.Load(in s.Mobile, i);
            var wanted = IonMath.Load(in p.Wanted, i);
            var held = IonMath.Load(in s.InPlant, i);
            var missing = Vector256.Max(Vector256<double>.Zero, (want * wanted) - held);
            var room = Vector256.Max(Vector256<double>.Zero, (most * wanted) - held);
            var demand = Vector256.Min(room, (grown * wanted) + (lack * missing));
            IonMath.Store(Taken(there, w * IonMath.Load(in p.HalfUptake, i) / IonMath.Load(in s.Free, i), demand), ref taken, i);
        }

        Nitrogen(in s, p, growth * p.FlowerDemand, active, water, ref taken);

        // Sodium and chloride are not wanted; some comes with the water stream.
        // Its strength rises as the pot dries: that of half of the loss.
        var stream = Decay.Share(p.SaltWithWater * transpired * 2 / (water + s.Water));
        taken[Ion.Sodium] = stream * s.Mobile[Ion.Sodium] * s.Free[Ion.Sodium];
        taken[Ion.Chloride] = stream * s.Mobile[Ion.Chloride];
        IonMath.Add(ref s.InPlant, in taken);
        IonMath.Move(ref s.Mobile, in taken, ref l.TakenUp);
    }

    // Ammonium and nitrate serve one demand, each by its part of what is dissolved.
    private static void Nitrogen(in PotPools s, PotParameters p, double growth, double active, double water, ref Ions taken)
    {
        var nitrate = s.Mobile[Ion.Nitrate] * s.Free[Ion.Nitrate];
        var ammonium = s.Mobile[Ion.Ammonium] * s.Free[Ion.Ammonium];
        var dissolved = nitrate + ammonium;
        if (dissolved <= 0)
        {
            return;
        }

        var there = s.Mobile[Ion.Nitrate] + s.Mobile[Ion.Ammonium];
        var held = s.InPlant[Ion.Nitrate] + s.InPlant[Ion.Ammonium];
        var missing = Math.Max(0, (s.Biomass * p.NitrogenWanted) - held);
        var room = Math.Max(0, (s.Biomass * p.NitrogenWanted * p.Luxury) - held);
        var demand = Math.Min(room, (growth * p.NitrogenWanted) + (active * missing));
        var half = water * p.HalfNitrogen * there / dissolved;
        var all = Taken(Vector256.Create(there), Vector256.Create(half), Vector256.Create(demand))[0];
        taken[Ion.Nitrate] = Math.Min(all * nitrate / dissolved, MostOfPool * s.Mobile[Ion.Nitrate]);
        taken[Ion.Ammonium] = Math.Min(all * ammonium / dissolved, MostOfPool * s.Mobile[Ion.Ammonium]);
    }

    /// <summary>
    /// dS/dt = -D S/(S + H) over a step, both S and H over the dissolved part, by the implicit midpoint, U²/2 - U (S + H + D/2) + D S = 0; but never more than the straight law
    /// S (1 - exp(-D/H)), which the curve never passes.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Taken(Vector256<double> there, Vector256<double> half, Vector256<double> demand)
    {
        var b = there + half + (demand * 0.5);
        var middle = 2 * demand * there / (Vector256.Create(Nothing) + b + Vector256.Sqrt(Vector256.Max(Vector256<double>.Zero, (b * b) - (2 * demand * there))));
        var x = Vector256.Min(demand / (half + Vector256.Create(Nothing)), Vector256.Create(Decay.Steepest));
        return Vector256.Min(middle, there * x / (Vector256<double>.One + (x * (Vector256.Create(0.5) + (x * (1.0 / 12))))));
    }
}
