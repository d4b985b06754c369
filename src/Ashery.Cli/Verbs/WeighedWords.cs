using Ashery.Cli.Frame;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Stock;

namespace Ashery.Cli.Verbs;

/// <summary>Reads <c>urea=110.4</c> and <c>urea@K-77=110.4</c>: a line of the shelf, the maker's lot of the bag, g on the scale.</summary>
internal static class WeighedWords
{
    private const double MostGrams = 1e5;

    public static Weighing? Read(Given given, string word, StockLedger ledger)
    {
        var equals = word.LastIndexOf('=');
        if (equals <= 0)
        {
            given.Add(new Problem("weighed", $"{SafeText.Quoted(word)} is not a bag with its grams.", "Write --weighed urea=110.4, or --weighed urea@LOT=110.4."));
            return null;
        }

        var at = word.IndexOf('@', StringComparison.Ordinal);
        var id = word[..(at > 0 && at < equals ? at : equals)];
        var lot = at > 0 && at < equals ? word[(at + 1)..equals] : null;
        var grams = NumberReader.NotNegative(word[(equals + 1)..], $"weighed {SafeText.Of(id)}", MostGrams, "110.4");
        given.AddRange(grams.Ok ? [] : grams.Problems);
        if (ledger.Line(id) is not { MaterialId: { } material } line)
        {
            given.Add(new Problem("weighed", $"{SafeText.Quoted(id)} is not on the shelf.", $"Its lines are {string.Join(", ", ledger.Lines.Select(static l => SafeText.Of(l.Id)))}."));
            return null;
        }

        var bag = lot is null ? null : line.Bags.FirstOrDefault(b => string.Equals(b.Lot, lot, StringComparison.OrdinalIgnoreCase));
        if (lot is not null && bag is null)
        {
            given.Add(new Problem("weighed", $"No bag of {SafeText.Of(id)} has the lot {SafeText.Quoted(lot)}.", "ashery stock lists the lots; leave @LOT out when the bag is not known."));
        }

        return grams.Ok ? new(id, material, grams.Value, bag?.Bought) : null;
    }
}
