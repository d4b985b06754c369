using Ashery.RootZone;
using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.Planning.Fit;

/// <summary>Growth of a pot's plant in one draw if it never lacked anything to eat: what hunger and salt of feeds take is measured against it.</summary>
/// <param name="Daily">g of dry matter each day.</param>
/// <param name="Mean">Of the growing days, g.</param>
internal sealed record FitGrowth(double[] Daily, double Mean)
{
    // A plant that wants next to nothing finds it always.
    private const double Frugal = 1e-6;

    private const double LeastMean = 1e-9;

    public static FitGrowth Of(PotPlan plan, DayForcing[] weather, bool[] grows)
    {
        var daily = new double[weather.Length];
        var p = plan.Parameters;
        var frugal = p with { NitrogenWanted = p.NitrogenWanted * Frugal, Wanted = p.Wanted.Times(Frugal) };
        var pools = plan.Start;
        PotLedger ledger = default;
        var sink = new GrowthSink(daily, pools.Biomass);
        RootZoneEngine.Run(plan with { Parameters = frugal, Events = [] }, weather, ref pools, ref ledger, ref sink);
        var (sum, count) = (0.0, 0);
        for (var i = 0; i < daily.Length; i++)
        {
            sum += grows[i] ? daily[i] : 0;
            count += grows[i] ? 1 : 0;
        }

        return new(daily, Math.Max(LeastMean, count > 0 ? sum / count : 0) is var mean && mean > LeastMean ? mean : double.PositiveInfinity);
    }

    private struct GrowthSink(double[] daily, double biomass) : IDaySink
    {
        private double last = biomass;

        public void Evening(int day, PotParameters parameters, in DayForcing forcing, in PotPools pools, in PotLedger ledger, in DayFlows flows)
        {
            daily[day] = pools.Biomass - last;
            last = pools.Biomass;
        }
    }
}
