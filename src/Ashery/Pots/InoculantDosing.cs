namespace Ashery.Pots;

/// <summary>A mycorrhizal inoculant: by volume, with a most; its own label goes first.</summary>
internal static class InoculantDosing
{
    public static Dose For(DoseRequest request)
    {
        var rule = request.Rules["inoculant-dose"];
        var stage = PlantAge.StageOn(request.Pot, request.On, request.Rules);
        var most = rule["largestGrams"];
        var wanted = stage == PlantStage.Dormant ? 0 : Math.Min(most, rule["gramsPerLitre"] * request.Pot.Volume.Litres);
        var measured = Measuring.Take(request, wanted, most, "steps");
        return new Dose
        {
            PotId = request.Pot.Id,
            FeedId = request.Feed.Id,
            Grams = measured.Grams,
            WantedGrams = wanted,
            Scoops = measured.Scoops,
            Method = measured.Method,
            NitrogenPerLitreMonth = 0,
            NitrogenPerLitreSeason = 0,
            RateBand = RateBands.Of(0),
            Reasons = [rule.Statement],
            Notes = measured.Notes,
        };
    }
}
