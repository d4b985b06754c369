using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Stock;

namespace Ashery.Cli.Verbs;

/// <summary>Stock as text.</summary>
internal static class StockText
{
    public static void Write(Terminal terminal, StockJson stock)
    {
        var page = new Page(terminal);
        page.Heading($"{SafeText.Of(stock.Garden)}: stock on {Figures.Date(stock.Today)}. Money in {SafeText.Of(stock.Currency)}.");
        page.Blank();
        var table = new Table("bag", "lot", ">left", ">worth", "best before", "runs out");
        foreach (var line in stock.Lines)
        {
            foreach (var bag in line.Bags)
            {
                table.Add(
                    SafeText.Of(line.Id), SafeText.Of(bag.Lot ?? (bag.Bought is null ? "before" : "-")), bag.Left is { } g ? Mass(g) : "as wanted",
                    bag.Left is { } left ? Figures.Fixed(left * bag.PricePerKg / 1000, 2) : Figures.Unknown, Day(bag.BestBefore), line.RunsOut is { } day ? Figures.Date(day) : line.Used > 0 ? "lasts" : Figures.Unknown);
            }
        }

        table.Write(terminal.Output, terminal.Width);
        if (stock.Batches.Count > 0)
        {
            page.Title("Batches, first to be used first");
            var batches = new Table("lot", "feed", ">left", ">of", "made", "use by", "used up");
            foreach (var b in stock.Batches)
            {
                batches.Add(SafeText.Of(b.Lot), SafeText.Of(b.Name), Mass(b.Left), Mass(b.Grams), Figures.Date(b.Made), Day(b.UseBy), Day(b.EmptyOn));
            }

            batches.Write(terminal.Output, terminal.Width);
        }

        page.Bullets("To buy for the planned year", [.. stock.Shopping.Where(static s => s.ToBuy > 0).Select(s =>
            $"{s.Name}: {Mass(s.ToBuy)}{(s.Bags is { } n ? $" in {Figures.Whole(n)} {(n == 1 ? "bag" : "bags")}" : "")}, from {Day(s.RunsOut)}, {(s.Cost is { } c ? $"{Figures.Fixed(c, 2)} {stock.Currency}" : "price not known")}")]);
        Costs(terminal, page, stock);
        page.Bullets("Notes", [.. stock.Notes.Select(static n => $"{n.Message} {n.WayOut}")]);
    }

    private static void Costs(Terminal terminal, Page page, StockJson stock)
    {
        var costs = stock.Costs;
        page.Title($"Costs from {Figures.Date(costs.From)} to {Figures.Date(costs.To)}");
        foreach (var (name, cost) in new[]
        {
            ("feed given", costs.Given), ("bags bought", costs.Bought), ("thrown away", costs.Discarded), ("missing", costs.Missing), ("in bags now", costs.InBags), ("in batches now", costs.InBatches),
        })
        {
            page.Fact(name, $"{Figures.Fixed(cost.Known, 2)}{(cost.UnpricedGrams > 1e-6 ? $", without {Mass(cost.UnpricedGrams)} of {SafeText.Of(string.Join(", ", cost.Unpriced))} (no price)" : "")}");
        }

        if (costs.Pots.Count > 0)
        {
            page.Blank();
            var pots = new Table("pot", ">pots", ">feed", ">each", ">all");
            foreach (var pot in costs.Pots)
            {
                pots.Add(SafeText.Of(pot.Name), Figures.Whole(pot.Pots), Mass(pot.Grams), Money(pot.Each), Money(pot.Cost));
            }

            pots.Write(terminal.Output, terminal.Width);
        }

        if (costs.Batches.Count > 0)
        {
            page.Blank();
            var batches = new Table("batch", "feed", ">made", ">cost", ">a kg");
            foreach (var b in costs.Batches)
            {
                batches.Add(SafeText.Of(b.Lot), SafeText.Of(b.Name), Mass(b.Grams), Money(b.Cost), Figures.Fixed(b.PerKg, 2));
            }

            batches.Write(terminal.Output, terminal.Width);
        }
    }

    internal static string Mass(double grams) => grams >= 1000 ? $"{Figures.Short(grams / 1000)} kg" : $"{Figures.Short(Math.Round(grams, 2))} g";

    /// <summary>As the scale shows it.</summary>
    internal static string Scale(double grams) => Math.Round(grams, 3).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);

    internal static string Day(DateOnly? day) => day is { } d ? Figures.Date(d) : Figures.Unknown;

    private static string Money(CostJson cost) => Figures.Fixed(cost.Known, 3) + (cost.UnpricedGrams > 1e-6 ? "+" : "");
}
