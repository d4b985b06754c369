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
    // After a step of this part of g the cube of the error is below 1e-9.
    private const double LastStep = 5e-4, NearlyAll = 1 - 1e-7, MostBend = 0.5;

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
        var one = new Monovalent(in s, p);
        var two = new Divalent(in s, p);
        var all = one.Charge + two.Charge;
        solid = Math.Min(solid, NearlyAll * all);
        if (solid <= 0 || all <= 0)
        {
            return;
        }

        // What is in solution hardly changes when water comes or goes, so that g follows its root.
        var g = Math.Max(s.Exchange * Math.Sqrt(s.Water), 1e-12 * p.Litres);
        for (var i = 0; i < 100; i++)
        {
            double held = 0, slope = 0, bend = 0;
            one.Add(g, ref held, ref slope, ref bend);
            two.Add(g, ref held, ref slope, ref bend);
            var miss = solid - held;
            if (slope <= 0)
            {
                break;
            }

            // Halley's step on the rising sum: its error goes with the cube.
            var newton = miss / slope;
            var step = newton / (1 + Math.Max(-MostBend, 0.5 * newton * bend / slope));
            var next = Math.Max(0.1 * g, g + step);
            step = next - g;
            g = next;
            if (Math.Abs(step) <= LastStep * g)
            {
                break;
            }
        }

        s.Exchange = g / Math.Sqrt(s.Water);
        one.Set(ref s, g);
        two.Set(ref s, g);
    }

    /// <summary>NH4+, K+ and Na+: E = T K g/(W + K g).</summary>
    private readonly struct Monovalent
    {
        private readonly Vector256<double> total, selectivity, water;

        public Monovalent(in PotPools s, PotParameters p)
        {
            total = Vector256.Create(s.Mobile[Ion.Ammonium], s.Mobile[Ion.Potassium], s.Mobile[Ion.Sodium], 0);
            selectivity = Vector256.Create(p.GaponAmmonium, p.GaponPotassium, p.GaponSodium, 0);
            water = Vector256.Create(s.Water);
        }

        public double Charge => Vector256.Sum(total);

        /// <summary>Charge held and its first and second change with g.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Add(double g, ref double held, ref double slope, ref double bend)
        {
            var kd = selectivity / (water + (selectivity * g));
            var of = total * kd;
            var rise = of * (Vector256<double>.One - (kd * g));
            held += g * Vector256.Sum(of);
            slope += Vector256.Sum(rise);
            bend -= 2 * Vector256.Sum(rise * kd);
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Set(ref PotPools s, double g)
        {
            var solution = total / (water + (selectivity * g));
            var free = water / (water + (selectivity * g));
            (s.Solution[Ion.Ammonium], s.Solution[Ion.Potassium], s.Solution[Ion.Sodium]) = (solution[0], solution[1], solution[2]);
            (s.Free[Ion.Ammonium], s.Free[Ion.Potassium], s.Free[Ion.Sodium]) = (free[0], free[1], free[2]);
        }
    }

    /// <summary>Ca++ and Mg++: 2 W u² + K g u = 2 T with u = √m, the root that does not lose digits.</summary>
    private readonly struct Divalent
    {
        private readonly Vector128<double> total, selectivity, sixteen;
        private readonly double water;

        public Divalent(in PotPools s, PotParameters p)
        {
            total = Vector128.Create(s.Mobile[Ion.Calcium], s.Mobile[Ion.Magnesium]);
            selectivity = Vector128.Create(1, p.GaponMagnesium);
            water = s.Water;

            // Where there is nothing, next to nothing keeps nothing over nothing away.
            sixteen = Vector128.Max(16 * water * total, Vector128.Create(1e-60));
        }

        public double Charge => 2 * Vector128.Sum(total);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Add(double g, ref double held, ref double slope, ref double bend)
        {
            var kg = selectivity * g;
            var whole = Vector128.Sqrt((kg * kg) + sixteen);
            var root = 4 * total / (kg + whole);
            var over = Vector128<double>.One / whole;
            var part = Vector128<double>.One - (kg * over);
            var rise = selectivity * root * part;
            held += Vector128.Sum(kg * root);
            slope += Vector128.Sum(rise);
            bend -= Vector128.Sum(selectivity * rise * over * (Vector128.Create(3.0) - part));
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Set(ref PotPools s, double g)
        {
            var kg = selectivity * g;
            var root = 4 * total / (kg + Vector128.Sqrt((kg * kg) + sixteen));
            var solution = root * root;
            (s.Solution[Ion.Calcium], s.Solution[Ion.Magnesium]) = (solution[0], solution[1]);
            s.Free[Ion.Calcium] = total[0] > 0 ? Math.Min(1, water * solution[0] / total[0]) : 1;
            s.Free[Ion.Magnesium] = total[1] > 0 ? Math.Min(1, water * solution[1] / total[1]) : 1;
        }
    }
}
