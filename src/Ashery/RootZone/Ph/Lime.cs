using Ashery.RootZone.State;

namespace Ashery.RootZone.Ph;

/// <summary>Ground limestone dissolves the faster the more acid the medium: a share a day for each pH unit below its end (assumption).</summary>
internal static class Lime
{
    /// <summary>CaCO3 + 2 H+ = Ca2+ + CO2 + H2O: the charge of the calcium is the base it brings.</summary>
    public static void Dissolve(ref PotPools s, PotParameters p)
    {
        var share = Decay.Share(p.LimeRate * Math.Max(0, p.LimeEnd - s.PH));
        var (calcium, magnesium) = (s.LimeCalcium * share, s.LimeMagnesium * share);
        s.LimeCalcium -= calcium;
        s.LimeMagnesium -= magnesium;
        s.Mobile[Ion.Calcium] += calcium;
        s.Mobile[Ion.Magnesium] += magnesium;
    }
}
