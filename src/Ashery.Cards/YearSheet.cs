using System.Globalization;
using Ashery.Cards.Pictures;
using Ashery.Cards.Wording;
using Ashery.Gardens;
using Ashery.Nutrients;
using Ashery.Planning;

namespace Ashery.Cards;

/// <summary>The year on paper: the strip, a list to tick off month by month, what the pots get, and what to buy.</summary>
public static class YearSheet
{
    /// <summary>Says what the sheet shows: the year's feeds with boxes to tick, nitrogen and acidity of each pot, nutrient totals, the shopping list.</summary>
    public static CardDocument Describe(YearPlan plan, Garden garden, DateOnly printedOn, Paper? paper = null) => new()
    {
        Kind = garden.IsDemo ? "Year of feeds (demo garden)" : "Year of feeds",
        Title = garden.Name,
        Particulars = [new("From", Figures.Day(plan.From, year: true)), new("To", Figures.Day(plan.To, year: true)), new("Place", garden.Place.Name), new("Printed on", Figures.Day(printedOn, year: true))],
        First = CautionWords.First,
        Sections = [.. Sections(plan, garden)],
        Foot = [.. YearWords.Rules(plan)],
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
        Sections = [new("To buy", [YearWords.Shopping(plan, garden.Settings.Currency)])],
        RunningHead = $"{garden.Name}, shopping list",
        Date = printedOn,
        Paper = paper ?? Paper.A5,
    };

    private static IEnumerable<CardSection> Sections(YearPlan plan, Garden garden)
    {
        yield return new("The year", [new PictureBlock(YearStrip.Draw(plan, width: 720)), Seasons(plan)]);
        if (YearWords.ToSettle(plan) is { Count: > 0 } settle)
        {
            yield return new("To settle first", [new Listing(settle)], SectionWeight.Caution);
        }

        yield return new("Feeds", plan.Feeds.Count == 0 ? [new Paragraph("Nothing to give in this year.")] : [YearWords.Feeds(plan, garden)]);
        if (plan.Feeds.SelectMany(f => f.How).Distinct(StringComparer.Ordinal).ToList() is { Count: > 0 } how)
        {
            yield return new("How to feed", [new Listing(how)]);
        }

        if (plan.Supply.Count > 0)
        {
            yield return new("Nitrogen of each pot", [YearWords.Supply(plan, garden)]);
        }

        if (plan.LimeDebts.Count > 0)
        {
            yield return new("Acidity of each pot", [YearWords.Lime(plan, garden)]);
        }

        if (plan.Months.Count > 0)
        {
            yield return new("Nutrients a month", [Months(plan)]);
        }

        yield return new("Shopping list", [YearWords.Shopping(plan, garden.Settings.Currency)]);
    }

    private static TableBlock Seasons(YearPlan plan) => new(
        "Seasons", [new("Season"), new("From"), new("To")],
        [.. plan.Seasons.Select(s => (IReadOnlyList<string>)[YearStrip.SeasonName(s.Kind), Figures.Day(s.From, year: true), Figures.Day(s.To, year: true)])]);

    private static TableBlock Months(YearPlan plan)
    {
        Nutrient[] columns = [Nutrient.N, Nutrient.P, Nutrient.K, .. plan.Months.SelectMany(m => m.Grams.Grams.Where(g => g.Value > 0).Select(g => g.Key)).Distinct().Where(n => n > Nutrient.K).Order()];
        return new("All pots together, g on the label's basis", [new("Month"), .. columns.Select(n => new TableColumn(RecipeWords.Symbol(n), true))],
            [.. plan.Months.Select(m => (IReadOnlyList<string>)[new DateOnly(m.Year, m.Month, 1).ToString("MMM yyyy", CultureInfo.InvariantCulture), .. columns.Select(n => Amount(m.Grams.Grams.GetValueOrDefault(n)))])])
        {
            Total = ["Year", .. columns.Select(n => Amount(plan.Months.Sum(m => m.Grams.Grams.GetValueOrDefault(n))))],
        };
    }

    private static string Amount(double grams) => Figures.Short(grams, grams switch { >= 10 => 1, >= 1 => 2, _ => 3 });
}
