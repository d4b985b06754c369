using Ashery.RootZone;

namespace Ashery.Planning.Fit;

/// <summary>Events of feeds ready for the engine, days counted from the first of the year.</summary>
internal static class FitEvents
{
    public static IEnumerable<PlannedEvent> Of(IEnumerable<PotEvent> events, DateOnly from)
    {
        foreach (var e in events)
        {
            var planned = new PlannedEvent { Day = e.Date.DayNumber - from.DayNumber, OldKept = 1 };
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
            }

            yield return planned;
        }
    }
}
