using System.Globalization;
using System.Text;
using System.Text.Json;
using Ashery.Journal;
using Ashery.Pots;
using Ashery.Today;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Due;

/// <summary>The entries that a tap on Today writes: by the server from a form, or by the phone from the same form's data (docs/offline.md).</summary>
internal static class DueEntries
{
    /// <summary>Why a feed is left out: the words of the buttons.</summary>
    public static IReadOnlyList<(string Why, string Text)> Whys { get; } = [("rain", "Rain"), ("heat", "Heat"), ("dry medium", "Dry"), ("other", "Other")];

    /// <summary>How far a feed is put off: days and the words of the buttons.</summary>
    public static IReadOnlyList<(int Days, string Text)> Moves { get; } = [(1, "1 day"), (3, "3 days"), (7, "A week")];

    public static IReadOnlyList<(WeatherSign Sign, string Text)> Signs { get; } = [(WeatherSign.Rain, "Heavy rain"), (WeatherSign.Heat, "Hot day"), (WeatherSign.DryMedium, "Dry pots")];

    /// <summary>What the pot gets, as a fact.</summary>
    public static PotAmount Amount(DuePot pot) => new(pot.PotId, pot.Dose.Grams, pot.Dose is { Method: DoseMethod.Can, Can: { } can } ? can.LitresPerPot * can.Waterings : null);

    /// <summary>The facts of a button: <c>give</c>, <c>skip:WHY</c>, <c>move:DAYS</c>; null for anything else.</summary>
    public static EntryFacts? Facts(string what, DueRound round, IReadOnlyCollection<string> pots, DateOnly today) => what.Split(':', 2) switch
    {
        ["give"] => new FeedGiven(round.Task.FeedId, [.. round.Pots.Where(p => pots.Contains(p.PotId)).Select(Amount)], round.Task),
        ["skip", var why] when Whys.Any(w => w.Why == why) => new TaskSkipped(round.Task, why),
        ["move", var text] when int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var days) && Math.Abs(days) <= DuePlan.MostMoved =>
            new TaskMoved(round.Task, today.AddDays(days)),
        _ => null,
    };

    public static string Give(DueRound round) => Template(json =>
    {
        json.WriteString("kind", EntryKind.FeedGiven);
        json.WriteString("feedId", round.Task.FeedId);
        json.WriteString("task", round.Task.ToString());
    });

    public static string Skip(DueRound round, string why) => Template(json =>
    {
        json.WriteString("kind", EntryKind.TaskSkipped);
        json.WriteString("task", round.Task.ToString());
        json.WriteString("why", why);
    });

    public static string Move(DueRound round, int days) => Template(json =>
    {
        json.WriteString("kind", EntryKind.TaskMoved);
        json.WriteString("task", round.Task.ToString());
        json.WriteString("to", FormattableString.Invariant($"+{days}"));
    });

    public static string Noted(WeatherSign sign) => Template(json =>
    {
        json.WriteString("kind", EntryKind.WeatherNoted);
        json.WriteString("what", JsonNamingPolicy.CamelCase.ConvertName(sign.ToString()));
    });

    /// <summary>What all buttons of a form share: nothing, or the day when it is not today.</summary>
    public static string Shared(DateOnly? day) => "{" + (day is { } on ? $"\"day\":\"{Figures.IsoDay(on)}\"," : "") + "\"facts\":{}}";

    /// <summary>One pot's amount for the phone.</summary>
    public static string AmountText(DuePot pot) => Text(json =>
    {
        var amount = Amount(pot);
        json.WriteString("potId", amount.PotId);
        json.WriteNumber("grams", amount.Grams);
        if (amount.Litres is { } litres)
        {
            json.WriteNumber("litres", litres);
        }
    });

    private static string Template(Action<Utf8JsonWriter> facts) => Text(json =>
    {
        json.WriteStartObject("facts");
        facts(json);
        json.WriteEndObject();
    });

    private static string Text(Action<Utf8JsonWriter> members)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            members(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
