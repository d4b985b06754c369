using Ashery.RootZone.State;

namespace Ashery.RootZone;

/// <summary>Works out the events of a scenario.</summary>
internal static class PlannedEvents
{
    public static PlannedEvent[] Of(PotScenario scenario, DateOnly start, RootZoneConstants constants)
    {
        var planned = new List<PlannedEvent>();
        var litres = scenario.Shape.Litres;
        foreach (var e in scenario.Events.OrderBy(static e => e.Date))
        {
            if (e.Date >= start)
            {
                planned.Add(One(e, e.Date.DayNumber - start.DayNumber, scenario, constants) with { OldLitres = litres });
                litres = e is RepotEvent repot ? repot.Shape.Litres : litres;
            }
        }

        return [.. planned];
    }

    private static PlannedEvent One(PotEvent e, int day, PotScenario scenario, RootZoneConstants constants)
    {
        var planned = new PlannedEvent { Day = day, OldKept = 1 };
        switch (e)
        {
            case DryFeedEvent dry:
                planned.Dry = dry.Feed * dry.Grams;
                break;
            case LiquidFeedEvent liquid:
                planned.Liquid = liquid.PerLitre.Times(liquid.Litres);
                planned.LiquidLitres = liquid.Litres;
                break;
            case FlushEvent flush:
                planned.FlushLitres = flush.Litres;
                break;
            case PruneEvent prune:
                planned.Pruned = Math.Clamp(prune.Share, 0, 0.95);
                break;
            case RepotEvent repot:
                planned.Repotted = Parameters.Of(scenario, repot.Shape, repot.Medium, repot.CanopyMost ?? PlantSpec.UsualCanopy(repot.Shape), constants);
                planned.OldKept = Math.Clamp(repot.OldKept, 0, 1);
                planned.Fresh = StartPools.Of(scenario with { Shape = repot.Shape, Medium = repot.Medium, Start = new() }, planned.Repotted);
                break;
        }

        return planned;
    }
}
