namespace Ashery.Blending.Amounts;

/// <summary>Checks a certificate in decimal arithmetic, independent of the search.</summary>
public static class AmountCertificateCheck
{
    // Keeps a multiplier that is scaled down from being rounded up again.
    private const decimal Below = 1 - 1e-20m;

    /// <summary>
    /// The lower bound that the certificate proves for the error of all amounts of the request's columns that keep its rows and whose error is not
    /// above a known one.
    /// </summary>
    /// <remarks>
    /// For |lambda_j| &lt;= 1/d and rho_r &gt;= 0, e &gt;= -sum_j lambda_j (sum_i a_ij m_i/t_j + w_j/t_j - 1) + sum_r rho_r (sum_i g_ri m_i + c_r), which is
    /// sum_r rho_r c_r - sum_j lambda_j (w_j/t_j - 1) + sum_i s_i m_i with s_i = sum_r rho_r g_ri - sum_j lambda_j a_ij/t_j. Exact multipliers have every
    /// s_i &gt;= 0. Rounded ones may fall short, which costs at most -s_i times the most there can be of the column: since no deviation is above
    /// d e, m_i &lt;= (1 + d e - w_j/t_j) t_j/a_ij for every nutrient j. A column of none of them has no such limit: for it the multipliers of the rows
    /// it eases are lowered until they suffice, which any multipliers may be.
    /// </remarks>
    /// <param name="request">What was asked.</param>
    /// <param name="certificate">Multipliers.</param>
    /// <param name="known">Error of amounts that are known.</param>
    /// <returns>The bound; null when the multipliers prove nothing.</returns>
    public static decimal? LowerBound(AmountRequest request, Certificate certificate, double known)
    {
        var d = request.Target.Count;
        var weight = 1m / d;
        var most = 1 + (d * (decimal)known);
        var target = request.Target.Select(t => (decimal)t).ToArray();
        var there = request.Fixed.Select((w, j) => (decimal)w / target[j]).ToArray();
        var lambda = certificate.NutrientDuals.Select(v => Math.Clamp((decimal)v, -weight, weight)).ToArray();
        var whole = target.Sum();
        var rho = certificate.RowDuals.Select(v => Math.Max(0, (decimal)v) / whole).ToArray();
        Suffice(request, rho);
        decimal bound = 0;
        for (var i = 0; i < request.Columns.Count; i++)
        {
            decimal sum = 0;
            for (var r = 0; r < rho.Length; r++)
            {
                sum += rho[r] * (decimal)request.Rows[r].Coefficients[i];
            }

            decimal? mass = null;
            for (var j = 0; j < d; j++)
            {
                var part = (decimal)request.Columns[i].Content[j] / target[j];
                sum -= lambda[j] * part;
                if (part > 0)
                {
                    var upTo = Math.Max(0, most - there[j]) / part;
                    mass = mass is { } m ? Math.Min(m, upTo) : upTo;
                }
            }

            if (sum < 0)
            {
                if (mass is not { } limit)
                {
                    return null;
                }

                bound += sum * limit;
            }
        }

        for (var r = 0; r < rho.Length; r++)
        {
            bound += rho[r] * (decimal)request.Rows[r].Constant;
        }

        for (var j = 0; j < d; j++)
        {
            bound -= lambda[j] * (there[j] - 1);
        }

        return bound;
    }

    // Lowering a row's multiplier for one column may leave another short, so that it is done a few times over.
    private static void Suffice(AmountRequest request, decimal[] rho)
    {
        for (var round = 0; round < 2 * request.Columns.Count; round++)
        {
            for (var i = 0; i < request.Columns.Count; i++)
            {
                if (request.Columns[i].Content.Any(static a => a > 0))
                {
                    continue;
                }

                decimal uses = 0, eases = 0;
                for (var r = 0; r < rho.Length; r++)
                {
                    var term = rho[r] * (decimal)request.Rows[r].Coefficients[i];
                    (uses, eases) = term > 0 ? (uses + term, eases) : (uses, eases - term);
                }

                for (var r = 0; r < rho.Length && eases > uses; r++)
                {
                    rho[r] *= request.Rows[r].Coefficients[i] < 0 ? uses / eases * Below : 1;
                }
            }
        }
    }
}
