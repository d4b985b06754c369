using Ashery.RootZone.Forcing;
using Ashery.RootZone.Nitrogen;
using Ashery.RootZone.Ph;
using Ashery.RootZone.Plant;
using Ashery.RootZone.Salts;
using Ashery.RootZone.State;
using Ashery.RootZone.Water;

namespace Ashery.RootZone;

/// <summary>
/// The daily step. Order of a day: events; rain and watering; drainage with its salts (before the plant takes its water, the second
/// order of FAO-56, for watering early in the day); then in each step release and nitrogen, pH and exchange, water use, growth and uptake. Nothing is allocated.
/// </summary>
public static class RootZoneEngine
{
    /// <summary>Runs a plan over days of weather.</summary>
    /// <param name="plan">Parameters, start and events.</param>
    /// <param name="days">Weather at the pot.</param>
    /// <param name="s">State; begins where it stands and ends on the last evening.</param>
    /// <param name="l">Sums; go on from where they stand.</param>
    /// <param name="sink">Takes each evening.</param>
    public static void Run<TSink>(PotPlan plan, ReadOnlySpan<DayForcing> days, ref PotPools s, ref PotLedger l, ref TSink sink)
        where TSink : struct, IDaySink
    {
        var p = plan.Parameters;
        var events = plan.Events.AsSpan();
        var next = 0;
        for (var day = 0; day < days.Length; day++)
        {
            ref readonly var f = ref days[day];
            var brought = default(Ions);
            double liquid = 0, flush = 0;
            for (; next < events.Length && events[next].Day <= day; next++)
            {
                Events.Apply(in events[next], ref s, ref l, ref p, ref brought, ref liquid, ref flush);
            }

            var flows = Day(ref s, ref l, p, in f, ref brought, liquid, flush);
            sink.Evening(day, p, in f, in s, in l, in flows);
        }
    }

    private static DayFlows Day(ref PotPools s, ref PotLedger l, PotParameters p, in DayForcing f, ref Ions brought, double liquid, double flush)
    {
        DayFlows flows = default;
        Morning(ref s, ref l, p, in f, ref brought, liquid, flush, ref flows);
        flows.Stress = 1;
        for (var step = 0; step < p.Steps; step++)
        {
            Step(ref s, ref l, p, in f, ref flows);
        }

        s.PoreEc = PoreConductivity.At25(in s.Solution, s.Proton, ref s.Pairs);
        s.ExtractEc = Extracts.FromPore(s.PoreEc, s.Water, p);
        l.DryDays += flows.Stress < 0.5 ? 1 : 0;
        return flows;
    }

    private static void Morning(ref PotPools s, ref PotLedger l, PotParameters p, in DayForcing f, ref Ions brought, double liquid, double flush, ref DayFlows flows)
    {
        flows.Rain = Watering.Rain(in s, p, f.RainMm);
        s.Water += flows.Rain;
        l.Rain += flows.Rain;

        // Feed from the can stands for the water of that day.
        var byRule = liquid > 0 ? 0 : Watering.Wanted(in s, p);
        flows.Irrigation = byRule + liquid + flush;
        if (flows.Irrigation > 0)
        {
            IonMath.AddScaled(ref brought, in p.WateringFeed, byRule);
            IonMath.Add(ref l.Fed, in brought);
            IonMath.AddScaled(ref l.FromWater, in p.WaterIons, flows.Irrigation);
            IonMath.AddScaled(ref brought, in p.WaterIons, flows.Irrigation);
            IonMath.Add(ref s.Mobile, in brought);
            s.Water += flows.Irrigation;
            l.Irrigation += flows.Irrigation;
            l.Waterings++;
            s.DaysDry = 0;
        }

        if (flows.Rain > 0)
        {
            IonMath.AddScaled(ref l.FromWater, in p.RainIons, flows.Rain);
            IonMath.AddScaled(ref s.Mobile, in p.RainIons, flows.Rain);
            IonMath.AddScaled(ref brought, in p.RainIons, flows.Rain);
        }

        s.DaysDry++;
        var inflow = flows.Rain + flows.Irrigation;
        if (inflow > 0 || s.Water > p.Capacity)
        {
            Exchange.Equilibrate(ref s, p);
            flows.Drained = Drainage.Run(ref s, ref l, p, in brought, inflow);
            if (flows.Drained > 0)
            {
                // Part of what ran out had run past: the pore water left behind is another.
                Exchange.Equilibrate(ref s, p);
            }
        }
    }

    // Release and losses go half before and half after the plant's part, the second half in the opposite order and with the pH of noon
    // (Strang's splitting), so that the error of a step is of second order.
    private static void Step(ref PotPools s, ref PotLedger l, PotParameters p, in DayForcing f, ref DayFlows flows)
    {
        var moist = Moisture.Aerobic(in s, p);
        CoatedRelease.Run(ref s, p, in f);
        Lime.Dissolve(ref s, p);
        Urea.Hydrolyse(ref s, p, in f, moist);
        Mineralisation.Rot(ref s, ref l, p, in f, moist);
        Nitrification.Run(ref s, ref l, p, in f, moist);
        GasLoss.Ammonia(ref s, ref l, p, in f);
        GasLoss.Denitrify(ref s, ref l, p, in f);

        var water = s.Water;
        var (transpired, evaporated, stress) = WaterUse.Take(ref s, ref l, p, f.EtMm);
        flows.Transpired += transpired;
        flows.Evaporated += evaporated;
        flows.Stress = Math.Min(flows.Stress, stress);
        var wanted = Growth.Run(ref s, p, in f, stress);
        Uptake.Run(ref s, ref l, p, wanted, transpired, water);

        MediumPh.Solve(ref s, p);
        moist = Moisture.Aerobic(in s, p);
        GasLoss.Denitrify(ref s, ref l, p, in f);
        GasLoss.Ammonia(ref s, ref l, p, in f);
        Nitrification.Run(ref s, ref l, p, in f, moist);
        Mineralisation.Rot(ref s, ref l, p, in f, moist);
        Urea.Hydrolyse(ref s, p, in f, moist);
        Lime.Dissolve(ref s, p);
        CoatedRelease.Run(ref s, p, in f);
        Exchange.Equilibrate(ref s, p);
    }
}
