using Ashery.Gardens;
using Ashery.Journal;

namespace Ashery.Stock;

/// <summary>A bag while the book is written.</summary>
internal sealed class BagAccount(LineAccount line, Entry? entry, BagBought? bought, double? opening)
{
    public LineAccount Line { get; } = line;

    public Guid? Bought { get; } = entry?.Id;

    public DateOnly? BoughtOn { get; } = entry?.Day;

    public DateOnly? BestBefore { get; } = bought?.BestBefore;

    /// <summary>Nobody said how much there is: its opening is worked out from what was taken.</summary>
    public bool IsOpen { get; set; } = opening is null;

    public double Opening { get; private set; } = opening ?? 0;

    public double Left { get; private set; } = opening ?? 0;

    public double InBatches { get; private set; }

    public double Given { get; private set; }

    public double Discarded { get; private set; }

    public double Corrected { get; private set; }

    /// <summary>Takes out; returns what was taken beyond the book's figure.</summary>
    public double Take(double grams, StockMoveKind kind)
    {
        var over = Math.Max(0, grams - Left);
        over = over < FirstExpired.Dust ? 0 : over;
        if (IsOpen)
        {
            Opening += Math.Max(0, grams - Left);
            over = 0;
        }
        else
        {
            Corrected += Math.Max(0, grams - Left);
        }

        Left = Math.Max(0, Left - grams);
        switch (kind)
        {
            case StockMoveKind.Batch:
                InBatches += grams;
                break;
            case StockMoveKind.Given:
                Given += grams;
                break;
            default:
                Discarded += grams;
                break;
        }

        return over;
    }

    /// <summary>Sets what is left; returns the correction of the book.</summary>
    public double Set(double grams)
    {
        var by = grams - Left;
        Left = grams;
        if (IsOpen)
        {
            Opening += by;
            IsOpen = false;
            return 0;
        }

        Corrected += by;
        return by;
    }

    public StockBag Close(bool known)
    {
        var own = bought is { Price: { } paid, Grams: > 0 } ? paid / bought.Grams : (double?)null;
        return new()
        {
            LineId = Line.Id,
            Bought = Bought,
            BoughtOn = BoughtOn,
            Lot = string.IsNullOrWhiteSpace(bought?.Lot) ? null : bought.Lot.Trim(),
            BestBefore = BestBefore,
            PricePerGram = own ?? (Line.Shelf?.PricePerKg / 1000),
            IsShelfPrice = own is null && Line.Shelf?.PricePerKg is not null,
            Opening = Opening,
            InBatches = InBatches,
            Given = Given,
            Discarded = Discarded,
            Corrected = Corrected,
            Left = IsOpen && !known ? null : Left,
        };
    }
}

/// <summary>A line of the shelf while the book is written.</summary>
internal sealed class LineAccount
{
    public LineAccount(string id, Bag? shelf)
    {
        Id = id;
        Shelf = shelf;
        MaterialId = shelf?.Material.Id;
        Before = new(this, null, null, shelf is null ? 0 : shelf.Stock?.Grams);
        Before.IsOpen |= shelf is null;
    }

    public string Id { get; }

    public Bag? Shelf { get; }

    public string? MaterialId { get; set; }

    public string Name => Shelf?.Material.Name ?? Id;

    /// <summary>What stood there before the book.</summary>
    public BagAccount Before { get; }

    public List<BagAccount> Bought { get; } = [];

    public bool IsKept { get; set; }

    /// <summary>Bags that were there on a day, first expired first.</summary>
    public List<BagAccount> On(DateOnly day)
    {
        List<BagAccount> there = [Before, .. Bought.Where(b => b.BoughtOn <= day)];
        there.Sort(FirstExpired.Compare);
        return there;
    }

    public StockLine Close()
    {
        // A line without a figure holds as much as wanted, until something of it is bought or weighed.
        var bags = FirstExpired.Order(Bought.Append(Before).Select(b => b.Close(known: Bought.Count > 0 || Shelf is null)));
        return new()
        {
            Id = Id,
            Name = Name,
            MaterialId = MaterialId,
            Shelf = Shelf,
            IsKept = IsKept,
            Bags = [.. bags.Where(b => b.Bought is not null || b.Left is null or > 0 || b.Opening > 0 || b.Corrected != 0 || bags.Count == 1)],
        };
    }
}
