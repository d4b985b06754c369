namespace Ashery.Solutions;

/// <summary>Figures a grower reads off a solution.</summary>
public static class SolutionMeasures
{
    // g of CaCO3 a mole of charge, and molar masses: 100.087/2, N 14.007, H2O 18.015 (standard atomic weights).
    private const double CalciumCarbonateEquivalent = 50.0435, Nitrogen = 14.007, WaterMolarMass = 0.018015;

    /// <summary>
    /// Alkalinity, mol of charge per kg water: acid to bring every component to its reference level (carbonic acid, dihydrogen phosphate,
    /// dihydrogen citrate, ammonium, boric acid). Carbon dioxide that comes or goes does not change it.
    /// </summary>
    public static double Alkalinity(Solution solution)
    {
        var sum = 0.0;
        foreach (var component in solution.Input.Chemistry.Components)
        {
            // Net protons needed follow from the charge of the components, so that no species has to be named.
            sum += (component.AlkalinityProtons + component.Charge) * solution.Totals[component.Index];
        }

        return sum;
    }

    /// <summary>Alkalinity as mg CaCO3 in a kg of water.</summary>
    public static double AlkalinityAsCalciumCarbonate(Solution solution) => Alkalinity(solution) * CalciumCarbonateEquivalent * 1000;

    /// <summary>Unionised ammonia, mg N in a kg of water.</summary>
    public static double FreeAmmoniaNitrogen(Solution solution) => solution.Molality("NH3") * Nitrogen * 1000;

    /// <summary>Part of the ammonium and ammonia that is free ammonia, 0 to 1; 0 without any.</summary>
    public static double FreeAmmoniaFraction(Solution solution) =>
        solution.Total("ammonium") is > 0 and var total ? solution.Molality("NH3") / total : 0;

    /// <summary>Osmotic potential, MPa (negative): R T ln(a_w)/V_w with the volume of a mole of water.</summary>
    public static double OsmoticPotential(Solution solution)
    {
        var water = WaterProperties.At(solution.Celsius);
        return WaterProperties.GasConstant * (solution.Celsius + 273.15) * Math.Log(solution.WaterActivity)
            / (WaterMolarMass / (water.Density * 1000)) * 1e-6;
    }
}
