using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Stock;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Stock;

/// <summary>Forms about a bag bought, what is left, and what was thrown away: filled in from an entry and read into one.</summary>
internal static class StockEntryForm
{
    public const string Buy = "buy", Weigh = "weigh", Discard = "discard";

    private const double MostGrams = 1e6;

    /// <summary>Which form an entry belongs to; null for other kinds.</summary>
    public static string? Kind(EntryFacts facts) => facts switch { BagBought => Buy, StockCounted => Weigh, Discarded => Discard, _ => null };

    public static Draft Fill(Entry entry, Amounts amounts) => Draft.With(
    [
        ("day", Figures.IsoDay(entry.Day)), ("note", entry.Note),
        .. entry.Facts switch
        {
            BagBought b => [("bag", b.BagId), ("size", amounts.FromGrams(b.Grams)), ("price", b.Price is { } p ? Figures.Number(p) : null), ("lot", b.Lot), ("best", Figures.IsoDay(b.BestBefore))],
            StockCounted c => [("place", new Place(c.BagId, c.Bought, null).ToString()), ("grams", Figures.Number(c.Grams))],
            Discarded d => [("place", new Place(d.BagId, d.Bought, d.Batch).ToString()), ("grams", Figures.Number(d.Grams)), ("why", d.Why)],
            _ => (IEnumerable<(string, string?)>)[],
        },
    ]);

    public static Result<Entry> Read(string kind, Draft typed, Guid id, Garden garden, StockLedger ledger, Amounts amounts, DateOnly today, TimeOnly? time)
    {
        var read = new FieldReader(typed);
        var day = read.Date("day") ?? today;
        EntryFacts facts = kind switch
        {
            Buy => Bought(read, typed, garden, amounts),
            Weigh => Counted(read, typed, ledger),
            _ => ThrownAway(read, typed, ledger),
        };
        var entry = new Entry { Id = id, Day = day, Time = time, Note = typed["note"], Facts = facts };
        read.AddRange(read.Fine ? EntryRules.Check(entry) : []);
        return read.Fine ? Result.Of(entry) : Result.Fail<Entry>(read.Problems);
    }

    private static BagBought Bought(FieldReader read, Draft typed, Garden garden, Amounts amounts)
    {
        if (!garden.Shelf.Any(b => b.Id == typed["bag"]))
        {
            read.Add("bag", "This line is not on the shelf.", "Choose one, or put the bag on the shelf first.");
        }

        var grams = amounts.ToGrams(read.Required("size", 0.000001, 10_000, "2.5"));
        return new(typed["bag"], Math.Round(grams, 6), read.Optional("price", 0, 1e7, "12.50"), typed.Has("lot") ? read.Text("lot", "The lot") : null, read.Date("best"));
    }

    private static StockCounted Counted(FieldReader read, Draft typed, StockLedger ledger)
    {
        var place = At(read, typed, ledger);
        return new(place.Line ?? "", read.Required("grams", 0, MostGrams, "340"), place.Bag);
    }

    private static Discarded ThrownAway(FieldReader read, Draft typed, StockLedger ledger)
    {
        var place = At(read, typed, ledger);
        var grams = read.Required("grams", 0.001, MostGrams, "25");
        var left = place.Batch is { } id ? ledger.Batches.Find(id)!.Left : place.Line is null ? null : place.Bag is { } bag ? ledger.Bag(place.Line, bag)!.Left : ledger.Line(place.Line)!.Left;
        if (read.Fine && (typed["revision"] is "" or "0") && left is { } most && grams > most + 0.5)
        {
            read.Add("grams", FormattableString.Invariant($"The book has {most:0.##} g there."), "Write at most that, or weigh what is left first.");
        }

        return new(grams, typed["why"], place.Batch, place.Line, place.Bag);
    }

    private static Place At(FieldReader read, Draft typed, StockLedger ledger)
    {
        if (Place.Parse(typed["place"], ledger) is { } place)
        {
            return place;
        }

        read.Add("place", "This is not in the book.", "Choose from the list.");
        return new(null, null, null);
    }
}
