using System.Globalization;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Records;

namespace Ashery.Web.Show;

/// <summary>An entry of the journal in a line of words, with the names that the garden gives to pots, feeds and bags.</summary>
public static class EntryWords
{
    /// <summary>What a revision did.</summary>
    public static string Did(StoredEntry stored, Garden garden) => stored switch
    {
        { IsRemoved: true } => $"Took back: {Said(stored.Entry, garden)}",
        { Revision: > 1 } => $"Changed: {Said(stored.Entry, garden)}",
        _ => Said(stored.Entry, garden),
    };

    public static string Said(Entry entry, Garden garden)
    {
        var pots = Pots(entry, garden);
        return entry.Facts switch
        {
            FeedGiven given => $"Gave {Feed(given.FeedId, garden)} to {pots}",
            TaskSkipped skipped => $"Skipped {Feed(skipped.Task.FeedId, garden)} for {pots}{(skipped.Why.Length > 0 ? $" ({skipped.Why})" : "")}",
            TaskMoved moved => $"Moved {Feed(moved.Task.FeedId, garden)} for {pots} to {moved.To.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}",
            Measured measured => $"Measured {Figure(measured)} on {pots}",
            PlantEvent happened => $"{Happened(happened.What)}: {pots}{(happened.Place is { Length: > 0 } place ? $", now {place}" : "")}",
            Sighting seen => $"Saw {seen.What} on {pots}",
            WeatherNoted noted => $"{Weather(noted.What)}, {pots}",
            Photograph => $"Photograph of {pots}",
            BagBought bought => $"Bought {Figures.Number(bought.Grams)} g of {Bag(bought.BagId, garden)}",
            StockCounted counted => $"Weighed {Bag(counted.BagId, garden)}: {Figures.Number(counted.Grams)} g left",
            BatchMade batch => $"Mixed batch {batch.Lot} of {Feed(batch.FeedId, garden)}, {Figures.Number(batch.Weighings.Sum(static w => w.Grams))} g",
            Discarded discarded => $"Threw away {Figures.Number(discarded.Grams)} g{(discarded.BagId is { } bag ? $" of {Bag(bag, garden)}" : " of a batch")}",
            KeptDocument document => $"Kept: {document.Title}",
            _ => EntryKind.Of(entry.Facts),
        };
    }

    /// <summary>A figure with its unit.</summary>
    public static string Figure(Measured measured) => measured.What switch
    {
        MeasuredKind.LeachateEc => $"EC of drainage {Figures.Number(measured.Value)} mS/cm",
        MeasuredKind.LeachatePh => $"pH of drainage {Figures.Number(measured.Value)}",
        MeasuredKind.ExtractEc => $"EC of the 1:2 extract {Figures.Number(measured.Value)} mS/cm",
        MeasuredKind.ExtractPh => $"pH of the 1:2 extract {Figures.Number(measured.Value)}",
        MeasuredKind.Weight => $"weight {Figures.Number(measured.Value)} g",
        MeasuredKind.Flowers => $"{Figures.Number(measured.Value)} open flowers",
        MeasuredKind.Buds => $"{Figures.Number(measured.Value)} buds",
        MeasuredKind.LeafColour => $"leaf colour {Figures.Number(measured.Value)} of 5",
        MeasuredKind.Height => $"height {Figures.Number(measured.Value)} cm",
        _ => $"width {Figures.Number(measured.Value)} cm",
    };

    private static string Weather(WeatherSign what) => what switch
    {
        WeatherSign.Rain => "Heavy rain",
        WeatherSign.Heat => "Too hot to feed",
        _ => "Dry medium",
    };

    private static string Happened(PlantEventKind what) => what is PlantEventKind.Other ? "Noted" : what.ToString();

    private static string Pots(Entry entry, Garden garden) => entry.Pots switch
    {
        [] => "the garden",
        [var only] => garden.Pots.FirstOrDefault(p => p.Id == only)?.Name ?? only,
        _ => $"{Figures.Number(entry.Pots.Count)} pots",
    };

    private static string Feed(string id, Garden garden) => garden.Feeds.FirstOrDefault(f => f.Id == id)?.Name ?? id;

    private static string Bag(string id, Garden garden) => garden.Shelf.FirstOrDefault(b => b.Id == id)?.Material.Name ?? id;
}
