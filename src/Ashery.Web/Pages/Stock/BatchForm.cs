using System.Globalization;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Stock;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Stock;

/// <summary>The form of a batch: a row for each thing on the scale, with the bag it comes from.</summary>
internal static class BatchForm
{
    public const int MostRows = 40;

    private const double MostGrams = 1e5;

    /// <summary>Rows of a proposal: the figures are left open, since they are to be those of the scale.</summary>
    public static IReadOnlyList<BatchRow> Rows(BatchProposal proposal) => [.. proposal.Weighings.Select(static (w, i) => new BatchRow(
        i, w.BagId, w.MaterialId, w.Name, w.Grams, new Place(w.BagId, w.Bought, null).ToString()))];

    /// <summary>Rows of a batch that was written.</summary>
    public static IReadOnlyList<BatchRow> Rows(BatchMade made, StockLedger ledger) => [.. made.Weighings.Select((w, i) => new BatchRow(
        i, w.BagId, w.MaterialId, ledger.Line(w.BagId)?.Name ?? w.MaterialId, w.Grams, new Place(w.BagId, w.Bought, null).ToString()))];

    public static Draft Fill(Draft draft, IReadOnlyList<BatchRow> rows, bool grams)
    {
        foreach (var row in rows)
        {
            draft = draft.Set(row.From, row.Place);
            draft = grams ? draft.Set(row.Field, Figures.Number(row.Grams)) : draft;
        }

        return draft;
    }

    public static Result<Entry> Read(Draft typed, Guid id, string feedId, IReadOnlyList<BatchRow> rows, BatchFormContext at)
    {
        var read = new FieldReader(typed);
        var day = read.Date("day") ?? at.Today;
        var useBy = read.Date("useby");
        List<Weighing> weighings = [];
        foreach (var row in rows)
        {
            if (!typed.Has(row.Field))
            {
                read.Add(row.Field, $"{row.Name} is missing.", "Type what the scale said, 0 if you left it out.");
                continue;
            }

            var grams = read.Optional(row.Field, 0, MostGrams, "12.5") ?? 0;
            var place = Place.Parse(typed[row.From], at.Ledger);
            weighings.Add(new(place?.Line ?? row.BagId, row.MaterialId, grams, place?.Bag));
        }

        if (read.Fine && weighings.Sum(static w => w.Grams) <= 0)
        {
            read.Add(rows.Count > 0 ? rows[0].Field : "grams", "Nothing was weighed.", "Type what the scale said.");
        }

        return read.Fine
            ? BatchMaker.Make(at.Garden, at.Ledger, new() { Id = id, Day = day, Time = at.Time, FeedId = feedId, Weighings = weighings, Lot = at.Lot, UseBy = useBy, Note = typed["note"] })
            : Result.Fail<Entry>(read.Problems);
    }
}

/// <summary>A row of the form.</summary>
public sealed record BatchRow(int Number, string BagId, string MaterialId, string Name, double Grams, string Place)
{
    public string Field => "g" + Number.ToString(CultureInfo.InvariantCulture);

    public string From => "from" + Number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>What a batch is read against.</summary>
internal sealed record BatchFormContext(Garden Garden, StockLedger Ledger, DateOnly Today, TimeOnly? Time, string? Lot);
