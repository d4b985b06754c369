using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Calendar;
using Ashery.Gardens;

namespace Ashery.Cli.Verbs;

/// <summary>A year of feeds as text: strip, dates with reasons, totals, shopping.</summary>
internal static class YearText
{
    public static void Write(Terminal terminal, YearJson year, Garden garden, string? file, bool full)
    {
        var page = new Page(terminal);
        var days = year.Feeds.Select(static f => f.Date).Distinct().Count();
        page.Heading($"{SafeText.Of(garden.Name)}: {Figures.Whole(days)} days of feeding from {Figures.Date(year.From)} to {Figures.Date(year.To)}.");
        if (file is not null)
        {
            page.Text($"The dates are in {SafeText.Of(file)}.");
        }

        page.Blank();
        YearStripText.Write(terminal, year);
        MixText.Problems(page, "Mind", year.Problems);
        page.Bullets("Where the rules leave nothing", [.. year.Offers.Select(static o => $"{Figures.Date(o.From)} to {Figures.Date(o.To)}: {o.Words}")]);
        page.Bullets("Feeds replaced", [.. year.Replacements.Select(static r => $"{Figures.Date(r.On)}: {r.Words}")]);
        Feeds(terminal, page, year, garden);
        Months(terminal, page, year);
        Supply(terminal, page, year, garden);
        Lime(page, year, garden);
        Shopping(terminal, page, year, garden);
        if (full)
        {
            page.Bullets("What shaped the dose of each pot", [.. year.Feeds.SelectMany(static f => f.Doses).GroupBy(static d => d.Pot).Select(g => $"{Name(garden, g.Key)}: {string.Join(' ', g.SelectMany(static d => d.Reasons).Distinct())}")]);
        }

        page.Bullets("Rules that shaped the plan", [.. year.Rules.Select(static r => $"{r.Rule} ({r.Strength}): {r.Statement} [{r.Source}]{(r.Differs is { } d ? $" Other advice: {d}" : string.Empty)}")]);
    }

    private static void Feeds(Terminal terminal, Page page, YearJson year, Garden garden)
    {
        if (year.Feeds.Count == 0)
        {
            return;
        }

        var names = garden.Pots.ToDictionary(static p => p.Id, static p => p.Name, StringComparer.Ordinal);
        var reasons = new List<string>();
        page.Title("Feeds, each round in walking order; g for one pot, reasons by number below");
        foreach (var round in year.Feeds.GroupBy(static f => (f.Date, f.Kind, f.FeedName)))
        {
            var why = round.SelectMany(static f => f.Reasons).Distinct().Select(reason => Number(reasons, reason)).Order().Select(Figures.Whole);
            Paragraph.Write(terminal.Output, $"{Figures.Date(round.Key.Date)} {Kind(round.Key.Kind)}: {SafeText.Of(round.Key.FeedName)} [{string.Join(' ', why)}]", terminal.Width, hanging: 6);
            YearRounds.Write(terminal, [.. round], names);
        }

        page.Title("Why");
        for (var i = 0; i < reasons.Count; i++)
        {
            page.Text($"{Figures.Whole(i + 1)}. {SafeText.Of(reasons[i])}", indent: 2);
        }

        page.Bullets("How to give it", [.. year.How.Where(static h => h.Value.Count > 0).Select(static h => $"{Kind(h.Key)}: {string.Join(' ', h.Value)}")]);
        page.Bullets("Passed over", [.. year.Feeds.SelectMany(static f => f.LeftOut).GroupBy(static l => l.Why).Select(g => $"{string.Join(", ", g.Select(l => names.GetValueOrDefault(l.Pot, l.Pot)).Distinct())}: {g.Key}")]);
    }

    private static int Number(List<string> reasons, string reason)
    {
        var at = reasons.IndexOf(reason);
        if (at < 0)
        {
            reasons.Add(reason);
            at = reasons.Count - 1;
        }

        return at + 1;
    }

    private static void Months(Terminal terminal, Page page, YearJson year)
    {
        var symbols = year.Months.SelectMany(static m => m.Grams).Where(static g => g.Value > 0).Select(static g => g.Key).Distinct().Take(6).ToList();
        if (symbols.Count == 0)
        {
            return;
        }

        page.Title("Nutrients a month over the whole garden, g on the label's basis");
        var table = new Table(["month", .. symbols.Select(static s => ">" + s)]);
        foreach (var month in year.Months)
        {
            table.Add([month.Month, .. symbols.Select(s => DoseText.Grams(month.Grams.GetValueOrDefault(s)))]);
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
    }

    private static void Supply(Terminal terminal, Page page, YearJson year, Garden garden)
    {
        if (year.Supply.Count == 0)
        {
            return;
        }

        page.Title("Nitrogen of each pot, g a litre of medium a season");
        var table = new Table("pot", ">plan", ">low", ">high", "against the published rates");
        foreach (var s in year.Supply)
        {
            table.Add(Name(garden, s.Pot), Figures.Fixed(s.Season, 2), Figures.Fixed(s.PublishedLow, 2), Figures.Fixed(s.PublishedHigh, 2), s.Words);
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
    }

    private static void Lime(Page page, YearJson year, Garden garden) =>
        page.Bullets("Lime debt", [.. year.LimeDebts.Where(static d => d.Corrections.Count > 0 || !d.IsComplete || d.Grams > 0).Select(d =>
            $"{Name(garden, d.Pot)}: {d.Words}{string.Concat(d.Corrections.Select(static c => $" {Figures.Date(c.Date)}: {c.Words}"))}")]);

    private static void Shopping(Terminal terminal, Page page, YearJson year, Garden garden)
    {
        if (year.Shopping.Count == 0)
        {
            return;
        }

        page.Title($"Shopping list, in {SafeText.Of(garden.Settings.Currency)}: {(year.ShoppingCost is { } cost ? Figures.Fixed(cost, 2) : "cost unknown, a price is missing")}");
        var table = new Table("material", ">need g", ">have g", ">buy g (bags)", ">cost", ">runs out");
        foreach (var s in year.Shopping)
        {
            table.Add(
                s.Material,
                DoseText.Grams(s.Needed),
                s.OnShelf is { } shelf ? DoseText.Grams(shelf) : "as wanted",
                DoseText.Grams(s.ToBuy) + (s.Bags is { } bags and > 0 ? $" ({Figures.Whole(bags)})" : string.Empty),
                Figures.Fixed(s.Cost, 2),
                s.RunsOut is { } day ? Figures.Date(day) : string.Empty);
        }

        table.Write(terminal.Output, terminal.Width);
    }

    internal static string Kind(string kind) => kind == "traceElements" ? "trace" : kind;

    private static string Name(Garden garden, string id) => SafeText.Of(garden.Pots.FirstOrDefault(p => p.Id == id)?.Name ?? id);
}
