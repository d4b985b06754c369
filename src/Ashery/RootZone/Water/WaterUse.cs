using Ashery.RootZone.State;

namespace Ashery.RootZone.Water;

/// <summary>Transpiration and evaporation of a step.</summary>
internal static class WaterUse
{
    // A plant in brine still loses some water: FAO-56 gives no end to its straight line.
    private const double LeastUnderSalt = 0.1;

    /// <summary>
    /// Canopy area (not the pot's mouth) times reference ET times a coefficient, L; the bare part of the mouth dries besides. Water falls
    /// short as in FAO-56 (Ks = 1 above the strained mark, then straight to 0 at wilting, equation 84), integrated over the step:
    /// dW/dt = -L down to the mark, then W - W(wilting) decays. Salt cuts transpiration by b (EC - a), equation 89 with Ky = 1.
    /// </summary>
    /// <returns>Litres transpired and evaporated, and the part of the wanted water that was had.</returns>
    public static (double Transpired, double Evaporated, double Stress) Take(ref PotPools s, ref PotLedger l, PotParameters p, double etMm)
    {
        var salt = SaltFactor(in s, p);
        var wanted = p.CanopyCoefficient * etMm * s.Canopy * salt * p.Step;
        var bare = Math.Max(p.SurfaceShaded, 1 - (s.Canopy / p.MouthArea));
        var drying = p.SurfaceCoefficient * etMm * p.MouthArea * bare * p.Step;
        var all = wanted + drying;
        if (all <= 0)
        {
            return (0, 0, 1);
        }

        var lost = Lost(s.Water, all, p.Strained, p.Wilting);
        var stress = lost / all;
        var transpired = stress * wanted;
        var evaporated = lost - transpired;
        s.Water -= lost;
        l.Transpired += transpired;
        l.Evaporated += evaporated;
        return (transpired, evaporated, stress);
    }

    /// <summary>1 up to the threshold of the saturated extract, then falling in a straight line.</summary>
    public static double SaltFactor(in PotPools s, PotParameters p) =>
        Math.Max(LeastUnderSalt, 1 - (p.SaltSlope * Math.Max(0, s.ExtractEc - p.SaltThreshold)));

    private static double Lost(double water, double wanted, double strained, double wilting)
    {
        var easy = water - strained;
        if (easy >= wanted)
        {
            return wanted;
        }

        var span = strained - wilting;
        if (easy > 0)
        {
            return easy + (span * Decay.Share((wanted - easy) / span));
        }

        var left = water - wilting;
        return left <= 0 ? 0 : left * Decay.Share(wanted / span);
    }
}
