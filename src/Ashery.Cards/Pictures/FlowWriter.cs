using Ashery.Gardens;
using Ashery.Stock;

namespace Ashery.Cards.Pictures;

/// <summary>Gathers the boxes and bands of a flow picture.</summary>
internal sealed class FlowWriter(Garden garden)
{
    private readonly List<FlowBox> bags = [];
    private readonly List<FlowBox> batches = [];
    private readonly Dictionary<(string From, string To), (double Grams, bool Assumed)> links = [];
    private readonly List<(string Pot, int Pots, double Grams, DateOnly Day)> uses = [];

    public static string Key(StockBag bag) => $"bag {bag.LineId} {bag.Bought}";

    public static string Key(Guid batch) => $"batch {batch}";

    private static string Key(string pot) => $"pot {pot}";

    public void Bag(string name, StockBag bag)
    {
        if (!bags.Exists(b => b.Key == Key(bag)))
        {
            bags.Add(new(Key(bag), name, bag.Lot is { } lot ? "lot " + lot : bag.BoughtOn is { } day ? "bought " + Figures.Day(day) : "there before"));
        }
    }

    public void Batch(Batch batch)
    {
        if (!batches.Exists(b => b.Key == Key(batch.Id)))
        {
            batches.Add(new(Key(batch.Id), batch.FeedName, batch.Lot));
        }
    }

    public void Link(string from, string? to, double grams, bool assumed)
    {
        if (to is not null && grams > 0)
        {
            var old = links.GetValueOrDefault((from, to));
            links[(from, to)] = (old.Grams + grams, old.Assumed || assumed);
        }
    }

    public void Use(FeedUse use, double grams, IReadOnlyList<string> from, bool assumed)
    {
        uses.Add((use.PotId, use.Pots, grams, use.Day));
        foreach (var key in from)
        {
            Link(key, Key(use.PotId), grams / from.Count, assumed);
        }
    }

    public FlowView Write(string title, int mostPots)
    {
        var pots = uses.GroupBy(static u => u.Pot, StringComparer.Ordinal).Select(g => (Pot: g.Key, g.First().Pots, Grams: g.Sum(static u => u.Grams), Days: g.Select(static u => u.Day).Distinct().Count()))
            .OrderByDescending(static p => p.Grams).ThenBy(static p => p.Pot, StringComparer.Ordinal).ToList();
        var boxes = pots.Take(pots.Count > mostPots ? mostPots - 1 : mostPots).Select(p => new FlowBox(
            Key(p.Pot), garden.Pots.FirstOrDefault(o => o.Id == p.Pot)?.Name ?? p.Pot,
            Figures.Stock(p.Grams) + (p.Days == 1 ? ", once" : FormattableString.Invariant($", {p.Days} days")) + (p.Pots > 1 ? FormattableString.Invariant($", {p.Pots} pots") : ""))).ToList();
        var rest = pots.Skip(boxes.Count).ToList();
        var known = boxes.Select(static b => b.Key).Concat(bags.Select(static b => b.Key)).Concat(batches.Select(static b => b.Key)).ToHashSet(StringComparer.Ordinal);
        if (rest.Count > 0)
        {
            boxes.Add(new("others", FormattableString.Invariant($"{rest.Count} more"), Figures.Stock(rest.Sum(static p => p.Grams))));
        }

        return new(title, bags, batches, boxes,
            [.. links.GroupBy(l => (l.Key.From, To: known.Contains(l.Key.To) ? l.Key.To : "others")).Select(static g => new FlowLink(g.Key.From, g.Key.To, g.Sum(static l => l.Value.Grams), g.Any(static l => l.Value.Assumed)))]);
    }
}
