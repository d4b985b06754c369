using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Nitrogen;

/// <summary>Urea to ammonium, first order (Havlin and others, from memory; complete in 48 h in wood substrate, Taylor and others 2014).</summary>
internal static class Urea
{
    /// <summary>CO(NH2)2 + 2 H+ + H2O = 2 NH4+ + CO2: the charge of the pot rises with each mole, and so the pH.</summary>
    public static void Hydrolyse(ref PotPools s, PotParameters p, in DayForcing f, double moist)
    {
        // Urease works in films of water too thin for other microbes; half its rate when as dry as wilting (assumption).
        var made = s.Mobile[Ion.Urea] * Decay.Share(p.UreaRate * f.Urea * (0.5 + (0.5 * moist)));
        s.Mobile[Ion.Urea] -= made;
        s.Mobile[Ion.Ammonium] += made;
    }
}
