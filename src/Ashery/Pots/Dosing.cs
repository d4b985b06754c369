using Ashery.Crops;
using Ashery.Nutrients;

namespace Ashery.Pots;

/// <summary>How much of a feed a pot gets: published nitrogen a litre of medium a season, times volume, over the feeds of the season.</summary>
public static class Dosing
{
    public static Dose For(DoseRequest request)
    {
        var pot = request.Pot;
        var rate = FeederRates.Default.SeasonNitrogen(request.Crop);
        var season = (rate.Range.Low + rate.Range.High) / 2;
        var stage = StageFraction(pot.Stage);
        var n = request.Feed.Label[Nutrient.N];
        var wanted = n > 0 ? season * pot.Volume.Litres * stage / Math.Max(1, request.FeedsInSeason) / n : 0;
        var grams = Math.Floor((wanted / request.ScaleStep) + 0.5) * request.ScaleStep;
        var perLitre = grams * n / pot.Volume.Litres * request.FeedsInSeason;
        return new Dose
        {
            PotId = pot.Id,
            FeedId = request.Feed.Id,
            Grams = grams,
            WantedGrams = wanted,
            NitrogenPerLitreSeason = perLitre,
            NitrogenPerLitreMonth = perLitre / Math.Max(1, request.SeasonMonths),
            RateBand = perLitre < rate.Range.Low ? "below low" : perLitre > rate.Range.High ? "above high" : "within",
            Reasons = [FormattableString.Invariant($"{season:0.##} g N a litre of medium a season over {request.FeedsInSeason} feeds, times {stage:0.##} for the stage of the plant.")],
        };
    }

    private static double StageFraction(PlantStage stage) => stage switch
    {
        PlantStage.Seedling => 0.25,
        PlantStage.Liner => 0.5,
        PlantStage.Young => 0.75,
        PlantStage.RootBound => 0.6,
        PlantStage.Dormant => 0,
        _ => 1,
    };
}
