namespace Ashery.RootZone.Salts;

/// <summary>How much must run out below so that salt does not pile up.</summary>
public static class LeachingRequirement
{
    /// <summary>LR = ECw/(5 ECe - ECw) (Rhoades 1974, from memory; FAO-56, seen). 1 when no leaching suffices.</summary>
    /// <param name="waterEc">EC of the water, mS/cm.</param>
    /// <param name="extractEc">Saturated extract the crop bears, mS/cm.</param>
    public static double Rhoades(double waterEc, double extractEc) => 5 * extractEc > 2 * waterEc ? waterEc / ((5 * extractEc) - waterEc) : 1;

    /// <summary>Mean saturated extract at a leaching fraction, ECe = ECw/5 (1 + LF)/LF (FAO-56, seen).</summary>
    public static double ExtractAt(double waterEc, double leachingFraction) => waterEc / 5 * (1 + leachingFraction) / leachingFraction;

    /// <summary>Water to give for a use and a leaching requirement, V = ET/(1 - LR) (FAO Irrigation and Drainage Paper 29, from memory).</summary>
    public static double Applied(double use, double requirement) => use / (1 - requirement);

    /// <summary>EC of the drainage at steady state without uptake or release of salt, ECw/LF (the same paper, from memory).</summary>
    public static double DrainageEc(double waterEc, double leachingFraction) => waterEc / leachingFraction;
}
