namespace Ashery.RootZone.Salts;

/// <summary>Acid and base that nitrogen makes in a pot, g CaCO3 a g of nitrogen (stoichiometry: half a mole of CaCO3, 50.04 g, a mole of protons).</summary>
public static class FertiliserAcidity
{
    private const double PerProton = 100.087 / 2 / 14.007;

    /// <summary>Nitrification of ammonium: two protons.</summary>
    public static double Nitrification => 2 * PerProton;

    /// <summary>Uptake of nitrate: one base.</summary>
    public static double NitrateUptake => -PerProton;

    /// <summary>Uptake of ammonium: one proton.</summary>
    public static double AmmoniumUptake => PerProton;

    /// <summary>Hydrolysis of urea: one base.</summary>
    public static double UreaHydrolysis => -PerProton;
}
