using System.Globalization;
using Ashery.Cards.Pictures;
using Ashery.Cards.Wording;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Nutrients;

namespace Ashery.Cards;

/// <summary>A season on paper: what was given and what it cost, done against planned, readings against their bands, flowers, losses.</summary>
public static class SeasonSheet
{
    /// <summary>Says what the sheet shows.</summary>
    public static CardDocument Describe(SeasonReport report, Garden garden, DateOnly printedOn, Paper? paper = null) => new()
    {
        Kind = garden.IsDemo ? "Season report (demo garden)" : "Season report",
        Title = garden.Name,
        Particulars = [new("From", Figures.Day(report.From, year: true)), new("To", Figures.Day(report.To, year: true)), new("Printed on", Figures.Day(printedOn, year: true))],
        Sections = [.. Sections(report, garden)],
        Foot = ["What was given is as it was written down. Costs follow from the prices of the bags; bands are those published for each crop."],
        RunningHead = $"{garden.Name}, season report from {Figures.Day(report.From, year: true)}",
        Date = printedOn,
        Paper = paper ?? Paper.A4,
    };

    /// <summary>Money as the sheet and the page say it.</summary>
    public static string Money(double? amount, string currency) => amount is { } a ? $"{Figures.Number(a, 2)} {currency}" : "not known";

    /// <summary>A panel a kind of reading, with the feeds of the season; null when nothing was read twice.</summary>
    public static ReadingsView? Chart(SeasonReport report, PotSeason pot, IEnumerable<Reading> flowers)
    {
        var points = flowers.ToList();
        return points.Count < 2 ? null : new(pot.Name, report.From, report.To, [new(new(MeasuredKind.Flowers, points), null)]);
    }

    private static IEnumerable<CardSection> Sections(SeasonReport report, Garden garden)
    {
        var currency = garden.Settings.Currency;
        var t = report.Tally;
        List<Fact> facts = [new("Planned feeds", t.Planned == 0 ? "none" : string.Create(CultureInfo.InvariantCulture, $"{t.Done} of {t.Planned} given, {t.Skipped} left out, {t.Open} open, {t.ToCome} to come"), "each pot of a feed counts once")];
        facts.Add(new("Cost of what was given", Money(report.Cost, currency), report.WithoutPrice is { Count: > 0 } without ? $"without {string.Join(", ", without)}: no price" : null));
        facts.Add(new("Losses", report.Losses.Count == 0 ? "none" : string.Join("; ", report.Losses.Select(static l => $"{l.PotName} ({Figures.Day(l.Day)})"))));
        facts.Add(new("Photographs", Figures.Short(report.Photographs, 0)));
        yield return new("The season", [new FactList(facts)]);
        if (report.Feeds.Count > 0)
        {
            yield return new("Given in all", [Feeds(report.Feeds, currency)]);
        }

        foreach (var pot in report.Pots.Where(static p => !p.IsEmpty))
        {
            yield return new(Title(pot), [.. Blocks(report, garden, pot)]);
        }
    }

    private static string Title(PotSeason pot) => pot.Count > 1 ? string.Create(CultureInfo.InvariantCulture, $"{pot.Name} ({pot.Count} of them)") : pot.Name;

    private static IEnumerable<CardBlock> Blocks(SeasonReport report, Garden garden, PotSeason pot)
    {
        var t = pot.Tally;
        List<Fact> facts = [];
        if (pot.Crop.Length > 0)
        {
            facts.Add(new("Plant", pot.Crop));
        }

        if (t.Planned > 0)
        {
            facts.Add(new("Planned feeds", string.Create(CultureInfo.InvariantCulture, $"{t.Done} of {t.Planned} given, {t.Skipped} left out, {t.Open} open")));
        }

        if (pot.Photographs.Count > 0)
        {
            facts.Add(new("Photographs", Figures.Short(pot.Photographs.Count, 0)));
        }

        if (facts.Count > 0)
        {
            yield return new FactList(facts);
        }

        if (pot.Feeds.Count > 0)
        {
            yield return Feeds(pot.Feeds, garden.Settings.Currency);
        }

        if (pot.Readings.Count > 0)
        {
            yield return Readings(pot);
        }

        if (Chart(report, pot, pot.Flowers) is { } flowers)
        {
            yield return new PictureBlock(ReadingsChart.Draw(flowers, 560, "flowers-" + pot.PotId), 0.8);
        }

        if (pot.Events.Count + pot.Sightings.Count > 0)
        {
            yield return new Listing([.. pot.Events.Concat(pot.Sightings).OrderBy(static e => e.Day)
                .Select(e => $"{Figures.Day(e.Day)}: {DiaryWords.Of(e, garden, pot.PotId)}{(e.Note.Length > 0 ? $" ({e.Note})" : "")}")]);
        }
    }

    private static TableBlock Feeds(IReadOnlyList<FeedTotal> feeds, string currency)
    {
        Nutrient[] nutrients = [Nutrient.N, Nutrient.P, Nutrient.K];
        return new("Given", [new("Feed"), new("Times", true), new("Grams", true), .. nutrients.Select(static n => new TableColumn(RecipeWords.Symbol(n) + ", g", true)), new($"Cost, {currency}", true)],
            [.. feeds.Select(f => (IReadOnlyList<string>)[f.Name, Figures.Short(f.Times, 0), Amount(f.Grams), .. nutrients.Select(n => Amount(f.Nutrients.GetValueOrDefault(n))), f.Cost is { } c ? Figures.Number(c, 2) : "not known"])]);
    }

    private static TableBlock Readings(PotSeason pot) => new(
        "Read", [new("Figure"), new("Times", true), new("Lowest", true), new("Mean", true), new("Highest", true), new("Band"), new("Outside", true)],
        [.. pot.Readings.Select(static r => (IReadOnlyList<string>)[
            MeasuredWords.Name(r.What) + (MeasuredWords.Unit(r.What) is { Length: > 0 } unit ? $", {unit}" : ""),
            Figures.Short(r.Count, 0), Figures.Short(r.Least), Figures.Short(r.Mean), Figures.Short(r.Most),
            r.Band is { } band ? $"{Figures.Short(band.Low, 1)} to {Figures.Short(band.High, 1)}" : r.What <= MeasuredKind.ExtractPh ? "none published" : "",
            r.Band is null ? "" : Figures.Short(r.Outside, 0)])]);

    private static string Amount(double grams) => Figures.Short(grams, grams switch { >= 100 => 0, >= 10 => 1, >= 1 => 2, _ => 3 });
}
