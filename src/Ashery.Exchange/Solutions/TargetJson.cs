using System.Text.Json.Serialization;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Solutions;

/// <summary>The answer of <c>ashery solution --json</c>: recipes for a feed solution in a water. A litre is taken as a kilogram.</summary>
/// <param name="Water">The water it is made with.</param>
/// <param name="Litres">L to be made.</param>
/// <param name="Celsius">Temperature, °C.</param>
/// <param name="Air"><c>closed</c> or <c>open</c>.</param>
/// <param name="Target">What was wished.</param>
/// <param name="Proved">True when no other materials and amounts come nearer to the wished amounts than the first recipe, beside the water and what its pH takes, at its strength.</param>
/// <param name="Bound">Error below which no amounts of these materials can come, however many are taken; null without a certificate.</param>
/// <param name="OutOfReach">Why the target cannot be met; null when it is met.</param>
/// <param name="WaterExceeds">What the water alone holds too much of.</param>
/// <param name="Recipes">Best first.</param>
/// <param name="Assumed">What was assumed.</param>
/// <param name="Problems">Warnings and notes.</param>
public sealed record TargetJson(
    string Water,
    double Litres,
    double Celsius,
    string Air,
    TargetWishedJson Target,
    bool Proved,
    double? Bound,
    ProblemJson? OutOfReach,
    IReadOnlyList<TargetExcessJson> WaterExceeds,
    IReadOnlyList<TargetRecipeJson> Recipes,
    IReadOnlyList<string> Assumed,
    IReadOnlyList<ProblemJson> Problems);

/// <summary>What was wished.</summary>
/// <param name="Wishes">As written.</param>
/// <param name="Ec">mS/cm at 25 °C; null for none.</param>
/// <param name="PH">pH; null for none.</param>
public sealed record TargetWishedJson(IReadOnlyList<string> Wishes, double? Ec, [property: JsonPropertyName("pH")] double? PH);

/// <summary>The water alone passes a wish.</summary>
/// <param name="Item">Of what.</param>
/// <param name="Water">mg/L the water holds.</param>
/// <param name="Most">mg/L wished or allowed.</param>
/// <param name="Replace">Part of the water, 0 to 1, to be replaced by rain or demineralised water.</param>
public sealed record TargetExcessJson(string Item, double Water, double Most, double Replace);

/// <summary>One recipe.</summary>
/// <param name="Error">Mean relative deviation of the wished amounts.</param>
/// <param name="LargestDeviation">Largest relative deviation of a wished amount.</param>
/// <param name="Strength">What the wished amounts were multiplied by to have the EC; 1 without one.</param>
/// <param name="EcAt25C">mS/cm at 25 °C, of the full solution.</param>
/// <param name="PH">pH of the full solution, in the air asked for.</param>
/// <param name="Tuned">False when a wished EC or pH was not met within 0.01.</param>
/// <param name="CostPerLitre">Price of a litre, what brings the pH not counted; null when a price is unknown.</param>
/// <param name="Parts">Materials, most first; what brings the pH last.</param>
/// <param name="Nutrients">Every nutrient there is or was wished.</param>
/// <param name="Closed">Just made.</param>
/// <param name="Open">After standing open.</param>
/// <param name="Precipitates">Solids that settle within hours, mmol a litre.</param>
/// <param name="MayComeOut">Slow solids past their index, which may stay away for days.</param>
/// <param name="Cautions">What to mind while handling it.</param>
public sealed record TargetRecipeJson(
    double Error,
    double LargestDeviation,
    double Strength,
    double EcAt25C,
    [property: JsonPropertyName("pH")] double PH,
    bool Tuned,
    double? CostPerLitre,
    IReadOnlyList<TargetPartJson> Parts,
    IReadOnlyList<TargetNutrientJson> Nutrients,
    CanStateJson Closed,
    CanStateJson Open,
    IReadOnlyDictionary<string, double> Precipitates,
    IReadOnlyList<string> MayComeOut,
    IReadOnlyList<string> Cautions);

/// <summary>One material of a recipe.</summary>
/// <param name="Id">Key of the catalogue or bag, or the formula.</param>
/// <param name="Name">As a grower says it.</param>
/// <param name="GramsPerLitre">g a litre of water.</param>
/// <param name="Grams">g for the litres asked.</param>
/// <param name="Millilitres">mL for the litres asked, of a bottle; null for what is weighed.</param>
/// <param name="BringsPH">True for what brings the pH.</param>
/// <param name="Steps">Whole steps of the scale; null in free amounts.</param>
public sealed record TargetPartJson(string Id, string Name, double GramsPerLitre, double Grams, double? Millilitres, [property: JsonPropertyName("bringsPH")] bool BringsPH, int? Steps);

/// <summary>One nutrient, mg/L as the element.</summary>
/// <param name="Item">Symbol, or the form of nitrogen.</param>
/// <param name="Low">At least, at the recipe's strength; null for no limit.</param>
/// <param name="High">At most; null for no limit. Equal to low where a figure is aimed at.</param>
/// <param name="Water">What the water brings.</param>
/// <param name="ByPart">What each part brings, in the order of the parts.</param>
/// <param name="Total">All together.</param>
/// <param name="Deviation">How far outside, as a part of the nearer end; 0 within, negative below; null above a limit of nothing.</param>
public sealed record TargetNutrientJson(string Item, double? Low, double? High, double Water, IReadOnlyList<double> ByPart, double Total, double? Deviation);
