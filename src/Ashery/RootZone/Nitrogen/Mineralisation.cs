using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Nitrogen;

/// <summary>
/// Rotting of organic matter. Each class loses nitrogen and carbon at one rate; microbes keep efficiency x carbon / (their C:N) of
/// the nitrogen, which joins the slow pool. What is over becomes ammonium; what is short is taken from ammonium, then nitrate
/// (immobilisation), and matter rots no faster than that allows. Break-even C:N = C:N of microbes / efficiency.
/// </summary>
internal static class Mineralisation
{
    // Microbes cannot strip the pore water bare within a step.
    private const double MostOfMineral = 0.9;

    public static void Rot(ref PotPools s, ref PotLedger l, PotParameters p, in DayForcing f, double moist)
    {
        var before = s.Mobile[Ion.Ammonium] + s.Mobile[Ion.Nitrate];
        if (s.MealN > 0)
        {
            Pool(ref s, ref s.MealN, ref s.MealC, Decay.Share(p.MealRate * f.Meal * moist), p.MicrobeShare);
        }

        if (s.CakeN > 0)
        {
            Pool(ref s, ref s.CakeN, ref s.CakeC, Decay.Share(p.CakeRate * f.Organic * moist), p.MicrobeShare);
        }

        if (s.CompostN > 0)
        {
            Pool(ref s, ref s.CompostN, ref s.CompostC, Decay.Share(p.CompostRate * f.Organic * moist), p.MicrobeShare);
        }

        var old = s.SlowN * Decay.Share(p.SlowRate * f.Organic * moist);
        var oldest = s.HumusN * p.HumusRate * f.Organic * moist;
        s.SlowN -= old;
        s.HumusN -= oldest;
        s.Mobile[Ion.Ammonium] += old + oldest;
        l.MineralisedN += s.Mobile[Ion.Ammonium] + s.Mobile[Ion.Nitrate] - before;

        // Other elements of what rots come free with it.
        IonMath.MoveShare(ref s.BoundFast, ref s.Mobile, Decay.Share(p.CakeRate * f.Organic * moist));
        IonMath.MoveShare(ref s.BoundSlow, ref s.Mobile, Decay.Share(p.SlowMineralRate * f.Organic * moist));
    }

    private static void Pool(ref PotPools s, ref double nitrogen, ref double carbon, double share, double microbeShare)
    {
        var kept = carbon * share * microbeShare;
        var net = (nitrogen * share) - kept;
        if (net < 0)
        {
            var there = MostOfMineral * (s.Mobile[Ion.Ammonium] + s.Mobile[Ion.Nitrate]);
            if (-net > there)
            {
                var slowed = there / -net;
                share *= slowed;
                kept *= slowed;
                net *= slowed;
            }

            var fromAmmonium = Math.Min(-net, MostOfMineral * s.Mobile[Ion.Ammonium]);
            s.Mobile[Ion.Ammonium] -= fromAmmonium;
            s.Mobile[Ion.Nitrate] -= -net - fromAmmonium;
        }
        else
        {
            s.Mobile[Ion.Ammonium] += net;
        }

        nitrogen -= nitrogen * share;
        carbon -= carbon * share;
        s.SlowN += kept;
    }
}
