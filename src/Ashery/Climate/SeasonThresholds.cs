using Ashery.Crops;

namespace Ashery.Climate;

/// <summary>From which figures on a month counts as hot, rainy or resting.</summary>
/// <param name="HotMeanMax">Mean daily maximum, °C, from which a month is hot.</param>
/// <param name="RainyMm">Rain, mm a month, from which a month is rainy.</param>
/// <param name="RestingMean">Mean temperature, °C, below which plants rest.</param>
public sealed record SeasonThresholds(double HotMeanMax, double RainyMm, double RestingMean)
{
    /// <summary>The figures of the rule <c>season-thresholds</c>.</summary>
    public static SeasonThresholds From(RuleBook rules)
    {
        var rule = rules["season-thresholds"];
        return new(rule["hotMeanMax"], rule["rainyMillimetres"], rule["restingMean"]);
    }
}
