using Ashery.Crops;

namespace Ashery.Pots;

/// <summary>
/// Feed follows temperature: full dose above 20 °C daily mean, half from 15, a quarter from 10, none below the crop's base
/// temperature. For a crop whose optimum begins lower, the steps move down by as much as its optimum lies below the full step.
/// </summary>
public static class GrowthFactor
{
    public static DoseFactor At(double meanCelsius, Crop crop, RuleBook rules)
    {
        var rule = rules["feeding-follows-temperature"];
        if (!rule.IsOn)
        {
            return new(rule.Id, 1, rule.Statement);
        }

        var full = Math.Min(rule["fullAbove"], crop.OptimumCelsius?.Low ?? rule["fullAbove"]);
        var shift = rule["fullAbove"] - full;
        var value = meanCelsius switch
        {
            _ when crop.BaseCelsius is { } b && meanCelsius < b => 0,
            _ when meanCelsius >= full => 1,
            _ when meanCelsius >= rule["halfAbove"] - shift => rule["half"],
            _ when meanCelsius >= rule["quarterAbove"] - shift => rule["quarter"],
            _ => 0,
        };
        return new(rule.Id, value, FormattableString.Invariant($"A daily mean of {meanCelsius:0.#} °C: {Words(value)} for {crop.Name}."));
    }

    private static string Words(double value) => value switch
    {
        0 => "no feed",
        1 => "the full dose",
        _ => FormattableString.Invariant($"{value:0.##} of the dose"),
    };
}
