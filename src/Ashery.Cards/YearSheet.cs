using System.Globalization;
using Ashery.Cards.Pictures;
using Ashery.Cards.Wording;
using Ashery.Climate;
using Ashery.Gardens;
using Ashery.Nutrients;
using Ashery.Planning;

namespace Ashery.Cards;

/// <summary>The year on paper: the strip, a list to tick off month by month, what the pots get, and what to buy.</summary>
public static class YearSheet
{
    /// <summary>Says what the sheet shows: the year's feeds with boxes to tick, nutrient totals and the shopping list.</summary>
    public static CardDocument Describe(YearPlan plan, Garden garden, DateOnly printedOn, Paper? paper = null) => new()
    {
        Kind = garden.IsDemo ? "Year of feeds (demo garden)" : "Year of feeds",
        Title = garden.Name,
        Particulars = [new("From", Figures.Day(plan.From, year: true)), new("To", Figures.Day(plan.To, year: true)), new("Place", garden.Place.Name), new("Printed on", Figures.Day(printedOn, year: true))],
        First = CautionWords.First,
        Sections = [.. Sections(plan, garden)],
        Foot = ["Early in the morning onto a moist medium; not onto dry, wilted, waterlogged or just repotted plants. Reasons for each feed stand in the year's page and file."],
        RunningHead = $"{garden.Name}, year of feeds from {Figures.Day(plan.From, year: true)}",
        Date = printedOn,
        Paper = paper ?? Paper.A4,
    };

    /// <summary>Says what the shopping list alone shows.</summary>
    public static CardDocument DescribeShopping(YearPlan plan, Garden garden, DateOnly printedOn, Paper? paper = null) => new()
    {
        Kind = "Shopping list",
        Title = garden.Name,
        Particulars = [new("For feeds from", Figures.Day(plan.From, year: true)), new("To", Figures.Day(plan.To, year: true)), new("Printed on", Figures.Day(printedOn, year: true))],
        Sections = [new("To buy", [Shopping(plan, garden.Settings.Currency)])],
        RunningHead = $"{garden.Name}, shopping list",
        Date = printedOn,
        Paper = paper ?? Paper.A5,
    };

    private static IEnumerable<CardSection> Sections(YearPlan plan, Garden garden)
    {
        yield return new("The year", [new PictureBlock(YearStrip.Draw(plan, width: 720)), Seasons(plan)]);
        if (plan.Problems.Count > 0)
        {
            yield return new("To settle first", [new Listing([.. plan.Problems.Select(p => $"{p.Message} {p.WayOut}".Trim())])], SectionWeight.Caution);
        }

        if (plan.Feeds.Count == 0)
        {
            yield return new("Feeds", [new Paragraph("Nothing to give in this year.")]);
        }

        else
        {
            yield return new("Feeds", [Feeds(plan, garden)]);
        }

        if (plan.Months.Count > 0)
        {
            yield return new("Nutrients a month", [Months(plan)]);
        }

        yield return new("Shopping list", [Shopping(plan, garden.Settings.Currency)]);
    }

    private static TableBlock Seasons(YearPlan plan) => new(
        "Seasons", [new("Season"), new("From"), new("To")],
        [.. plan.Seasons.Select(s => (IReadOnlyList<string>)[YearStrip.SeasonName(s.Kind), Figures.Day(s.From, year: true), Figures.Day(s.To, year: true)])]);

    /// <summary>One table for the year, a heading for each month, so that columns stand under each other all the way down.</summary>
    private static TableBlock Feeds(YearPlan plan, Garden garden)
    {
        var names = garden.Pots.ToDictionary(p => p.Id, p => p.Name, StringComparer.Ordinal);
        var rows = new List<IReadOnlyList<string>>();
        foreach (var month in plan.Feeds.GroupBy(f => (f.Date.Year, f.Date.Month)).OrderBy(g => g.Key))
        {
            rows.Add([month.First().Date.ToString("MMMM yyyy", CultureInfo.InvariantCulture)]);
            rows.AddRange(month.OrderBy(f => f.Date).Select(f => (IReadOnlyList<string>)
                ["☐", f.Date.ToString("ddd d", CultureInfo.InvariantCulture), FeedMarks.Name(f.Kind), f.FeedName, Figures.Grams(f.GramsPerPot), string.Join(", ", f.Pots.Select(p => names.GetValueOrDefault(p, p)))]));
        }

        return new("Feeds", [new("Done"), new("Day", true), new("Kind"), new("Feed"), new("A pot", true), new("Pots")], rows);
    }

    private static TableBlock Months(YearPlan plan)
    {
        Nutrient[] columns = [Nutrient.N, Nutrient.P, Nutrient.K, .. plan.Months.SelectMany(m => m.Grams.Grams.Where(g => g.Value > 0).Select(g => g.Key)).Distinct().Where(n => n > Nutrient.K).Order()];
        return new("All pots together, g on the label's basis", [new("Month"), .. columns.Select(n => new TableColumn(RecipeWords.Symbol(n), true))],
            [.. plan.Months.Select(m => (IReadOnlyList<string>)[new DateOnly(m.Year, m.Month, 1).ToString("MMM yyyy", CultureInfo.InvariantCulture), .. columns.Select(n => Amount(m.Grams.Grams.GetValueOrDefault(n)))])])
        {
            Total = ["Year", .. columns.Select(n => Amount(plan.Months.Sum(m => m.Grams.Grams.GetValueOrDefault(n))))],
        };
    }

    private static CardBlock Shopping(YearPlan plan, string currency)
    {
        if (plan.Shopping.Count == 0)
        {
            return new Paragraph("Nothing to buy.");
        }

        var known = plan.Shopping.Where(s => s.ToBuyGrams > 0).ToList();
        var complete = known.All(s => s.Cost is not null);
        return new TableBlock("What the year needs", [new("Bought"), new("Material"), new("Needed", true), new("On the shelf", true), new("To buy", true), new(currency, true)],
            [.. plan.Shopping.Select(s => (IReadOnlyList<string>)
                [s.ToBuyGrams > 0 ? "☐" : "", s.Name, Figures.Stock(s.NeededGrams), Figures.Stock(s.OnShelfGrams), s.ToBuyGrams > 0 ? Figures.Stock(s.ToBuyGrams) : "nothing", s.ToBuyGrams <= 0 ? "" : s.Cost is { } c ? Figures.Number(c, 2) : "no price"])])
        {
            Total = ["", "Total", "", "", Figures.Stock(known.Sum(s => s.ToBuyGrams)), complete ? Figures.Number(known.Sum(s => s.Cost!.Value), 2) : "not known"],
        };
    }

    private static string Amount(double grams) => Figures.Short(grams, grams < 1 ? 3 : 1);
}
