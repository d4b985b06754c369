using Ashery.Crops;

namespace Ashery.Pots;

/// <summary>Where a season's nitrogen lies against the published low, medium and high rates (they overlap; the words say so).</summary>
public static class RateBands
{
    /// <summary>Words for so many g N a litre of medium a season.</summary>
    public static string Of(double gramsPerLitre)
    {
        var rates = FeederRates.Default;
        var low = rates.SeasonNitrogen(FeederClass.Light);
        var medium = rates.SeasonNitrogen(FeederClass.Medium);
        var high = rates.SeasonNitrogen(FeederClass.Heavy);
        return gramsPerLitre switch
        {
            <= 0 => "none",
            _ when gramsPerLitre < low.Low => "below low",
            _ when gramsPerLitre < medium.Low => "low",
            _ when gramsPerLitre < high.Low => "medium",
            _ when gramsPerLitre <= medium.High => "medium to high",
            _ when gramsPerLitre <= high.High => "high",
            _ => "above high",
        };
    }
}
