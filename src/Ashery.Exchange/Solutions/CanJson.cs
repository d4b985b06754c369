using System.Text.Json.Serialization;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Solutions;

/// <summary>The answer of <c>ashery dissolve --json</c>: what a feed becomes in a water. A litre is taken as a kilogram.</summary>
/// <param name="Water">The water it is dissolved in.</param>
/// <param name="Celsius">Temperature of the can, °C.</param>
/// <param name="Air"><c>closed</c>: nothing leaves; <c>open</c>: in balance with the carbon dioxide of the air.</param>
/// <param name="Added">What was added, grams a kilogram of added water.</param>
/// <param name="PH">In the air asked for, everything dissolved and nothing settled.</param>
/// <param name="EcAt25C">Conductivity as a meter that corrects to 25 °C shows it, mS/cm.</param>
/// <param name="Ec">Conductivity at the temperature of the can, mS/cm.</param>
/// <param name="IonicStrength">mol/kg of all water, that of crystals included.</param>
/// <param name="OsmoticPotential">MPa, negative.</param>
/// <param name="Alkalinity">Alkalinity left, mg/L as CaCO3; negative for an acid solution.</param>
/// <param name="FreeAmmonia">Free ammonia, mg/L of N.</param>
/// <param name="FreeAmmoniaFraction">The part of ammonium and ammonia together that is free ammonia, 0 to 1.</param>
/// <param name="BeyondGoodRange">True when the ionic strength is above 0.5 mol/kg: every figure is an order of magnitude then.</param>
/// <param name="Closed">Just made, nothing lost to the air.</param>
/// <param name="Open">After standing open.</param>
/// <param name="Settled">The clear part once the quick solids have settled.</param>
/// <param name="Nitrogen">Nitrogen by form, mg/L of N.</param>
/// <param name="Nutrients">Nutrients in solution, those of the water included.</param>
/// <param name="Saturation">Saturation index of each solid whose parts are there: above 0 it may come out.</param>
/// <param name="Precipitates">Solids that settle within hours, mmol a kilogram of added water, at equilibrium.</param>
/// <param name="PrecipitateGrams">The same in grams a kilogram of added water.</param>
/// <param name="MayComeOut">Slow solids past their index, which may stay away for days: the most of each that may come, mmol a kilogram of added water.</param>
/// <param name="Salts">How near salts are to crystallising: index above 0 and they do.</param>
/// <param name="Limits">Each material against its solubility alone.</param>
/// <param name="Order">In which order to dissolve.</param>
/// <param name="OrderBasis">Why in that order.</param>
/// <param name="Cold">How cold it may get.</param>
/// <param name="Warming">°C by which dissolving warms the water, negative when it cools; null when no heat is known.</param>
/// <param name="WaterMass">kg of water in the can a kilogram of added water: crystals and bottles bring some.</param>
/// <param name="Species">Every ion, molecule and pair.</param>
/// <param name="Certificate">How well the balances close.</param>
/// <param name="Cautions">What to mind while handling it.</param>
/// <param name="Assumed">What was assumed.</param>
/// <param name="Problems">Warnings and notes.</param>
public sealed record CanJson(
    string Water,
    double Celsius,
    string Air,
    IReadOnlyList<CanAddedJson> Added,
    [property: JsonPropertyName("pH")] double PH,
    double EcAt25C,
    double Ec,
    double IonicStrength,
    double OsmoticPotential,
    double Alkalinity,
    double FreeAmmonia,
    double FreeAmmoniaFraction,
    bool BeyondGoodRange,
    CanStateJson Closed,
    CanStateJson Open,
    CanStateJson Settled,
    CanNitrogenJson Nitrogen,
    IReadOnlyList<CanNutrientJson> Nutrients,
    IReadOnlyDictionary<string, double> Saturation,
    IReadOnlyDictionary<string, double> Precipitates,
    IReadOnlyDictionary<string, double> PrecipitateGrams,
    IReadOnlyDictionary<string, double> MayComeOut,
    IReadOnlyList<CanSaltJson> Salts,
    IReadOnlyList<CanLimitJson> Limits,
    IReadOnlyList<CanStepJson> Order,
    string OrderBasis,
    CanColdJson Cold,
    double? Warming,
    double WaterMass,
    IReadOnlyList<CanSpeciesJson> Species,
    CanCertificateJson Certificate,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Assumed,
    IReadOnlyList<ProblemJson> Problems);

/// <summary>What was added.</summary>
/// <param name="Id">Key of the catalogue or bag, or the formula.</param>
/// <param name="Name">As a grower says it.</param>
/// <param name="Grams">g a kilogram of added water.</param>
public sealed record CanAddedJson(string Id, string Name, double Grams);

/// <summary>A solution in a word.</summary>
/// <param name="PH">pH.</param>
/// <param name="EcAt25C">mS/cm at 25 °C.</param>
/// <param name="Ec">mS/cm at the temperature of the can.</param>
/// <param name="Alkalinity">mg/L as CaCO3.</param>
/// <param name="FreeAmmonia">mg/L of N.</param>
public sealed record CanStateJson([property: JsonPropertyName("pH")] double PH, double EcAt25C, double Ec, double Alkalinity, double FreeAmmonia);

/// <summary>Nitrogen by form, mg/L of N.</summary>
/// <param name="Nitrate">As nitrate.</param>
/// <param name="Ammonium">As ammonium, free ammonia included.</param>
/// <param name="Urea">As urea.</param>
public sealed record CanNitrogenJson(double Nitrate, double Ammonium, double Urea);

/// <summary>A nutrient in solution.</summary>
/// <param name="Nutrient">Symbol of the element.</param>
/// <param name="MgPerLitre">mg/L as the element.</param>
/// <param name="FromWater">mg/L of it that the water brought.</param>
/// <param name="OnLabelBasis">mg/L as P2O5 or K2O; the same as the element for all others.</param>
public sealed record CanNutrientJson(string Nutrient, double MgPerLitre, double FromWater, double OnLabelBasis);

/// <summary>A salt near crystallising.</summary>
/// <param name="Formula">Without crystal water.</param>
/// <param name="Name">As a grower says it.</param>
/// <param name="Index">log10 of its ion activity product over that of its saturated solution.</param>
public sealed record CanSaltJson(string Formula, string Name, double Index);

/// <summary>A material against its solubility alone.</summary>
/// <param name="Id">Key of the material.</param>
/// <param name="Limit">g that dissolve in a kilogram of added water; null where not known or without limit.</param>
/// <param name="Undissolved">g a kilogram of added water left on the bottom.</param>
public sealed record CanLimitJson(string Id, double? Limit, double Undissolved);

/// <summary>A step of dissolving.</summary>
/// <param name="Id">Key of the material.</param>
/// <param name="Reason">Why here.</param>
/// <param name="Nearest">The solid nearest to coming out once it is in; null when none can form.</param>
/// <param name="Index">Its saturation index; null when none can form.</param>
public sealed record CanStepJson(string Id, string Reason, string? Nearest, double? Index);

/// <summary>How cold it may get.</summary>
/// <param name="DownTo">Lowest whole °C at which nothing quick comes out; null when something does already.</param>
/// <param name="First">What comes out first a degree colder; null when nothing does down to 0 °C.</param>
public sealed record CanColdJson(double? DownTo, string? First);

/// <summary>An ion, molecule or pair.</summary>
/// <param name="Id">Formula with its charge.</param>
/// <param name="Molality">mol/kg of all water.</param>
/// <param name="Log10Activity">log10 of its activity.</param>
public sealed record CanSpeciesJson(string Id, double Molality, double Log10Activity);

/// <summary>Balances, each as a part of its own total; below 1e-10 in every answer.</summary>
/// <param name="Mass">Worst of the components.</param>
/// <param name="Charge">Net charge over the sum of charges.</param>
public sealed record CanCertificateJson(double Mass, double Charge);
