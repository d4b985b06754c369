namespace Ashery.RootZone.Forcing;

/// <summary>One day of weather as a pot of some exposure and size meets it, temperature factors worked out.</summary>
public struct DayForcing
{
    /// <summary>Rain past the roof, mm.</summary>
    public double RainMm;

    /// <summary>Reference evapotranspiration at the pot, mm.</summary>
    public double EtMm;

    /// <summary>Sun on the canopy, MJ/m².</summary>
    public double Radiation;

    /// <summary>Mean air and root-zone temperature, °C.</summary>
    public double AirCelsius, RootCelsius;

    /// <summary>Rates over those at their reference temperature.</summary>
    public double Urea, Organic, Meal, Coated, Nitrification;

    /// <summary>Dissociation constant of ammonium, mol/L.</summary>
    public double AmmoniaK;
}
