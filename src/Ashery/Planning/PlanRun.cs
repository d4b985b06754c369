using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Problems;

namespace Ashery.Planning;

/// <summary>Goes through the days of the plan, dosing pots, taking from the shelf and keeping account of each pot.</summary>
internal sealed class PlanRun(PlanContext context, Func<Pot, Crop, Feed, FeedSlot, DoseRequest>? request = null)
{
    private readonly Dictionary<string, Dictionary<Nutrient, double>> traceGiven = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Feed> feedsById = context.Garden.Feeds.ToDictionary(static f => f.Id, StringComparer.Ordinal);
    private readonly FeedReplacer replacer = new(context);
    private readonly Dictionary<string, string> ranOut = new(StringComparer.Ordinal);

    public StockBook Stock { get; } = new(context.Garden);

    /// <summary>Feeds before this day leave the shelf as it is.</summary>
    public DateOnly StockFrom { get; init; }

    public List<PlannedFeed> Feeds { get; } = [];

    public List<Replacement> Replacements => replacer.Made;

    public IReadOnlyDictionary<string, Feed> FeedsById => feedsById;

    public IReadOnlyList<Feed> SubstituteFeeds => replacer.Substitutes;

    /// <summary>Rules that took part.</summary>
    public HashSet<string> Applied { get; } = new(StringComparer.Ordinal);

    /// <summary>Feeds the pots that want this kind on this day.</summary>
    public void Give(FeedSlot slot, Func<Pot, Crop, string?> passOver)
    {
        foreach (var factor in slot.Verdict.Factors)
        {
            Applied.Add(factor.RuleId);
        }

        var groups = new Dictionary<string, List<(Pot Pot, Crop Crop)>>(StringComparer.Ordinal);
        List<LeftOut> leftOut = [];
        foreach (var (pot, crop) in context.Pots)
        {
            if ((passOver(pot, crop) ?? context.Holds(pot, crop, slot.Kind, slot.Day)) is { } why)
            {
                leftOut.Add(new(pot.Id, why));
            }
            else if (context.FeedFor(crop, slot.Kind) is { } feed)
            {
                if (!groups.TryGetValue(feed.Id, out var group))
                {
                    groups.Add(feed.Id, group = []);
                }

                group.Add((pot, crop));
            }
        }

        foreach (var (feedId, pots) in groups.OrderBy(static g => g.Key, StringComparer.Ordinal))
        {
            Give(slot, feedsById[feedId], pots, leftOut);
            leftOut = [];
        }
    }

    private void Give(FeedSlot slot, Feed feed, List<(Pot Pot, Crop Crop)> pots, List<LeftOut> leftOut)
    {
        var reasons = slot.Reasons;
        var doses = Doses(slot, feed, pots);
        var total = Total(doses, pots);

        // A feed that was replaced stays so, even if a smaller round could be scraped together from the rest of its bag.
        var missing = slot.Day < StockFrom ? null : ranOut.GetValueOrDefault(feed.Id) ?? Stock.ShortOf(feed, total);
        if (missing is not null)
        {
            Stock.NoteRunsOut(missing, slot.Day);
            if (replacer.Instead(feed, missing, slot.Day, total, Stock) is { } other && Doses(slot, other.Feed, pots) is var instead && Stock.Covers(other.Feed, Total(instead, pots)))
            {
                ranOut[feed.Id] = missing;
                (feed, doses, total) = (other.Feed, instead, Total(instead, pots));
                feedsById.TryAdd(feed.Id, feed);
                reasons = [other.Words, .. reasons];
            }
        }

        List<Dose> given = [];
        for (var i = 0; i < doses.Count; i++)
        {
            var dose = doses[i];
            if (dose.Grams > 0)
            {
                given.Add(dose);
                Remember(dose, feed, pots[i].Pot);
            }
            else
            {
                leftOut.Add(new(dose.PotId, dose.Notes.Count > 0 ? dose.Notes[0].Message : dose.Reasons.Count > 0 ? dose.Reasons[^1] : "The dose is nothing."));
            }
        }

        if (slot.Day >= StockFrom)
        {
            Stock.Take(feed, total, slot.Day);
        }

        Emit(slot, feed, given, [.. reasons, .. ColdAmmonium(slot, feed)], leftOut);
    }

    /// <summary>Cold media turn ammonium into nitrate slowly: a feed that is mostly ammonium or urea says so in cool months.</summary>
    private IEnumerable<string> ColdAmmonium(FeedSlot slot, Feed feed)
    {
        var rule = context.Rules["ammonium-cold"];
        var n = feed.Nitrogen;
        if (slot.Kind == FeedKind.Mineral && rule.IsOn && n.Ammonium + n.Urea > n.Total / 2
            && context.Seasons.Calendar.NormalOf(slot.Day) is { } normal && (normal.MeanMax + normal.MeanMin) / 2 < rule["celsius"])
        {
            Applied.Add(rule.Id);
            yield return rule.Statement + " This feed's nitrogen is mostly ammonium or urea.";
        }
    }

    private List<Dose> Doses(FeedSlot slot, Feed feed, List<(Pot Pot, Crop Crop)> pots)
    {
        List<Dose> doses = new(pots.Count);
        foreach (var (pot, crop) in pots)
        {
            var ask = request is null ? context.Ask(pot, crop, feed, slot.Day, slot.Verdict) : request(pot, crop, feed, slot);
            if (traceGiven.TryGetValue(pot.Id, out var given))
            {
                ask = ask with { TraceGiven = given };
            }

            doses.Add(Dosing.For(ask));
        }

        var least = context.Garden.Settings.ScaleStep * context.Rules["weighable"]["traceSteps"];
        return [.. Dilution.OneBottle(doses, id => context.CountOf(id), least, context.Garden.Settings.ScaleStep)];
    }

    private static double Total(List<Dose> doses, List<(Pot Pot, Crop Crop)> pots)
    {
        var total = 0.0;
        for (var i = 0; i < doses.Count; i++)
        {
            total += doses[i].Grams * pots[i].Pot.Count;
        }

        return total;
    }

    private void Remember(Dose dose, Feed feed, Pot pot)
    {
        if (!traceGiven.TryGetValue(pot.Id, out var given))
        {
            traceGiven.Add(pot.Id, given = []);
        }

        foreach (var (nutrient, _) in DoseCaps.TraceCaps)
        {
            given[nutrient] = given.GetValueOrDefault(nutrient) + (dose.Grams * feed.Label[nutrient] * 1000 / pot.Volume.Litres);
        }
    }

    /// <summary>Pots that get the same go together, weakest first.</summary>
    private void Emit(FeedSlot slot, Feed feed, List<Dose> doses, IReadOnlyList<string> reasons, List<LeftOut> leftOut)
    {
        List<Dose>? group = null;
        List<List<Dose>> groups = [];
        foreach (var stop in WalkingOrder.Of(doses, context.Garden))
        {
            if (group is null || !Same(group[0], stop.Dose))
            {
                groups.Add(group = []);
            }

            group.Add(stop.Dose);
        }

        foreach (var same in groups)
        {
            Feeds.Add(new(slot.Day, slot.Kind, feed.Id, feed.Name, [.. same.Select(static d => d.PotId)], same[0].Grams, same, reasons)
            {
                How = context.How(slot.Kind),
                LeftOut = ReferenceEquals(same, groups[0]) ? leftOut : [],
            });
        }
    }

    private static bool Same(Dose a, Dose b) =>
        a.Method == b.Method && Math.Abs(a.Grams - b.Grams) < 1e-9 && Math.Abs(WalkingOrder.Strength(a) - WalkingOrder.Strength(b)) < 1e-9;
}
