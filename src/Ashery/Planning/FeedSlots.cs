using Ashery.Climate;
using Ashery.Feeds;

namespace Ashery.Planning;

/// <summary>A day on which a kind of feed is due for the whole garden.</summary>
/// <param name="Day">When.</param>
/// <param name="Kind">What kind.</param>
/// <param name="Verdict">With which factors.</param>
/// <param name="Reasons">Why this kind on this day.</param>
public sealed record FeedSlot(DateOnly Day, FeedKind Kind, SeasonVerdict Verdict, IReadOnlyList<string> Reasons);

/// <summary>The days of the year on which feeds are due, before any pot is looked at.</summary>
public static class FeedSlots
{
    private const int DaysOff = 2;

    /// <summary>Mineral and organic feeds take turns at the interval; a kind the season forbids leaves its turn to the other.</summary>
    public static IReadOnlyList<FeedSlot> Turns(SeasonRules seasons, DateOnly from, DateOnly to, IReadOnlySet<FeedKind> kept)
    {
        var rule = seasons.Rules["alternate-kinds"];
        if (!rule.IsOn)
        {
            // Switched off: nothing is fed by turns; the side feeds stay.
            return [];
        }

        var kinds = rule.Choice switch
        {
            "mineralOnly" => [FeedKind.Mineral],
            "organicOnly" => [FeedKind.Organic],
            _ => new[] { FeedKind.Mineral, FeedKind.Organic },
        };
        var days = Math.Max(1, (int)rule["days"]);
        List<FeedSlot> slots = [];
        var turn = 0;
        for (var day = from; day <= to;)
        {
            var due = kinds[turn % kinds.Length];
            if (Slot(seasons, day, due, kinds, kept) is { } slot)
            {
                slots.Add(slot);
                turn = Array.IndexOf(kinds, slot.Kind) + 1;
                day = day.AddDays(days);
            }
            else
            {
                day = day.AddDays(1);
            }
        }

        return slots;
    }

    private static FeedSlot? Slot(SeasonRules seasons, DateOnly day, FeedKind due, FeedKind[] kinds, IReadOnlySet<FeedKind> kept)
    {
        List<string> reasons = [];
        foreach (var kind in kinds.OrderBy(k => k == due ? 0 : 1))
        {
            var permission = seasons.Of(kind, day);
            if (kept.Contains(kind) && permission.Allowed)
            {
                reasons.Insert(0, kind == due ? $"It is the turn of {Word(kind)} feed." : $"{Capital(Word(kind))} feed stands in.");
                reasons.Add("Season: " + SeasonWords(seasons.Calendar.Of(day)) + ".");
                return new(day, kind, permission, reasons);
            }

            if (!permission.Allowed)
            {
                reasons.AddRange(permission.StoppedBy.Where(static r => r != SeasonRules.NotGrowing).Select(r => seasons.Rules[r].Statement));
            }
            else if (kinds.Length > 1 && kind == due)
            {
                reasons.Add($"No {Word(kind)} feed is kept.");
            }
        }

        return null;
    }

    /// <summary>
    /// Days for a feed that keeps a distance of its own and stays a few days off those already taken, so that salts do not fall on salts.
    /// </summary>
    public static IReadOnlyList<FeedSlot> Spaced(
        SeasonRules seasons, DateOnly from, DateOnly to, FeedKind kind, int days, int times, ISet<DateOnly> taken, string reason)
    {
        var off = Math.Min(DaysOff, Math.Max(0, ((int)seasons.Rules["alternate-kinds"]["days"] - 1) / 3));
        List<FeedSlot> slots = [];
        for (var day = from; day <= to && slots.Count < times; day = day.AddDays(1))
        {
            var last = slots.Count > 0 ? slots[^1].Day : DateOnly.MinValue;
            if (day.DayNumber - last.DayNumber < days || Crowded(day, off, taken))
            {
                continue;
            }

            var permission = seasons.Of(kind, day);
            if (permission.Allowed)
            {
                slots.Add(new(day, kind, permission, [reason, "Season: " + SeasonWords(seasons.Calendar.Of(day)) + "."]));
                taken.Add(day);
            }
        }

        return slots;
    }

    private static bool Crowded(DateOnly day, int off, ISet<DateOnly> taken)
    {
        for (var i = -off; i <= off; i++)
        {
            if (taken.Contains(day.AddDays(i)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A kind of feed in words.</summary>
    public static string Word(FeedKind kind) => kind switch
    {
        FeedKind.Mineral => "mineral",
        FeedKind.Organic => "organic",
        FeedKind.Foliar => "leaf",
        FeedKind.TraceElements => "trace element",
        _ => "inoculant",
    };

    /// <summary>The seasons of a day in words.</summary>
    public static string SeasonWords(DaySeasons seasons) => seasons == DaySeasons.None
        ? "none named"
        : seasons.ToString().ToLowerInvariant().Replace(", ", " and ", StringComparison.Ordinal);

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
