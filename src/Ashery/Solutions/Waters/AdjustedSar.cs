namespace Ashery.Solutions.Waters;

/// <summary>
/// Sodium adsorption ratio with the calcium that stays dissolved when the water meets calcite and the carbon dioxide of soil (Suarez 1981,
/// the method of FAO Irrigation and Drainage Paper 29, table 11): Ca³ (HCO3/Ca)² γ = K, with K of CaCO3 + CO2 + H2O = Ca²⁺ + 2 HCO3⁻.
/// </summary>
public static class AdjustedSar
{
    /// <summary>Calcium at that equilibrium, mol/L, from the ratio of hydrogen carbonate to calcium (mol) and the ionic strength, 25 °C.</summary>
    public static double Calcium(double ratio, double ionicStrength)
    {
        var chemistry = Chemistry.Default;
        double bicarbonate = Find("HCO3-").LogFormation(25), dissolved = Find("CO2").LogFormation(25);
        var logK = WaterCheck.Of("calcite.soil") + (2 * bicarbonate) - dissolved + chemistry.CarbonDioxide.At(25) + Math.Log10(WaterCheck.Of("carbonDioxide.soil"));
        var water = WaterProperties.At(25);
        var activity = Math.Exp(ActivityCoefficient.Ln(Find("Ca+2"), water, ionicStrength) + (2 * ActivityCoefficient.Ln(Find("HCO3-"), water, ionicStrength)));
        return Math.Cbrt(Math.Pow(10, logK) / (ratio * ratio * activity));

        AqueousSpecies Find(string id) => chemistry.Species.First(s => s.Id == id);
    }

    /// <summary>The adjusted ratio of a water, all in mol/L. A pot has no lime to give calcium, so that it never rises above the water's own.</summary>
    internal static double Of(double sodium, double calcium, double magnesium, double alkalinity, double ionicStrength)
    {
        var stays = alkalinity > 0 ? Math.Min(calcium, Calcium(alkalinity / calcium, ionicStrength)) : calcium;
        return sodium * 1000 / Math.Sqrt((stays + magnesium) * 1000);
    }
}
