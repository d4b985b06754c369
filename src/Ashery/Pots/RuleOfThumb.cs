using Ashery.Crops;
using Ashery.Quantities;

namespace Ashery.Pots;

/// <summary>
/// The custom "5 g a fortnight for a mature plant, a quarter of it for a young one" (common practice, no source), made to fit the
/// pot: it suits 10 L, so a smaller pot gets its share by volume, and a larger one no more than the custom says.
/// </summary>
public static class RuleOfThumb
{
    /// <summary>g of mixed feed for one pot each time.</summary>
    /// <param name="volume">Of the medium.</param>
    /// <param name="stage">Of the plant.</param>
    /// <param name="days">From one feed to the next.</param>
    /// <param name="rules">Where the custom's figures are.</param>
    public static double Grams(Volume volume, PlantStage stage, double days, RuleBook rules)
    {
        var rule = rules["rule-of-thumb"];
        var fraction = stage switch
        {
            PlantStage.Seedling or PlantStage.Liner or PlantStage.Young => rule["youngFraction"],
            PlantStage.Dormant => 0,
            _ => 1,
        };
        return Math.Min(rule["grams"], rule["gramsPerLitre"] * volume.Litres) * fraction * days / rule["days"];
    }

    /// <summary>Most g of mixed feed a pot may get each time, whatever the published rate would allow.</summary>
    public static double Cap(Volume volume, double days, RuleBook rules)
    {
        var rule = rules["rule-of-thumb"];
        return rule["gramsPerLitre"] * volume.Litres * days / rule["days"];
    }
}
