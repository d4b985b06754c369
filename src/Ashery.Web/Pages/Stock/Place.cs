using Ashery.Stock;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Stock;

/// <summary>Where something is weighed or thrown away, as a form names it: a line of the shelf, a very bag, or a batch.</summary>
/// <param name="Line">Line of the shelf; null for a batch.</param>
/// <param name="Bag">Which bought bag; null for the line as a whole.</param>
/// <param name="Batch">Which batch; null for a line.</param>
internal sealed record Place(string? Line, Guid? Bag, Guid? Batch)
{
    private const char Apart = '|';

    public override string ToString() => Batch is { } batch ? $"batch{Apart}{batch:D}" : Bag is { } bag ? $"bag{Apart}{Line}{Apart}{bag:D}" : $"line{Apart}{Line}";

    /// <summary>The place a form names; null when there is none such.</summary>
    public static Place? Parse(string text, StockLedger ledger) => text.Split(Apart) switch
    {
        ["line", var line] when ledger.Line(line) is not null => new(line, null, null),
        ["bag", var line, var id] when Guid.TryParseExact(id, "D", out var bag) && ledger.Bag(line, bag) is not null => new(line, bag, null),
        ["batch", var id] when Guid.TryParseExact(id, "D", out var batch) && ledger.Batches.Find(batch) is not null => new(null, null, batch),
        _ => null,
    };

    /// <summary>Every place with its name: lines, their bags where there are several, then batches.</summary>
    public static IEnumerable<(string Value, string Text)> Choices(StockLedger ledger, Amounts amounts, bool batches)
    {
        foreach (var line in ledger.Lines)
        {
            var left = line.Left is { } g ? amounts.Mass(g) : "as much as wanted";
            yield return (new Place(line.Id, null, null).ToString(), $"{line.Name} ({left}{(line.Bags.Any(static b => b.Bought is not null) ? ", all its bags" : "")})");
            foreach (var bag in line.Bags.Where(static b => b.Bought is not null))
            {
                yield return (new Place(line.Id, bag.Bought, null).ToString(), $"{line.Name}, {BagName(bag)} ({amounts.Mass(bag.Left)})");
            }
        }

        foreach (var batch in batches ? ledger.Batches.Batches.Where(static b => b.Left > 0) : [])
        {
            yield return (new Place(null, null, batch.Id).ToString(), $"{batch.FeedName}, batch {batch.Lot} ({amounts.Mass(batch.Left)})");
        }
    }

    /// <summary>Bags a part of a batch may come from.</summary>
    public static IEnumerable<(string Value, string Text)> BagsOf(StockLedger ledger, string materialId, Amounts amounts)
    {
        foreach (var line in ledger.Lines.Where(l => l.MaterialId == materialId))
        {
            foreach (var bag in line.Bags)
            {
                yield return (new Place(line.Id, bag.Bought, null).ToString(), $"{BagName(bag)} ({(bag.Left is { } g ? amounts.Mass(g) : "as much as wanted")})");
            }
        }
    }

    public static string BagName(StockBag bag) => bag switch
    {
        { Bought: null } => "what was there before",
        { Lot: { } lot } => $"lot {lot}",
        _ => $"bought {Figures.Day(bag.BoughtOn!.Value)}",
    };
}
