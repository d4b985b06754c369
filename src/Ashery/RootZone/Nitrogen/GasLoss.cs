using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Nitrogen;

/// <summary>Nitrogen lost to the air.</summary>
internal static class GasLoss
{
    /// <summary>
    /// Ammonia: of the dissolved ammonium the part Ka/(Ka + h) is free (Emerson and others 1975, from memory), of which a share leaves
    /// a day. What sits on the exchange is safe, so that a medium that holds cations loses less.
    /// </summary>
    public static void Ammonia(ref PotPools s, ref PotLedger l, PotParameters p, in DayForcing f)
    {
        var there = s.Mobile[Ion.Ammonium];
        if (there <= 0)
        {
            return;
        }

        var free = f.AmmoniaK / (f.AmmoniaK + s.Proton);
        var lost = there * Decay.Share(p.AmmoniaRate * s.Free[Ion.Ammonium] * free);
        s.Mobile[Ion.Ammonium] -= lost;
        l.AmmoniaN += lost;
    }

    /// <summary>
    /// Denitrification: a share of the nitrate that stands in pores without air, by temperature as other rotting; k S/(1 + S/H) with the
    /// half concentration of Michaelis and Menten (Bowman and Focht 1974, from memory), since with much nitrate carbon is what is short. Each mole takes up a proton.
    /// </summary>
    public static void Denitrify(ref PotPools s, ref PotLedger l, PotParameters p, in DayForcing f)
    {
        var nitrate = s.Mobile[Ion.Nitrate];
        var scarce = p.DenitrificationHalf * s.Water / ((p.DenitrificationHalf * s.Water) + nitrate);
        var lost = nitrate * Decay.Share(p.DenitrificationRate * f.Organic * scarce * Moisture.WithoutAir(in s, p));
        s.Mobile[Ion.Nitrate] -= lost;
        l.DenitrifiedN += lost;
    }
}
