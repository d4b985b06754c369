namespace Ashery.Blending.Sweep;

/// <summary>Scales that let a ball hold all deviations of a given mean, as tightly as a few rounds find.</summary>
/// <remarks>
/// Relative deviations x_j of shares satisfy sum_j tau_j x_j = 0. With sum |x_j| &lt;= R they form a polytope with corners
/// R (tau_j e_i - tau_i e_j) / (tau_i + tau_j). Scales s_j hold it in |s x| &lt;= R when
/// s_i^2 tau_j^2 + s_j^2 tau_i^2 &lt;= (tau_i + tau_j)^2 for every pair; larger scales are a tighter ball.
/// </remarks>
internal static class Ellipsoid
{
    public static double[] Scales(double[] target)
    {
        var d = target.Length;
        var squared = new double[d];
        var uniform = 2.0;
        for (var i = 0; i < d; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var sum = target[i] + target[j];
                uniform = Math.Min(uniform, sum * sum / ((target[i] * target[i]) + (target[j] * target[j])));
            }
        }

        Array.Fill(squared, uniform);
        foreach (var j in Enumerable.Range(0, d).OrderByDescending(j => target[j]).ToArray())
        {
            var most = double.PositiveInfinity;
            for (var i = 0; i < d; i++)
            {
                if (i != j)
                {
                    var sum = target[i] + target[j];
                    most = Math.Min(most, ((sum * sum) - (squared[i] * target[j] * target[j])) / (target[i] * target[i]));
                }
            }

            squared[j] = double.IsInfinity(most) ? 1 : Math.Max(squared[j], most);
        }

        return Array.ConvertAll(squared, Math.Sqrt);
    }
}
