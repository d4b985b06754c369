namespace Ashery.Blending;

/// <summary>Checks a certificate in decimal arithmetic, independent of the search.</summary>
public static class CertificateCheck
{
    /// <summary>
    /// The lower bound that the certificate proves for the ratio error of every blend of the request's columns that keeps its rows.
    /// </summary>
    /// <remarks>
    /// For multipliers lambda_j with |lambda_j| &lt;= 1/d and rho_r &gt;= 0, weak duality gives for every blend
    /// e &gt;= sum_j lambda_j (1 - u_j) + ..., and since a blend is a mean of its columns weighted by nutrient mass,
    /// e &gt;= min over columns i with nutrients of (sum_r rho_r g_ri - sum_j lambda_j (a_ij / tau_j - T_i)) / T_i, provided that no column
    /// without nutrients has sum_r rho_r g_ri below zero. Any multipliers may be given; bad ones only prove less.
    /// Contents are read as the decimals they were written as.
    /// </remarks>
    /// <returns>The bound; null when the multipliers prove nothing.</returns>
    public static decimal? LowerBound(BlendRequest request, Certificate certificate)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(certificate);
        var d = request.Target.Count;
        var target = request.Target.Select(t => (decimal)t).ToArray();
        var sum = target.Sum();
        var weight = 1m / d;
        var lambda = certificate.NutrientDuals.Select(v => Math.Clamp((decimal)v, -weight, weight)).ToArray();
        var rho = certificate.RowDuals.Select(v => Math.Max(0, (decimal)v)).ToArray();
        decimal? bound = null;
        for (var i = 0; i < request.Columns.Count; i++)
        {
            var content = request.Columns[i].Content.Select(a => (decimal)a).ToArray();
            var total = content.Sum();
            decimal side = 0;
            for (var r = 0; r < rho.Length; r++)
            {
                side += rho[r] * (decimal)request.Rows[r].Coefficients[i];
            }

            if (total == 0)
            {
                // Rounding of the multipliers may leave a trace below zero; more would let this column undo the bound.
                if (side < -1e-12m)
                {
                    return null;
                }

                continue;
            }

            var value = side;
            for (var j = 0; j < d; j++)
            {
                value -= lambda[j] * ((content[j] * sum / target[j]) - total);
            }

            value /= total;
            bound = bound is { } b ? Math.Min(b, value) : value;
        }

        return bound;
    }

    /// <summary>True when the certificate alone proves that no blend has a smaller ratio error than this one.</summary>
    public static bool Proves(BlendRequest request, Certificate certificate, Blend blend, decimal tolerance = 1e-9m) =>
        LowerBound(request, certificate) is { } bound && (decimal)blend.RatioError - bound <= tolerance;
}
