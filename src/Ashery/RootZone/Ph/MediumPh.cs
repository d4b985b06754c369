using Ashery.RootZone.State;

namespace Ashery.RootZone.Ph;

/// <summary>
/// pH from the charge of the pot. The cations of a pot, dissolved and exchanged, exceed its mineral anions by the charge of the solid
/// and the alkalinity of the pore water: C = B (pH - pH0) + W (HCO3- + HPO4-- - H+). Every process that makes acid or base shows in
/// C by itself: nitrification lowers it by two a mole, uptake of nitrate raises it by one, lime and the alkalinity of the water bring
/// their cations, leaching takes salts away in balance. B is the buffering of the medium (10 to 40 meq/L a pH unit, Bunt 1988, from memory).
/// </summary>
internal static class MediumPh
{
    private const double Ln10 = 2.302585092994046, Lowest = 2, Highest = 10.5, LongestStep = 1;

    // Newton squares its error (half of ln 10 times it): after a step below this the rest is below 1e-9.
    private const double LastStep = 2e-5;

    /// <summary>Sets pH and proton; returns the charge of the solid, eq.</summary>
    public static double Solve(ref PotPools s, PotParameters p)
    {
        var charge = IonMath.Dot(in s.Mobile, in p.Charges);
        var phosphate = s.Mobile[Ion.Phosphate] * s.Water / (s.Water + p.SorptionLitres[Ion.Phosphate]);
        var (pH, h) = (s.PH, s.Proton);
        for (var i = 0; i < 60; i++)
        {
            var bicarbonate = s.Water * p.Bicarbonate / h;
            var proton = s.Water * h;
            var second = p.PhosphateK / (p.PhosphateK + h);
            var alkalinity = bicarbonate - proton + (phosphate * second);
            var solid = p.BufferSlope * Math.Max(0, pH - p.BufferZero);
            var slope = (pH > p.BufferZero ? p.BufferSlope : 0) + (Ln10 * (bicarbonate + proton + (phosphate * second * (1 - second))));
            var step = Math.Clamp((charge - solid - alkalinity) / slope, -LongestStep, LongestStep);
            var next = Math.Clamp(pH + step, Lowest, Highest);
            step = next - pH;
            pH = next;

            // 10^-step near zero by its series: a full exponential only for a jump.
            h *= Math.Abs(step) < 0.01 ? Small(-Ln10 * step) : Math.Exp(-Ln10 * step);
            if (Math.Abs(step) < LastStep)
            {
                break;
            }
        }

        s.PH = pH;
        s.Proton = h;
        return p.BufferSlope * Math.Max(0, pH - p.BufferZero);
    }

    private static double Small(double x) => 1 + (x * (1 + (x * (0.5 + (x * ((1.0 / 6) + (x * (1.0 / 24))))))));
}
