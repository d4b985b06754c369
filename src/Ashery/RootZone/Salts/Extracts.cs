namespace Ashery.RootZone.Salts;

/// <summary>EC of pore water as the usual extracts would show it (conversions from the class limits of Cavins and others 2000, from memory).</summary>
public static class Extracts
{
    /// <summary>
    /// Saturated extract, mS/cm: the pour-through shows pore water at container capacity, 1.3 times the saturated extract (1.3 to 2 in
    /// print). Drier pore water is first thinned to capacity, in proportion: exchange on the way is left out.
    /// </summary>
    internal static double FromPore(double poreEc, double water, PotParameters p) => poreEc * water / p.Capacity * p.ExtractOverPore;

    /// <summary>Saturated extract as the other extracts, with the spread of the published conversions.</summary>
    public static ExtractReadings Of(double extractEc, RootZoneConstants constants)
    {
        var (pour, two, five) = (constants.Row("pour-through-over-extract"), constants.Row("extract-over-one-to-two"), constants.Row("extract-over-one-to-five"));
        return new(
            extractEc,
            new(extractEc * constants[pour.Id], extractEc * pour.Low!.Value, extractEc * pour.High!.Value),
            new(extractEc / constants[two.Id], extractEc / two.High!.Value, extractEc / two.Low!.Value),
            new(extractEc / constants[five.Id], extractEc / five.High!.Value, extractEc / five.Low!.Value));
    }
}

/// <summary>One root zone by four methods, mS/cm.</summary>
/// <param name="SaturatedExtract">Of the saturated medium.</param>
/// <param name="PourThrough">Of what runs out below when water is poured on.</param>
/// <param name="OneToTwo">One part of medium in two of water by volume.</param>
/// <param name="OneToFive">One in five.</param>
public readonly record struct ExtractReadings(double SaturatedExtract, ExtractSpread PourThrough, ExtractSpread OneToTwo, ExtractSpread OneToFive);

/// <summary>A reading with the spread of its conversion.</summary>
public readonly record struct ExtractSpread(double Value, double Low, double High);
