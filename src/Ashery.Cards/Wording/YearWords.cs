using System.Globalization;
using Ashery.Cards.Pictures;
using Ashery.Gardens;
using Ashery.Planning;
using Ashery.Pots;
using Ashery.Problems;
using Ashery.Sources;

namespace Ashery.Cards.Wording;

/// <summary>The tables and lists of a year sheet.</summary>
internal static class YearWords
{
    /// <summary>
    /// One table for the year with a heading for each month, so that columns stand under each other all the way down; one row a feed
    /// and day, its doses in walking order.
    /// </summary>
    public static TableBlock Feeds(YearPlan plan, Garden garden)
    {
        var names = Names(garden);
        var rows = new List<IReadOnlyList<string>>();
        foreach (var month in plan.Feeds.GroupBy(f => (f.Date.Year, f.Date.Month)).OrderBy(g => g.Key))
        {
            rows.Add([month.First().Date.ToString("MMMM yyyy", CultureInfo.InvariantCulture)]);
            foreach (var feed in month.GroupBy(f => (f.Date, f.Kind, f.FeedName)).OrderBy(g => g.Key.Date).ThenBy(g => g.Key.Kind))
            {
                rows.Add(["☐", feed.Key.Date.ToString("ddd d", CultureInfo.InvariantCulture), $"{feed.Key.FeedName} ({FeedMarks.Name(feed.Key.Kind).ToLowerInvariant()})", Doses(feed, names, garden.Settings)]);
            }
        }

        return new("Feeds", [new("Done"), new("Day", true), new("Feed"), new("Dose a pot, in walking order")], rows);
    }

    /// <summary>What wants a decision: problems, empty stretches with what would be safe, bags that run out.</summary>
    public static IReadOnlyList<string> ToSettle(YearPlan plan) =>
    [
        .. plan.Problems.Select(p => $"{p.Message} {p.WayOut}".Trim()),
        .. plan.Offers.Select(o => $"{Figures.Day(o.From)} to {Figures.Day(o.To)}: {o.Words}"),
        .. plan.Replacements.Where(r => !plan.Problems.Any(p => Says(p, r.Words))).Select(r => $"From {Figures.Day(r.On)}: {r.Words}"),
    ];

    /// <summary>Does a problem say the same already?</summary>
    private static bool Says(Problem problem, string words) => $"{problem.Message} {problem.WayOut}".Contains(words, StringComparison.Ordinal);

    public static TableBlock Supply(YearPlan plan, Garden garden)
    {
        var names = Names(garden);
        return new("g N a litre of medium in the season", [new("Pot"), new("Given", true), new("Published", true), new("Rate")],
            [.. plan.Supply.Select(s => (IReadOnlyList<string>)
                [names.GetValueOrDefault(s.PotId, s.PotId), Figures.Number(s.Season, 2), $"{Figures.Short(s.PublishedLow)} to {Figures.Short(s.PublishedHigh)}{(s.FromClass ? " *" : "")}", s.Band])])
        {
            Note = plan.Supply.Any(s => s.FromClass) ? "* No rate is published for this crop; the figure is that of its feeder class." : null,
        };
    }

    public static TableBlock Lime(YearPlan plan, Garden garden)
    {
        var names = Names(garden);
        return new("What the year's feeds leave, as g CaCO₃ a litre of medium; more than zero is acid", [new("Pot"), new("g a litre", true), new("Correct")],
            [.. plan.LimeDebts.Select(d => (IReadOnlyList<string>)
            [
                names.GetValueOrDefault(d.PotId, d.PotId),
                Figures.Number(d.GramsPerLitre, 2) + (d.IsComplete ? "" : " *"),
                d.Corrections.Count == 0 ? "-" : string.Join("; ", d.Corrections.Select(c => $"{Figures.Day(c.Date)}: {Figures.Grams(Math.Round(c.Grams, 1))} {c.MaterialName}")),
            ])])
        {
            Note = plan.LimeDebts.Any(d => !d.IsComplete) ? "Correct only after a pH test. * A feed has no published figure; the debt may be larger or smaller." : "Correct only after a pH test.",
        };
    }

    public static CardBlock Shopping(YearPlan plan, string currency)
    {
        if (plan.Shopping.Count == 0)
        {
            return new Paragraph("Nothing to buy.");
        }

        return new TableBlock("What the year needs", [new("Bought"), new("Material"), new("Needed", true), new("On the shelf", true), new("Runs out", true), new("To buy", true), new(currency, true)],
            [.. plan.Shopping.Select(s => (IReadOnlyList<string>)
            [
                s.ToBuyGrams > 0 ? "☐" : "",
                s.Name,
                Figures.Stock(s.NeededGrams),
                double.IsFinite(s.OnShelfGrams) ? Figures.Stock(s.OnShelfGrams) : "enough",
                s.RunsOut is { } day ? day.ToString("d MMM", CultureInfo.InvariantCulture) : "",
                s.ToBuyGrams <= 0 ? "nothing" : s.Bags is { } bags ? FormattableString.Invariant($"{Figures.Stock(s.ToBuyGrams)}, {bags} {(bags == 1 ? "bag" : "bags")}") : Figures.Stock(s.ToBuyGrams),
                s.ToBuyGrams <= 0 ? "" : s.Cost is { } c ? Figures.Number(c, 2) : "no price",
            ])])
        {
            Total = ["", "Total", "", "", "", "", plan.ShoppingCost is { } cost ? Figures.Number(cost, 2) : "not known"],
        };
    }

    /// <summary>The rules that shaped the year, who says so, and what published advice says otherwise.</summary>
    public static IEnumerable<string> Rules(YearPlan plan) => plan.Rules.Select(r =>
        $"{r.Statement} ({Cite(r.SourceId)}){(string.IsNullOrWhiteSpace(r.Differs) ? "" : " Otherwise: " + r.Differs)}");

    /// <summary>Amount before pots, equal amounts together; what is dissolved to the same strength says the strength once.</summary>
    private static string Doses(IEnumerable<PlannedFeed> feeds, Dictionary<string, string> names, GardenSettings settings)
    {
        var parts = feeds.Select(f => (
            Strength: f.Doses.Count > 0 && f.Doses[0] is { } d && (d.Predilution is not null || d.Method == DoseMethod.Spray) ? DoseWords.Wet(d, settings).Strength : "",
            Amount: Amount(f, settings),
            Pots: string.Join(", ", f.Pots.Select(p => names.GetValueOrDefault(p, p)))));
        return string.Join(". ", parts.GroupBy(p => p.Strength).Select(g =>
            (g.Key.Length > 0 ? Capital(g.Key) + " of water: " : "")
            + string.Join("; ", g.GroupBy(p => p.Amount).Select(a => $"{a.Key} {string.Join(", ", a.Select(p => p.Pots))}"))));
    }

    private static string Amount(PlannedFeed feed, GardenSettings settings) => feed.Doses.Count > 0 ? feed.Doses[0] switch
    {
        { Predilution: not null } or { Method: DoseMethod.Spray } => DoseWords.Wet(feed.Doses[0], settings).Give,
        { Scoops: { } n } => $"{Figures.Grams(feed.GramsPerPot)}, {Figures.Short(n)} {(n == 1 ? "scoop" : "scoops")},",
        _ => Figures.Grams(feed.GramsPerPot),
    } : Figures.Grams(feed.GramsPerPot);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Cite(string id) => SourceIndex.Default.Find(id) is { } source ? source.Year is { } year ? FormattableString.Invariant($"{source.Author} {year}") : source.Author : id;

    private static Dictionary<string, string> Names(Garden garden) => garden.Pots.ToDictionary(p => p.Id, p => p.Name, StringComparer.Ordinal);
}
