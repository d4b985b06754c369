using Ashery.Feeds;
using Ashery.RootZone;
using Ashery.RootZone.Forcing;
using Ashery.RootZone.Salts;
using Ashery.RootZone.State;

namespace Ashery.Planning.Fit;

/// <summary>A finished plan through the model in a set of draws, with everything that is given as it is given.</summary>
internal sealed class FitCheck(PlanContext context, IReadOnlyList<GardenPot> pots, FeedEvents feeds, FitWeights weights, bool[][] grows, ParallelOptions parallel)
{
    /// <summary>Every pot's measure, daily bands and odds; of a few pots alone where only those are asked.</summary>
    public FitPotCourse[] Of(YearPlan plan, FitDraws draws, int today, IReadOnlyList<int>? only = null)
    {
        var byId = context.Garden.Feeds.Concat(plan.SubstituteFeeds).ToDictionary(static f => f.Id, StringComparer.Ordinal);
        var events = pots.Select(p => Events(plan, p.Pot.Id, byId)).ToArray();
        var found = new FitPotCourse[pots.Count];
        var some = only ?? [.. Enumerable.Range(0, pots.Count)];
        Parallel.For(0, some.Count, parallel, i => found[some[i]] = One(some[i], events[some[i]], draws, today));
        return found;
    }

    /// <summary>One pot with other events, as a flush.</summary>
    public FitPotCourse One(int p, IReadOnlyList<PotEvent> events, FitDraws draws, int today)
    {
        var pot = pots[p];
        var limits = FitLimits.Of(pot.Crop);
        var course = draws.Course(pot.Pot.Id, pot.Scenario with { Events = events }, weights, limits, grows[p]);
        var table = new FitTable(draws.Count, draws.Days - FitGrowing.Tail);
        var sums = default(FitSums);
        for (var d = 0; d < draws.Count; d++)
        {
            var sink = new CheckSink(course.Judge(d, 0, course.StartBiomass(d)), table, d, today);
            course.Watch(d, ref sink);
            sums.Add(in sink.Judge.Sums);
        }

        sums.Draws = draws.Count;
        return new(pot.Pot.Id, limits, sums.Measure(weights, course.Litres), table.Bands(limits.MostEc), events);
    }

    /// <summary>Events of a pot in a plan.</summary>
    public List<PotEvent> Events(YearPlan plan, string potId, Dictionary<string, Feed> byId)
    {
        List<PotEvent> events = [];
        foreach (var planned in plan.Feeds)
        {
            foreach (var dose in planned.Doses)
            {
                if (dose.PotId == potId)
                {
                    events.AddRange(feeds.Of(dose, byId[planned.FeedId], planned.Date));
                }
            }
        }

        return events;
    }

    private struct CheckSink(FitSink judge, FitTable table, int draw, int today) : IDaySink
    {
        public FitSink Judge = judge;

        private double leached, given, released;

        public void Evening(int day, PotParameters parameters, in DayForcing forcing, in PotPools pools, in PotLedger ledger, in DayFlows flows)
        {
            table.Set(
                day,
                draw,
                Extracts.FromPore(pools.PoreEc, pools.Water, parameters),
                FitSink.Nitrogen(in pools),
                RootZone.Plant.Growth.NitrogenStatus(in pools, parameters),
                forcing.RainMm);
            if (day < today)
            {
                Judge.Skip(pools.Biomass);
                (leached, given, released) = (ledger.Leached.Nitrogen, ledger.Fed.Nitrogen + ledger.FedOrganicN, ledger.MineralisedN);
                return;
            }

            Judge.Evening(day, parameters, in forcing, in pools, in ledger, in flows);
            Judge.Sums.LeachedMoles = ledger.Leached.Nitrogen - leached;
            Judge.Sums.GivenMoles = ledger.Fed.Nitrogen + ledger.FedOrganicN - given;
            Judge.Sums.ReleasedMoles = ledger.MineralisedN - released;
        }
    }
}
