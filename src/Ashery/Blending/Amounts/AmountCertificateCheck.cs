namespace Ashery.Blending.Amounts;

/// <summary>Checks a certificate in decimal arithmetic, independent of the search.</summary>
public static class AmountCertificateCheck
{
    // Multipliers are rounded: a column may fall short of its condition by this part of what it would weigh at full multipliers.
    private const decimal Rounding = 1e-10m;

    /// <summary>
    /// The lower bound that the certificate proves for the error of all amounts of the request's columns that keep its rows.
    /// </summary>
    /// <remarks>
    /// For |lambda_j| &lt;= 1/d and rho_r &gt;= 0, e &gt;= -sum_j lambda_j (sum_i a_ij m_i/t_j + w_j/t_j - 1) + sum_r rho_r (sum_i g_ri m_i + c_r), which for m &gt;= 0 is at
    /// least sum_r rho_r c_r - sum_j lambda_j (w_j/t_j - 1) when every column has sum_r rho_r g_ri - sum_j lambda_j a_ij/t_j &gt;= 0.
    /// </remarks>
    /// <returns>The bound; null when the multipliers prove nothing.</returns>
    public static decimal? LowerBound(AmountRequest request, Certificate certificate)
    {
        var d = request.Target.Count;
        var weight = 1m / d;
        var target = request.Target.Select(t => (decimal)t).ToArray();
        var lambda = certificate.NutrientDuals.Select(v => Math.Clamp((decimal)v, -weight, weight)).ToArray();
        var whole = target.Sum();
        var rho = certificate.RowDuals.Select(v => Math.Max(0, (decimal)v) / whole).ToArray();
        for (var i = 0; i < request.Columns.Count; i++)
        {
            decimal sum = 0, largest = 0;
            for (var r = 0; r < rho.Length; r++)
            {
                var term = rho[r] * (decimal)request.Rows[r].Coefficients[i];
                sum += term;
                largest = Math.Max(largest, Math.Abs(term));
            }

            for (var j = 0; j < d; j++)
            {
                var part = (decimal)request.Columns[i].Content[j] / target[j];
                sum -= lambda[j] * part;
                largest = Math.Max(largest, weight * part);
            }

            if (sum < -Rounding * largest)
            {
                return null;
            }
        }

        decimal bound = 0;
        for (var r = 0; r < rho.Length; r++)
        {
            bound += rho[r] * (decimal)request.Rows[r].Constant;
        }

        for (var j = 0; j < d; j++)
        {
            bound -= lambda[j] * (((decimal)request.Fixed[j] / target[j]) - 1);
        }

        return bound;
    }
}
