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

    /// <summary>0 up to the share of filled pores where denitrification begins, 1 when all are full.</summary>
    public static double WithoutAir(in PotPools s, PotParameters p) =>
        Math.Clamp(((s.Water / p.Pores) - p.DenitrificationStart) / (1 - p.DenitrificationStart), 0, 1);
}
