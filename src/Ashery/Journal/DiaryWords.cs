using System.Globalization;
using Ashery.Gardens;
using Ashery.Pots;

namespace Ashery.Journal;

/// <summary>An entry in a line of words, with the garden's names; the same on every surface.</summary>
public static class DiaryWords
{
    /// <summary>What kind of entry it is, in two words at most.</summary>
    public static string Kind(EntryFacts facts) => facts switch
    {
        FeedGiven => "Feed given",
        TaskSkipped => "Skipped",
        TaskMoved => "Moved",
        Measured m => MeasuredWords.Name(m.What),
        PlantEvent e => Event(e.What),
        Sighting => "Seen",
        WeatherNoted => "Weather",
        Photograph => "Photograph",
        BagBought => "Bought",
        StockCounted => "Counted",
        BatchMade => "Batch made",
        Discarded => "Thrown away",
        KeptDocument d => d.Stage switch { "trial" => "Trial", "calendar" => "Reminders", _ => "Clinic" },
        _ => EntryKind.Of(facts),
    };

    /// <summary>What it tells, for the garden or for one of its pots.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="garden">For names; what is no longer in it goes by its key.</param>
    /// <param name="pot">The pot whose part of it is meant; null for all of it.</param>
    public static string Of(Entry entry, Garden garden, string? pot = null) => entry.Facts switch
    {
        FeedGiven f => Given(f, garden, pot),
        TaskSkipped s => $"{FeedName(garden, s.Task.FeedId)} of {Day(s.Task.Day)} left out{(s.Why.Length > 0 ? $": {s.Why}" : "")}",
        TaskMoved m => $"{FeedName(garden, m.Task.FeedId)} of {Day(m.Task.Day)} put to {Day(m.To)}",
        Measured m => $"{MeasuredWords.Name(m.What)} {MeasuredWords.Value(m.What, m.Value)}{(m.Celsius is { } c ? string.Create(CultureInfo.InvariantCulture, $" at {c:0.#} °C") : "")}",
        PlantEvent e => Happened(e),
        Sighting s => $"{s.What}: {Severity(s.Severity)}",
        WeatherNoted w => w.What switch { WeatherSign.Rain => "Heavy rain", WeatherSign.Heat => "Too hot to feed", _ => "The medium is dry" },
        Photograph => entry.Note.Length > 0 ? entry.Note : "Photograph",
        BagBought b => $"{Grams(b.Grams)} of {BagName(garden, b.BagId)}{(b.Lot is { Length: > 0 } lot ? $", lot {lot}" : "")}",
        StockCounted c => $"{Grams(c.Grams)} of {BagName(garden, c.BagId)} left",
        BatchMade b => $"{Grams(b.TotalGrams())} of {FeedName(garden, b.FeedId)}, lot {b.Lot}",
        Discarded d => $"{Grams(d.Grams)}{(d.BagId is { } bag ? $" of {BagName(garden, bag)}" : "")}{(d.Why.Length > 0 ? $": {d.Why}" : "")}",
        KeptDocument d => d.Title,
        _ => "",
    };

    public static string Event(PlantEventKind what) => what switch
    {
        PlantEventKind.Other => "Something else",
        _ => what.ToString(),
    };

    public static string Severity(int severity) => severity switch
    {
        0 => "gone",
        1 => "a few",
        2 => "many",
        _ => "everywhere",
    };

    public static string Medium(MediumKind medium) => medium switch
    {
        MediumKind.PeatMix => "peat mix",
        MediumKind.BarkMix => "bark mix",
        MediumKind.CoirMix => "coir mix",
        MediumKind.LoamMix => "loam mix",
        MediumKind.Mineral => "mineral medium",
        _ => medium.ToString(),
    };

    /// <summary>Name of a pot; of one that is no longer in the garden, its key in words.</summary>
    public static string PotName(Garden garden, string id) => garden.Pots.FirstOrDefault(p => p.Id == id)?.Name ?? OfKey(id);

    /// <summary>Name of a feed; of one that is no longer kept, its key in words.</summary>
    public static string FeedName(Garden garden, string id) => garden.Feeds.FirstOrDefault(f => f.Id == id)?.Name ?? OfKey(id);

    /// <summary>Name of a bag's material; of one that is no longer on the shelf, its key in words.</summary>
    public static string BagName(Garden garden, string id) => garden.Shelf.FirstOrDefault(b => b.Id == id)?.Material.Name ?? OfKey(id);

    private static string OfKey(string id) => id.Length == 0 ? id : char.ToUpperInvariant(id[0]) + id[1..].Replace('-', ' ');

    private static string Given(FeedGiven f, Garden garden, string? pot)
    {
        var amounts = pot is null ? f.Amounts : [.. f.Amounts.Where(a => a.PotId == pot)];
        var name = FeedName(garden, f.FeedId);
        if (amounts.Count == 0)
        {
            return name;
        }

        var (grams, litres) = (amounts.Sum(static a => a.Grams), amounts.Sum(static a => a.Litres ?? 0));
        var pots = pot is null && amounts.Count > 1 ? string.Create(CultureInfo.InvariantCulture, $" for {amounts.Count} pots") : "";
        return (grams > 0 ? $"{Grams(grams)} of {name}" : name) + (litres > 0 ? string.Create(CultureInfo.InvariantCulture, $" in {litres:0.##} L") : "") + pots;
    }

    private static string Happened(PlantEvent e)
    {
        var more = new List<string>();
        if (e.Litres is { } litres)
        {
            more.Add(string.Create(CultureInfo.InvariantCulture, $"{litres:0.##} L"));
        }

        if (e.Medium is { Length: > 0 } medium)
        {
            more.Add(Enum.TryParse<MediumKind>(medium, ignoreCase: true, out var kind) ? Medium(kind) : medium);
        }

        if (e.Place is { Length: > 0 } place)
        {
            more.Add($"at {place}");
        }

        return more.Count == 0 ? Event(e.What) : $"{Event(e.What)}: {string.Join(", ", more)}";
    }

    private static string Grams(double grams) => grams >= 1000
        ? string.Create(CultureInfo.InvariantCulture, $"{grams / 1000:0.##} kg")
        : string.Create(CultureInfo.InvariantCulture, $"{grams:0.##} g");

    private static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
