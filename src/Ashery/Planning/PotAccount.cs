using Ashery.Nutrients;
using Ashery.Pots;

namespace Ashery.Planning;

/// <summary>The plan seen from each pot: nitrogen by month and season, acidity, and doses that say so.</summary>
internal sealed record PotAccount(IReadOnlyList<PlannedFeed> Feeds, IReadOnlyList<PotSupply> Supply, IReadOnlyList<LimeDebt> LimeDebts)
{
    public static PotAccount Of(PlanContext context, PlanRun run)
    {
        var given = context.Pots.ToDictionary(static p => p.Pot.Id, static _ => new List<(DateOnly Day, double Nitrogen, double? Lime, bool Ammoniacal)>(), StringComparer.Ordinal);
        foreach (var feed in run.Feeds)
        {
            var made = run.FeedsById[feed.FeedId];
            var ammoniacal = made.Nitrogen.Ammonium + made.Nitrogen.Urea + made.Nitrogen.Organic > 0;
            foreach (var dose in feed.Doses)
            {
                given[dose.PotId].Add((feed.Date, dose.Grams * made.Label[Nutrient.N], dose.LimeGrams, ammoniacal));
            }
        }

        List<PotSupply> supply = [];
        List<LimeDebt> debts = [];
        foreach (var (pot, crop) in context.Pots)
        {
            var mine = given[pot.Id];
            supply.Add(YearTotals.Supply(pot, crop, mine.Select(static g => (g.Day, g.Nitrogen)), context.From, context.To));
            debts.Add(LimeDebtBook.Of(pot, crop, [.. mine.Select(static g => (g.Day, g.Lime, g.Ammoniacal))], context.To, context.Garden, context.Rules));
        }

        var byPot = supply.ToDictionary(static s => s.PotId, StringComparer.Ordinal);
        return new([.. run.Feeds.Select(f => f with { Doses = [.. f.Doses.Select(d => WithSupply(d, byPot[d.PotId], f.Date))] })], supply, debts);
    }

    /// <summary>A dose of the plan shows what the plan gives, not what the dose alone repeated would.</summary>
    private static Dose WithSupply(Dose dose, PotSupply supply, DateOnly day)
    {
        var month = supply.Months.First(m => m.Year == day.Year && m.Month == day.Month);
        return dose with { NitrogenPerLitreMonth = month.GramsPerLitre, NitrogenPerLitreSeason = supply.Season, RateBand = supply.Band };
    }
}
