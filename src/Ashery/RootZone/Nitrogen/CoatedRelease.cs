using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Nitrogen;

/// <summary>Coated and slow granules: first order with the temperature of the root zone, 80 % at the longevity a label names for 21 °C.</summary>
internal static class CoatedRelease
{
    public static void Run(ref PotPools s, PotParameters p, in DayForcing f) =>
        IonMath.MoveShare(ref s.Coated, ref s.Mobile, Decay.Share(s.CoatedRate * f.Coated * p.Step / 2));
}
