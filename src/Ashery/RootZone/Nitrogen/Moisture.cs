using Ashery.RootZone.State;

namespace Ashery.RootZone.Nitrogen;

/// <summary>How wet pores hasten and hinder microbes (Linn and Doran 1984, from memory).</summary>
internal static class Moisture
{
    /// <summary>0 at wilting, straight to 1 at 60 % water-filled pores, falling to a half at 90 %.</summary>
    public static double Aerobic(in PotPools s, PotParameters p)
    {
        var best = p.WetBest * p.Pores;
        return s.Water <= best
            ? best > p.Wilting ? Math.Clamp((s.Water - p.Wilting) / (best - p.Wilting), 0, 1) : 0
            : Math.Max(0, 1 - (p.WetFall * ((s.Water / p.Pores) - p.WetBest)));
    }

    /// <summary>
    /// Part of the medium without air: the perched water at the bottom, which shrinks as the pot dries, and the rest as its pores
    /// fill beyond the share where denitrification begins.
    /// </summary>
    public static double WithoutAir(in PotPools s, PotParameters p)
    {
        var perched = p.Perched * Math.Clamp((s.Water - p.Strained) / (p.Capacity - p.Strained), 0, 1);
        var filled = Math.Clamp(((s.Water / p.Pores) - p.DenitrificationStart) / (1 - p.DenitrificationStart), 0, 1);
        return Math.Max(perched, filled);
    }
}
