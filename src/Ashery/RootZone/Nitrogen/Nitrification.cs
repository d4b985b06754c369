using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Nitrogen;

/// <summary>
/// Ammonium to nitrate: first order (three times the ammonium gave three times the rate in pine bark), none below pH 5.6 and full from
/// 6.8 (Lang and Elliott 1991), by temperature (Niemiera and Wright 1987, from memory) and moisture. Two protons a mole follow from the charge.
/// </summary>
internal static class Nitrification
{
    public static void Run(ref PotPools s, ref PotLedger l, PotParameters p, in DayForcing f, double moist)
    {
        var acid = Math.Clamp((s.PH - p.NitrificationPhNone) / p.NitrificationPhSpan, 0, 1);
        var made = s.Mobile[Ion.Ammonium] * Decay.Share(p.NitrificationRate * f.Nitrification * acid * moist);
        s.Mobile[Ion.Ammonium] -= made;
        s.Mobile[Ion.Nitrate] += made;
        l.NitrifiedN += made;
    }
}
