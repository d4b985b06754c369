using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Nutrients;
using Ashery.Pots;

namespace Ashery.Planning;

/// <summary>What goes beside the turns of mineral and organic feed: leaf magnesium, trace elements, inoculant. Each on days of its own.</summary>
internal static class SideFeeds
{
    public static void Add(PlanContext context, HashSet<DateOnly> taken, List<(FeedSlot Slot, Func<Pot, Crop, string?> PassOver)> days)
    {
        var rules = context.Rules;
        var foliar = rules["foliar-magnesium"];
        if (foliar.IsOn && context.Kept.Contains(FeedKind.Foliar))
        {
            var slots = FeedSlots.Spaced(context.Seasons, context.From, context.To, FeedKind.Foliar, (int)foliar["days"], 400, taken, foliar.Statement);
            days.AddRange(slots.Select(static s => (s, (Func<Pot, Crop, string?>)(static (_, _) => null))));
        }

        var trace = rules["trace-by-need"];
        if (trace.IsOn && trace.Choice != "never" && context.Kept.Contains(FeedKind.TraceElements))
        {
            var times = (int)trace["timesASeason"];
            var between = Math.Max(context.Interval, times > 0 ? context.GrowingDays / times : 1);
            var slots = FeedSlots.Spaced(context.Seasons, context.From, context.To, FeedKind.TraceElements, between, times, taken, trace.Statement);
            foreach (var slot in slots)
            {
                days.Add((slot, (pot, _) => TraceNeed(pot, slot.Day, rules)));
            }
        }

        var inoculant = rules["inoculant"];
        if (inoculant.IsOn && inoculant.Choice != "never" && context.Kept.Contains(FeedKind.Inoculant))
        {
            var slots = FeedSlots.Spaced(context.Seasons, context.From, context.To, FeedKind.Inoculant, (int)inoculant["daysBetween"], (int)inoculant["timesAYear"], taken, inoculant.Statement);
            days.AddRange(slots.Select(s => (s, (Func<Pot, Crop, string?>)((pot, crop) => InoculantNeed(pot, crop, context)))));
        }
    }

    /// <summary>Why a pot needs no trace elements; null when it does.</summary>
    private static string? TraceNeed(Pot pot, DateOnly day, RuleBook rules)
    {
        if (rules["trace-by-need"].Choice == "onceASeason" || pot.NeedsTraceElements == true)
        {
            return null;
        }

        var rule = rules["trace-need"];
        if (pot.NeedsTraceElements == false || !rule.IsOn)
        {
            return "No need of trace elements was shown.";
        }

        if (pot.Medium == MediumKind.LoamMix)
        {
            return "A medium with loam keeps supplying trace elements.";
        }

        return pot.LastRepotted is { } repotted && day >= repotted.AddMonths((int)rule["months"])
            ? null
            : pot.LastRepotted is null ? "No need of trace elements was shown; when it was repotted is not known." : "The mix it was last repotted into still supplies trace elements.";
    }

    /// <summary>Why a pot gets no inoculant; null when it does.</summary>
    private static string? InoculantNeed(Pot pot, Crop crop, PlanContext context)
    {
        var rule = context.Rules["inoculant"];
        if (rule.Choice == "always")
        {
            return null;
        }

        var soilless = context.Rules["inoculant-soilless"];
        if (pot.Medium != MediumKind.LoamMix && soilless.IsOn && soilless.Choice != "on")
        {
            return soilless.Statement;
        }

        if (pot.LowPhosphorus == false)
        {
            return "The medium holds phosphorus enough: the fungus would not settle.";
        }

        var feed = FeedChoice.For(crop, FeedKind.Mineral, context.Garden.Feeds);
        var n = feed?.Label[Nutrient.N] ?? 0;
        var ratio = n > 0 ? feed!.Label[Nutrient.P] / n : 0;
        return ratio > rule["largestP2O5PerN"]
            ? FormattableString.Invariant($"{feed!.Name} brings {ratio:0.##} g P2O5 for each g N; above {rule["largestP2O5PerN"]:0.##} the fungus gains little.")
            : null;
    }
}
