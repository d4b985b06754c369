using System.Globalization;
using Ashery.Crops;
using Ashery.Quantities;

namespace Ashery.Pots;

/// <summary>g N a litre of medium a season for a crop in a pot of some size.</summary>
/// <param name="GramsPerLitre">The rate aimed at.</param>
/// <param name="Published">The published range, of the crop or of its class.</param>
/// <param name="Words">How it was come by.</param>
public sealed record SeasonRate(double GramsPerLitre, CropRate Published, string Words)
{
    /// <summary>
    /// The place in the published range rises from the middle to the top as the pot gets small: between the two volumes of the
    /// rule, linear in the logarithm of the volume (McBride et al. 2014 on desert rose, two volumes; the shape between is ours).
    /// </summary>
    public static SeasonRate For(Crop crop, Volume volume, RuleBook rules)
    {
        var published = FeederRates.Default.SeasonNitrogen(crop);
        var place = Place(volume.Litres, rules["rate-by-volume"]);
        var range = published.Range;
        var rate = range.Low + (place * (range.High - range.Low));
        var whose = published.FromClass
            ? string.Create(CultureInfo.InvariantCulture, $"No rate is published for {crop.Name}; that of {Word(crop.Feeder)} feeders stands in")
            : string.Create(CultureInfo.InvariantCulture, $"Published for {crop.Name}");
        return new(rate, published, string.Create(CultureInfo.InvariantCulture, 
            $"{whose}: {range.Low:0.##} to {range.High:0.##} g N a litre of medium a season; {rate:0.##} for a pot of {volume.Litres:0.##} L."));
    }

    private static double Place(double litres, GrowingRule rule)
    {
        var large = rule["position"];
        if (!rule.IsOn || litres >= rule["largeLitres"])
        {
            return large;
        }

        var small = rule["positionSmall"];
        if (litres <= rule["smallLitres"])
        {
            return small;
        }

        var t = Math.Log(rule["largeLitres"] / litres) / Math.Log(rule["largeLitres"] / rule["smallLitres"]);
        return large + (t * (small - large));
    }

    private static string Word(FeederClass feeder) => feeder switch
    {
        FeederClass.Light => "light",
        FeederClass.Medium => "medium",
        _ => "heavy",
    };
}
