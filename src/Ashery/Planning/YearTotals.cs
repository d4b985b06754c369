using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Nutrients;
using Ashery.Pots;

namespace Ashery.Planning;

/// <summary>Sums over the plan: nutrients a month over the garden, nitrogen a month and a season for each pot.</summary>
internal static class YearTotals
{
    private static readonly Nutrient[] Nutrients = Enum.GetValues<Nutrient>();

    public static IReadOnlyList<MonthTotal> Months(Garden garden, IReadOnlyList<PlannedFeed> feeds, IReadOnlyDictionary<string, Feed> byId, DateOnly from, DateOnly to)
    {
        var counts = garden.Pots.ToDictionary(static p => p.Id, static p => p.Count, StringComparer.Ordinal);
        List<MonthTotal> months = [];
        for (var month = new DateOnly(from.Year, from.Month, 1); month <= to; month = month.AddMonths(1))
        {
            var grams = new double[Nutrients.Length];
            foreach (var feed in feeds)
            {
                if (feed.Date.Year != month.Year || feed.Date.Month != month.Month)
                {
                    continue;
                }

                var total = feed.Doses.Sum(d => d.Grams * counts[d.PotId]);
                var label = byId[feed.FeedId].Label;
                foreach (var nutrient in Nutrients)
                {
                    grams[(int)nutrient] += total * label[nutrient];
                }
            }

            months.Add(new(month.Year, month.Month, new(Nutrients.Where(n => grams[(int)n] > 0).ToDictionary(static n => n, n => grams[(int)n]))));
        }

        return months;
    }

    public static PotSupply Supply(Pot pot, Crop crop, IEnumerable<(DateOnly Day, double NitrogenGrams)> feeds, DateOnly from, DateOnly to)
    {
        var litres = pot.Volume.Litres;
        List<MonthNitrogen> months = [];
        for (var month = new DateOnly(from.Year, from.Month, 1); month <= to; month = month.AddMonths(1))
        {
            months.Add(new(month.Year, month.Month, 0));
        }

        var season = 0.0;
        foreach (var (day, grams) in feeds)
        {
            var i = ((day.Year - from.Year) * 12) + day.Month - from.Month;
            months[i] = months[i] with { GramsPerLitre = months[i].GramsPerLitre + (grams / litres) };
            season += grams / litres;
        }

        var rate = FeederRates.Default.SeasonNitrogen(crop);
        return new(pot.Id, months, season, rate.Range.Low, rate.Range.High, rate.FromClass, RateBands.Of(season), Words(season, rate));
    }

    private static string Words(double season, CropRate rate)
    {
        var range = FormattableString.Invariant($"{rate.Range.Low:0.##} to {rate.Range.High:0.##} g N a litre a season {(rate.FromClass ? "for its feeder class; none is published for the crop" : "are published")}");
        return season switch
        {
            <= 0 => $"The plan gives no nitrogen; {range}.",
            _ when season < rate.Range.Low => FormattableString.Invariant($"{season:0.##} is below the published range ({range}): cool months, rests, age and caps take their part. Watch growth before giving more."),
            _ when season > rate.Range.High => FormattableString.Invariant($"{season:0.##} is above the published range ({range}): lengthen the interval."),
            _ => FormattableString.Invariant($"{season:0.##} is within the published range ({range})."),
        };
    }
}
