using System.Globalization;
using Ashery.Journal;
using Ashery.Pots;
using Ashery.Problems;
using Ashery.Web.Forms;
using Ashery.Web.Show;
using Measured = Ashery.Journal.Measured;

namespace Ashery.Web.Pages.Diary;

/// <summary>An entry about plants as a form and back.</summary>
internal static class EntryForm
{
    public static string Grams(string pot) => "grams-" + pot;

    public static string Litres(string pot) => "litres-" + pot;

    public static Draft Fill(Entry entry)
    {
        var fields = new List<(string, string?)> { ("day", Figures.IsoDay(entry.Day)), ("time", entry.Time?.ToString("HH:mm", CultureInfo.InvariantCulture)), ("note", entry.Note) };
        fields.AddRange(entry.Facts switch
        {
            Measured m => [("what", m.What.ToString()), ("value", Figures.Number(m.Value)), ("celsius", m.Celsius is { } c ? Figures.Number(c) : "")],
            PlantEvent e => [("what", e.What.ToString()), ("litres", e.Litres is { } l ? Figures.Number(l) : ""), ("medium", e.Medium ?? ""), ("place", e.Place ?? "")],
            Sighting s => [("seen", s.What), ("severity", Figures.Number(s.Severity))],
            TaskSkipped s => [("why", s.Why)],
            TaskMoved m => [("to", Figures.IsoDay(m.To))],
            FeedGiven f => f.Amounts.SelectMany(a => new (string, string?)[] { (Grams(a.PotId), Figures.Number(a.Grams)), (Litres(a.PotId), a.Litres is { } l ? Figures.Number(l) : "") }),
            _ => (IEnumerable<(string, string?)>)[],
        });
        return Draft.With(fields).Set("pot", entry.Pots);
    }

    /// <summary>The entry with what was typed; what the form does not show stays.</summary>
    public static Result<Entry> Read(Draft typed, Entry was, DateOnly today)
    {
        var read = new FieldReader(typed);
        var day = read.Date("day") ?? was.Day;
        if (day > today && day != was.Day)
        {
            read.Add("day", "This day is still to come.", "Write the day on which it happened.");
        }

        var time = was.Time;
        if (typed.WasSent("time") && typed["time"] != was.Time?.ToString("HH:mm", CultureInfo.InvariantCulture))
        {
            time = Time(read, typed["time"]);
        }

        var entry = was with
        {
            Day = day,
            Time = time,
            Note = typed["note"],
            Pots = typed.WasSent("pots-shown") && was.Facts is not (Measured or FeedGiven) ? typed.All("pot") : was.Pots,
            Facts = Facts(read, typed, was.Facts),
        };
        read.AddRange(EntryRules.Check(entry).Where(p => read.Problems.All(known => known.Field != p.Field)));
        return read.Fine ? Result.Of(entry) : Result.Fail<Entry>(read.Problems);
    }

    /// <summary>A figure typed into a form of quick entry.</summary>
    public static Measured? Figure(FieldReader read, MeasuredKind what, double? celsius = null)
    {
        var (from, to, _) = MeasuredRange.Of(what);
        var value = read.Required("value", from, to, Example(what));
        return read.Fine ? new Measured(what, value, celsius) : null;
    }

    public static string Example(MeasuredKind what) => what switch
    {
        MeasuredKind.LeachateEc or MeasuredKind.ExtractEc => "2.1",
        MeasuredKind.LeachatePh or MeasuredKind.ExtractPh => "6.2",
        MeasuredKind.Weight => "5400",
        MeasuredKind.LeafColour => "3.5",
        _ => "12",
    };

    /// <summary>Media as the journal writes them, with their names.</summary>
    public static IEnumerable<(string, string)> Media { get; } =
        [("", "As it was"), .. Enum.GetValues<MediumKind>().Select(m => (char.ToLowerInvariant(m.ToString()[0]) + m.ToString()[1..], Words.Of(m)))];

    public static PlantEvent Event(FieldReader read, Draft typed, PlantEventKind what) => new(
        what,
        read.Optional("litres", 0.01, 5000, "7.5"),
        typed.Has("medium") ? typed["medium"] : null,
        typed.Has("place") ? read.Text("place", "The place", 100) : null);

    private static EntryFacts Facts(FieldReader read, Draft typed, EntryFacts was) => was switch
    {
        Measured m => Figure(read, read.Choice("what", m.What), read.Optional("celsius", -5, 60, "18")) ?? m,
        PlantEvent e => Event(read, typed, read.Choice("what", e.What)),
        Sighting s => new Sighting(read.Text("seen", "What was seen"), typed.Has("severity") ? read.Whole("severity", 0, 3, "2") : s.Severity),
        TaskSkipped s => s with { Why = typed["why"] },
        TaskMoved m => m with { To = read.Date("to") ?? m.To },
        FeedGiven f => f with
        {
            Amounts = [.. f.Amounts.Select(a => typed.WasSent(Grams(a.PotId))
                ? a with { Grams = read.Required(Grams(a.PotId), 0, 1e6, "12"), Litres = read.Optional(Litres(a.PotId), 0, 1e5, "4") }
                : a)],
        },
        _ => was,
    };

    private static TimeOnly? Time(FieldReader read, string text)
    {
        if (text.Length == 0)
        {
            return null;
        }

        if (TimeOnly.TryParseExact(text, ["HH:mm", "HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            return time;
        }

        read.Add("time", $"{FieldReader.Cut(text)} is not an hour.", "Write hours and minutes, as in 07:30.");
        return null;
    }
}
