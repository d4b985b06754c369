using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Plant;

/// <summary>
/// Growth by light: dry matter = light use x sunlight taken by the canopy x temperature x water x salt x nutrition (the
/// light-use form of Monteith 1977, from memory; factors multiply by assumption). The canopy spreads with it until it reaches what the pot carries.
/// </summary>
internal static class Growth
{
    /// <summary>Adds a step of growth and gives the dry matter that would be made with enough to eat, g.</summary>
    public static double Run(ref PotPools s, PotParameters p, in DayForcing f, double stress)
    {
        var light = p.LightUse * f.Radiation * Warmth(p, f.AirCelsius) * stress * Water.WaterUse.SaltFactor(in s, p);
        var fed = Nutrition(in s, p);

        // By the canopy in the middle of the step: what grows already catches light.
        var spread = light * fed / p.CanopyMass;
        var middle = s.Canopy * (1 + (0.5 * spread * Math.Max(0, 1 - (s.Canopy / p.CanopyMost))));
        s.Canopy += spread * middle * Math.Max(0, 1 - (middle / p.CanopyMost));
        s.Biomass += light * fed * middle;
        return light * middle;
    }

    /// <summary>0 at the base temperature, 1 between the best ones, 0 again as far above them as 10 °C (assumption for the hot side).</summary>
    public static double Warmth(PotParameters p, double celsius) =>
        celsius <= p.BaseCelsius ? 0
        : celsius < p.BestFrom ? (celsius - p.BaseCelsius) / (p.BestFrom - p.BaseCelsius)
        : celsius <= p.BestTo ? 1
        : Math.Max(0, 1 - ((celsius - p.BestTo) * 0.1));

    /// <summary>Nitrogen in the plant over what it wants; may pass 1.</summary>
    public static double NitrogenStatus(in PotPools s, PotParameters p) =>
        (s.InPlant[Ion.Nitrate] + s.InPlant[Ion.Ammonium]) / (p.NitrogenWanted * s.Biomass);

    // The scarcest of N, P and K decides (Liebig), each from none at its least share to full at what is wanted.
    private static double Nutrition(in PotPools s, PotParameters p)
    {
        var phosphorus = s.InPlant[Ion.Phosphate] / (p.Wanted[Ion.Phosphate] * s.Biomass);
        var potassium = s.InPlant[Ion.Potassium] / (p.Wanted[Ion.Potassium] * s.Biomass);
        var scarcest = Math.Min(NitrogenStatus(in s, p), Math.Min(phosphorus, potassium));
        return Math.Clamp((scarcest - p.NitrogenLeast) / (1 - p.NitrogenLeast), 0, 1);
    }
}
