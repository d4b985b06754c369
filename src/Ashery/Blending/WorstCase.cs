using Ashery.Blending.Model;

namespace Ashery.Blending;

/// <summary>The largest ratio error that a blend can have anywhere in the ranges of its contents and amounts.</summary>
/// <remarks>
/// e = max over signs s of (1/d) sum_j s_j (share_j / tau_j - 1), and for fixed signs with v_j = s_j / tau_j
/// R = sum_j v_j c_j / sum_j c_j, c_j = sum_i f_i m_i a_ij, is monotone in each content a_ij and each amount factor f_i alone, so its
/// largest value is at a corner. Dinkelbach's iteration finds it (Dinkelbach 1967, On nonlinear fractional programming,
/// Management Science 13:492; from memory): at the present R the numerator sum f_i m_i sum_j (v_j - R) a_ij is largest with a_ij at its highest where
/// v_j &gt; R and at its lowest elsewhere, and f_i at its highest where the column's sum is positive; the ratio there is the next R, until it
/// stops growing. Complexity: 2^d signs, a few rounds of c d steps each, instead of 2^(c + c d) corners.
/// </remarks>
public static class WorstCase
{
    /// <summary>Largest ratio error of the blend in the request's ranges; exact up to rounding.</summary>
    public static double Of(UncertaintyRequest request, Blend blend)
    {
        var target = BlendGuard.Normalised(request.Blend.Target);
        var d = target.Length;
        if (d > 20)
        {
            throw new ArgumentException("More than twenty nutrients have too many sign patterns.", nameof(request));
        }

        var v = new double[d];
        double worst = 0;
        for (var signs = 0; signs < 1 << d; signs++)
        {
            double sum = 0;
            for (var j = 0; j < d; j++)
            {
                var s = (signs >> j & 1) == 0 ? 1 : -1;
                v[j] = s / target[j];
                sum += s;
            }

            worst = Math.Max(worst, (Largest(request, blend, v) - sum) / d);
        }

        return worst;
    }

    private static double Largest(UncertaintyRequest request, Blend blend, double[] v)
    {
        var ratio = v.Min();
        for (var round = 0; round < 100; round++)
        {
            var next = Improve(request, blend, v, ratio);
            if (!(next > ratio + (1e-15 * Math.Abs(ratio))))
            {
                break;
            }

            ratio = next;
        }

        return ratio;
    }

    private static double Improve(UncertaintyRequest request, Blend blend, double[] v, double ratio)
    {
        double above = 0;
        double total = 0;
        for (var k = 0; k < blend.Members.Count; k++)
        {
            var i = blend.Members[k];
            double worth = 0;
            double content = 0;
            double weighted = 0;
            for (var j = 0; j < v.Length; j++)
            {
                var range = request.Contents[i][j];
                var a = v[j] > ratio ? range.Max : range.Min;
                worth += (v[j] - ratio) * a;
                weighted += v[j] * a;
                content += a;
            }

            var error = request.AmountError[i];
            var amount = blend.MassFractions[k] * (worth > 0 ? 1 + error : 1 - error);
            above += amount * weighted;
            total += amount * content;
        }

        return total > 0 ? above / total : ratio;
    }
}
