namespace Ashery.Climate.Evapotranspiration;

/// <summary>Wind over the reference grass, m/s.</summary>
public static class Wind
{
    /// <summary>Taken where nothing is known: the mean of over 2,000 stations (FAO-56, missing data).</summary>
    public const double Unknown = 2;

    /// <summary>Least wind inside the equation: pots steam a little in dead calm too (FAO-56, text).</summary>
    public const double Least = 0.5;

    /// <summary>Factor from a height above ground, m, to 2 m (47).</summary>
    public static double Factor(double height) => 4.87 / Math.Log((67.8 * height) - 5.42);

    /// <summary>Wind at 2 m from one measured at a height, m (47).</summary>
    public static double AtTwoMetres(double speed, double height) => speed * Factor(height);
}
