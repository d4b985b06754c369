using Ashery.Blending.Model;

namespace Ashery.Blending.Sweep;

/// <content>A sharper look at one set before its programme is solved.</content>
internal sealed unsafe partial class BlendSweep
{
    /// <summary>
    /// False when no mean of the chosen points with all weights positive can come within the ball.
    /// </summary>
    /// <remarks>
    /// Let z be the target's projection on the members' affine hull and h its distance from it. A blend inside the ball lies within
    /// sqrt(rho^2 - h^2) of z in the hull. Its weight of member a differs from z's by at most that distance over the height of
    /// a above the other members, 1 / height^2 being the diagonal of the inverse of the inner products. If that cannot lift
    /// a negative weight to zero, the set is out.
    /// </remarks>
    private bool MayHoldTarget(int depth)
    {
        var k = depth;
        var l = stackalloc double[k * k];
        var rhs = stackalloc double[k];
        var origin = gram + (chosen[0] * width);
        var norm = origin[chosen[0]];
        for (var a = 0; a < k; a++)
        {
            var ca = chosen[a + 1];
            if (model.Brings[order[ca]] == 0)
            {
                return true;
            }

            rhs[a] = norm - origin[ca];
            for (var b = 0; b <= a; b++)
            {
                var cb = chosen[b + 1];
                var sum = gram[(ca * width) + cb] - origin[ca] - origin[cb] + norm;
                var full = sum;
                for (var q = 0; q < b; q++)
                {
                    sum -= l[(a * k) + q] * l[(b * k) + q];
                }

                if (a != b)
                {
                    l[(a * k) + b] = sum / l[(b * k) + b];
                }
                else if (sum <= NearlyInside * full || sum < 1e-200)
                {
                    return true;
                }
                else
                {
                    l[(a * k) + a] = Math.Sqrt(sum);
                }
            }
        }

        return WeightsReach(l, rhs, k, norm);
    }

    private bool WeightsReach(double* l, double* rhs, int k, double norm)
    {
        // Inverse of the triangle, column by column; y = L^-T L^-1 rhs follows from it.
        var inverse = stackalloc double[k * k];
        var forward = stackalloc double[k];
        var rest = norm;
        for (var a = 0; a < k; a++)
        {
            inverse[(a * k) + a] = 1 / l[(a * k) + a];
            for (var b = 0; b < a; b++)
            {
                double sum = 0;
                for (var q = b; q < a; q++)
                {
                    sum += l[(a * k) + q] * inverse[(q * k) + b];
                }

                inverse[(a * k) + b] = -sum * inverse[(a * k) + a];
            }

            double dot = 0;
            for (var b = 0; b <= a; b++)
            {
                dot += inverse[(a * k) + b] * rhs[b];
            }

            forward[a] = dot;
            rest -= dot * dot;
        }

        var radius = Radius();
        var reach = (radius * radius) - rest + (Rounding * (norm + largest));
        if (reach < 0)
        {
            return false;
        }

        reach = Math.Sqrt(reach);
        double first = 1;
        double firstHeight = 0;
        for (var a = 0; a < k; a++)
        {
            double y = 0;
            double height = 0;
            double rowSum = 0;
            for (var q = a; q < k; q++)
            {
                y += inverse[(q * k) + a] * forward[q];
                height += inverse[(q * k) + a] * inverse[(q * k) + a];
            }

            for (var b = 0; b <= a; b++)
            {
                rowSum += inverse[(a * k) + b];
            }

            if (y + (reach * Math.Sqrt(height)) < -FoundBlend.Positive)
            {
                return false;
            }

            first -= y;
            firstHeight += rowSum * rowSum;
        }

        return first + (reach * Math.Sqrt(firstHeight)) >= -FoundBlend.Positive;
    }
}
