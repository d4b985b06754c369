using Ashery.RootZone.State;

namespace Ashery.RootZone.Ph;

/// <summary>Ground limestone dissolves the faster the more acid the medium: a share a day for each pH unit below its end (assumption). What hard water brings too much comes out again.</summary>
internal static class Lime
{
    private const double Ln10 = 2.302585092994046, MostCalcium = 0.5;

    /// <summary>CaCO3 + 2 H+ = Ca2+ + CO2 + H2O: the charge of the calcium is the base it brings.</summary>
    public static void Dissolve(ref PotPools s, PotParameters p)
    {
        // Buffering of solid and bicarbonate, eq a pH unit: pH runs towards its end by dpH/dt = k L (end - pH)/B, which is solved over the step.
        var buffer = p.BufferSlope + (Ln10 * s.Water * p.Bicarbonate / s.Proton);
        var lacking = p.LimeEnd - s.PH;
        var lime = s.LimeCalcium + s.LimeMagnesium;
        if (lacking > 0 && lime > 0)
        {
            var share = Math.Min(Decay.Share(p.LimeRate * lacking), 0.5 * buffer * lacking * Decay.Share(2 * p.LimeRate * lime / buffer) / lime);
            var (calcium, magnesium) = (s.LimeCalcium * share, s.LimeMagnesium * share);
            s.LimeCalcium -= calcium;
            s.LimeMagnesium -= magnesium;
            s.Mobile[Ion.Calcium] += calcium;
            s.Mobile[Ion.Magnesium] += magnesium;
        }

        var over = s.PH - p.ScalePh;
        if (over > 0)
        {
            Scale(ref s, p, over, buffer);
        }
    }

    // Ca2+ + 2 HCO3- = CaCO3 + CO2 + H2O: hard water does not drive the pH up without end.
    private static void Scale(ref PotPools s, PotParameters p, double over, double buffer)
    {
        var share = Decay.Share(p.ScaleRate * s.Water * p.Bicarbonate / s.Proton / buffer);
        var settled = Math.Min(0.5 * buffer * over * share, MostCalcium * s.Mobile[Ion.Calcium]);
        s.Mobile[Ion.Calcium] -= settled;
        s.LimeCalcium += settled;
    }
}
