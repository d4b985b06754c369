using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Stock;
using Ashery.Gardens;

namespace Ashery.Cli.Verbs;

/// <summary>Batches, traces and recalls as text.</summary>
internal static class BatchText
{
    public static void Write(Terminal terminal, BatchJson batch)
    {
        var page = new Page(terminal);
        var made = batch.Parts.Count > 0;
        page.Heading($"{SafeText.Of(batch.Name)}: {(made ? "a batch of" : "what to weigh for")} {StockText.Mass(batch.Grams)} on {Figures.Date(batch.Day)}, lot {SafeText.Of(batch.Lot)}{(batch.Id is null ? "" : ", written into the journal")}.");
        page.Bullets("Never together", [.. batch.Stops]);
        page.Bullets("First", [.. batch.Cautions.Select(static c => c.Words)]);
        page.Title(made ? "Weighed" : "Weigh in this order");
        var table = new Table("bag", "lot", ">grams", "best before", "name");
        foreach (var w in batch.Weighings)
        {
            table.Add(SafeText.Of(w.Bag), w.IsShort ? "short" : SafeText.Of(w.Lot ?? "-"), StockText.Scale(w.Grams), StockText.Day(w.BestBefore), SafeText.Of(w.Name));
        }

        table.Write(terminal.Output, terminal.Width);
        page.Blank();
        page.Fact("grade", string.Join(", ", batch.Grade.Select(static g => $"{g.Key} {Figures.Short(g.Value)} %")));
        page.Fact("use by", $"{(batch.UseBy is { } day ? Figures.Date(day) + ". " : "")}{batch.UseByWhy}");
        if (made)
        {
            Beside(terminal, page, batch);
        }

        page.Bullets("Notes", [.. batch.Notes.Select(static n => $"{n.Message} {n.WayOut}")]);
    }

    public static void Write(Terminal terminal, TraceJson trace)
    {
        var page = new Page(terminal);
        page.Heading(trace.Batches.Count == 0 ? $"No batch has the lot {SafeText.Quoted(trace.Lot)}." : $"Batch {SafeText.Of(trace.Lot)} came from these bags.");
        foreach (var b in trace.Batches)
        {
            page.Text($"{SafeText.Of(b.Name)}, made on {Figures.Date(b.Made)}: {StockText.Mass(b.Grams)}, {StockText.Mass(b.Left)} left.");
        }

        if (trace.Bags.Count > 0)
        {
            page.Blank();
            var table = new Table("bag", "lot", ">grams", "bought", "best before", "named", "name");
            foreach (var b in trace.Bags)
            {
                table.Add(SafeText.Of(b.Bag), SafeText.Of(b.Lot ?? (b.Bought is null ? "before" : "-")), StockText.Scale(b.Grams), StockText.Day(b.BoughtOn), StockText.Day(b.BestBefore), b.Assumed ? "assumed" : "yes", SafeText.Of(b.Name));
            }

            table.Write(terminal.Output, terminal.Width);
        }
    }

    public static void Write(Terminal terminal, RecallJson recall, Garden garden)
    {
        var page = new Page(terminal);
        page.Heading(recall.Bags.Count + recall.Batches.Count == 0
            ? $"Nothing in the book has the lot {SafeText.Quoted(recall.Lot)}."
            : $"Lot {SafeText.Of(recall.Lot)} reached {Count(recall.Batches.Count, "batch", "batches")} and {Count(recall.Uses.Select(static u => u.Pot).Distinct(StringComparer.Ordinal).Count(), "pot", "pots")}.");
        page.Bullets("Bags", [.. recall.Bags.Select(static b => $"{b.Name} ({b.Bag}), bought on {StockText.Day(b.BoughtOn)}: {(b.Left is { } left ? StockText.Mass(left) : "not weighed")} left")]);
        if (recall.Discarded > 0)
        {
            page.Text($"{StockText.Mass(recall.Discarded)} were thrown away.");
        }

        if (recall.Batches.Count > 0)
        {
            page.Title("Batches that hold some of it");
            var table = new Table("lot", "feed", "made", ">of it", ">left of batch", "named");
            foreach (var b in recall.Batches)
            {
                table.Add(SafeText.Of(b.Lot), SafeText.Of(b.Name), Figures.Date(b.Made), StockText.Mass(b.Grams), StockText.Mass(b.Left), b.Assumed ? "assumed" : "yes");
            }

            table.Write(terminal.Output, terminal.Width);
        }

        if (recall.Uses.Count > 0)
        {
            page.Title("Pots that got some of it");
            var table = new Table("day", "pot", ">pots", "batch", ">feed", ">of it", "named", "name");
            foreach (var u in recall.Uses)
            {
                table.Add(
                    Figures.Date(u.Day), SafeText.Of(u.Pot), Figures.Whole(u.Pots), SafeText.Of(u.Batch ?? "-"), StockText.Mass(u.FeedGrams), StockText.Mass(u.Grams), u.Assumed ? "assumed" : "yes",
                    SafeText.Of(garden.Pots.FirstOrDefault(p => p.Id == u.Pot)?.Name ?? ""));
            }

            table.Write(terminal.Output, terminal.Width);
        }
    }

    private static void Beside(Terminal terminal, Page page, BatchJson batch)
    {
        page.Title("Beside the feed");
        var parts = new Table("material", ">weighed", ">wanted", ">difference");
        foreach (var p in batch.Parts)
        {
            parts.Add(SafeText.Of(p.Material), Figures.Fixed(p.Grams, 2), Figures.Fixed(p.Wanted, 2), p.Wanted is { } w ? Signed(p.Grams - w) : Figures.Unknown);
        }

        parts.Write(terminal.Output, terminal.Width);
        if (batch.Nutrients.Count == 0)
        {
            return;
        }

        page.Blank();
        var nutrients = new Table("% by weight", ">made", ">wanted", ">points");
        foreach (var n in batch.Nutrients)
        {
            nutrients.Add(n.Nutrient, Figures.Fixed(n.Made, 2), Figures.Fixed(n.Wanted, 2), Signed(n.Made - n.Wanted));
        }

        nutrients.Write(terminal.Output, terminal.Width);
        page.Bullets("If it were sold under the feed's grade", [.. batch.Tolerances.Select(static t => $"{t.Name}: {(t.Passes ? "within" : $"outside{(t.Outside.Count > 0 ? $" for {string.Join(", ", t.Outside)}" : "")}")}")]);
    }

    private static string Count(int n, string one, string many) => $"{Figures.Whole(n)} {(n == 1 ? one : many)}";

    private static string Signed(double value) => Math.Round(value, 2) switch { 0 => "0", > 0 and var up => "+" + Figures.Fixed(up, 2), var down => Figures.Fixed(down, 2) };
}
