using Ashery.RootZone;
using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.Planning.Fit;

/// <summary>One pot in a set of draws: runs stretches of days from kept states.</summary>
internal sealed class FitCourse(FitWeights weights, FitLimits limits, bool[] grows, PotPlan[] plans, DayForcing[][] weather, FitGrowth[] fed)
{
    public int Draws => plans.Length;

    public int Days => grows.Length;

    public double Litres => plans[0].Parameters.Litres;

    public FitLimits Limits => limits;

    /// <summary>The state on the first morning of each draw.</summary>
    public FitState[] Start()
    {
        var states = new FitState[plans.Length];
        for (var d = 0; d < states.Length; d++)
        {
            states[d].Pools = plans[d].Start;
        }

        return states;
    }

    /// <summary>Runs from a day up to another, the last not included; states go on, and what the stretch counts comes back.</summary>
    public FitSums Run(FitState[] states, int from, int to, PlannedEvent[] events)
    {
        var sums = default(FitSums);
        sums.Draws = plans.Length;
        to = Math.Min(to, Days);
        if (to <= from)
        {
            return sums;
        }

        var within = Within(events, from, to);
        for (var d = 0; d < plans.Length; d++)
        {
            ref var state = ref states[d];
            double leached = state.Ledger.Leached.Nitrogen, given = state.Ledger.Fed.Nitrogen + state.Ledger.FedOrganicN, released = state.Ledger.MineralisedN, taken = state.Ledger.TakenUp.Nitrogen;
            var sink = Judge(d, from, state.Pools.Biomass);
            RootZoneEngine.Run(plans[d] with { Events = within }, weather[d].AsSpan(from, to - from), ref state.Pools, ref state.Ledger, ref sink);
            sink.Sums.LeachedMoles = state.Ledger.Leached.Nitrogen - leached;
            sink.Sums.GivenMoles = state.Ledger.Fed.Nitrogen + state.Ledger.FedOrganicN - given;
            sink.Sums.ReleasedMoles = state.Ledger.MineralisedN - released;
            sink.Sums.TakenMoles = state.Ledger.TakenUp.Nitrogen - taken;
            sums.Add(in sink.Sums);
        }

        return sums;
    }

    /// <summary>Judges a draw from a day on.</summary>
    public FitSink Judge(int draw, int from, double biomass) => new(weights, limits, grows, fed[draw], from, biomass);

    public double StartBiomass(int draw) => plans[draw].Start.Biomass;

    /// <summary>The same from copies of the states.</summary>
    public FitSums Try(FitState[] states, int from, int to, PlannedEvent[] events) => Run([.. states], from, to, events);

    /// <summary>Runs a draw of a scenario that has its own events, with a sink of the caller.</summary>
    public void Watch<TSink>(int draw, ref TSink sink)
        where TSink : struct, IDaySink
    {
        var pools = plans[draw].Start;
        PotLedger ledger = default;
        RootZoneEngine.Run(plans[draw], weather[draw], ref pools, ref ledger, ref sink);
    }

    private static PlannedEvent[] Within(PlannedEvent[] events, int from, int to)
    {
        var count = 0;
        foreach (ref readonly var e in events.AsSpan())
        {
            count += e.Day >= from && e.Day < to ? 1 : 0;
        }

        var within = new PlannedEvent[count];
        var i = 0;
        foreach (ref readonly var e in events.AsSpan())
        {
            if (e.Day >= from && e.Day < to)
            {
                within[i] = e;
                within[i++].Day -= from;
            }
        }

        return within;
    }
}

/// <summary>State of one draw.</summary>
internal struct FitState
{
    public PotPools Pools;

    public PotLedger Ledger;
}
