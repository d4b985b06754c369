using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Salts;

/// <summary>
/// Pore water in equilibrium with the solid. Cations by Gapon's equation (selectivities of Richards 1954, from memory): the charge held
/// is E = K g m for NH4+, K+, Na+ and E = K g √m for Ca++, Mg++, with one g for all, so that the charges held add up to
/// that of the solid. For each g the pore water m follows in closed form from W m + E = T. Other forms: straight sorption.
/// </summary>
internal static class Exchange
{
    private const double Tolerance = 1e-9, NearlyAll = 1 - 1e-7;

    /// <summary>Sets the pore water of all forms; also pH.</summary>
    public static void Equilibrate(ref PotPools s, PotParameters p)
    {
        var solid = Ph.MediumPh.Solve(ref s, p);
        var water = Vector256.Create(s.Water);
        for (var i = 0; i < Ions.Width; i += Vector256<double>.Count)
        {
            var shared = Vector256<double>.One / (water + IonMath.Load(in p.SorptionLitres, i));
            IonMath.Store(IonMath.Load(in s.Mobile, i) * shared, ref s.Solution, i);
            IonMath.Store(water * shared, ref s.Free, i);
        }

        Cations(ref s, p, solid);
    }

    private static void Cations(ref PotPools s, PotParameters p, double solid)
    {
        var w = s.Water;
        double nh4 = s.Mobile[Ion.Ammonium], k = s.Mobile[Ion.Potassium], na = s.Mobile[Ion.Sodium];
        double ca = s.Mobile[Ion.Calcium], mg = s.Mobile[Ion.Magnesium];
        var all = nh4 + k + na + (2 * (ca + mg));
        solid = Math.Min(solid, NearlyAll * all);
        if (solid <= 0 || all <= 0)
        {
            return;
        }

        double kn = p.GaponAmmonium, kk = p.GaponPotassium, ks = p.GaponSodium, km = p.GaponMagnesium;
        var g = Math.Max(s.Exchange, 1e-12 * p.Litres);
        double rootCa = 0, rootMg = 0;
        for (var i = 0; i < 100; i++)
        {
            // E and dE/dg of each; Newton on a rising concave sum never passes the root from below.
            double dn = 1 / (w + (kn * g)), dk = 1 / (w + (kk * g)), ds = 1 / (w + (ks * g));
            var held = g * ((nh4 * kn * dn) + (k * kk * dk) + (na * ks * ds));
            var slope = w * ((nh4 * kn * dn * dn) + (k * kk * dk * dk) + (na * ks * ds * ds));
            Divalent(ca, g, 1, w, ref held, ref slope, out rootCa);
            Divalent(mg, g, km, w, ref held, ref slope, out rootMg);
            var miss = solid - held;
            if (Math.Abs(miss) <= Tolerance * solid || slope <= 0)
            {
                break;
            }

            var next = g + (miss / slope);
            g = next > 0.1 * g ? next : 0.1 * g;
        }

        s.Exchange = g;
        Set(ref s, Ion.Ammonium, w / (w + (kn * g)));
        Set(ref s, Ion.Potassium, w / (w + (kk * g)));
        Set(ref s, Ion.Sodium, w / (w + (ks * g)));
        Set(ref s, Ion.Calcium, ca > 0 ? Math.Min(1, w * rootCa * rootCa / ca) : 1);
        Set(ref s, Ion.Magnesium, mg > 0 ? Math.Min(1, w * rootMg * rootMg / mg) : 1);
    }

    private static void Set(ref PotPools s, int ion, double free)
    {
        s.Free[ion] = free;
        s.Solution[ion] = free * s.Mobile[ion] / s.Water;
    }

    // 2 W u² + K g u = 2 T with u = √m; the root that does not lose digits.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Divalent(double total, double g, double selectivity, double water, ref double held, ref double slope, out double root)
    {
        var kg = selectivity * g;
        var discriminant = Math.Sqrt((kg * kg) + (16 * water * total));
        root = total > 0 ? 4 * total / (kg + discriminant) : 0;
        held += kg * root;
        slope += discriminant > 0 ? selectivity * root * (1 - (kg / discriminant)) : 0;
    }
}
