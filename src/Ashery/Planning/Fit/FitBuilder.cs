using Ashery.Crops;
using Ashery.Pots;

namespace Ashery.Planning.Fit;

/// <summary>Turns the rounds of the search into a plan, through the same giving of feeds as the rule of thumb: gates, caps, shelf, substitutes, account.</summary>
internal static class FitBuilder
{
    private const string Enough = "The pot needs none on this day: what it holds and what is still released lasts.";

    /// <param name="context">The garden's rules and seasons.</param>
    /// <param name="doses">The dosing of the search.</param>
    /// <param name="visits">The rounds.</param>
    /// <param name="words">Why a round stands where it stands.</param>
    /// <param name="alsoTaken">Days kept free of leaf feeds and trace elements.</param>
    public static YearPlan Plan(PlanContext context, FitDoses doses, List<FitVisit> visits, Func<FitVisit, string?> words, IEnumerable<DateOnly> alsoTaken)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var p = 0; p < context.Pots.Count; p++)
        {
            places.Add(context.Pots[p].Pot.Id, p);
        }

        var byDay = new Dictionary<DateOnly, FitVisit>();
        List<(FeedSlot Slot, Func<Pot, Crop, string?> PassOver)> turns = [];
        foreach (var visit in visits)
        {
            var day = context.From.AddDays(visit.Day);
            byDay.Add(day, visit);
            List<string> reasons = [words(visit) ?? "As the rule of thumb has it.", "Season: " + FeedSlots.SeasonWords(context.Seasons.Calendar.Of(day)) + "."];
            turns.Add((new(day, visit.Kind, context.Seasons.Of(visit.Kind, day), reasons), (pot, _) => visit.Levels[places[pot.Id]] > 0 ? null : Enough));
        }

        var run = new PlanRun(context, (pot, crop, feed, slot) => byDay.TryGetValue(slot.Day, out var visit) && visit.Kind == slot.Kind
            ? doses.Ask(pot, crop, feed, slot.Day, slot.Verdict, visit.Interval, visit.Levels[places[pot.Id]])
            : context.Ask(pot, crop, feed, slot.Day, slot.Verdict));
        return YearPlanner.Plan(context, YearPlanner.Days(context, turns, alsoTaken), run);
    }
}
