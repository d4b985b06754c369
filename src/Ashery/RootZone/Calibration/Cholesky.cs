namespace Ashery.RootZone.Calibration;

/// <summary>Small symmetric matrices, row by row.</summary>
internal static class Cholesky
{
    /// <summary>Lower factor L of A = L L'. A direction without variance gets a row of zeros.</summary>
    public static double[] Factor(ReadOnlySpan<double> a, int n)
    {
        var l = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = a[(i * n) + j];
                for (var k = 0; k < j; k++)
                {
                    sum -= l[(i * n) + k] * l[(j * n) + k];
                }

                l[(i * n) + j] = i == j ? Math.Sqrt(Math.Max(0, sum)) : l[(j * n) + j] > 0 ? sum / l[(j * n) + j] : 0;
            }
        }

        return l;
    }

    /// <summary>Solves L L' x = b in place.</summary>
    public static void Solve(ReadOnlySpan<double> l, int n, Span<double> b)
    {
        for (var i = 0; i < n; i++)
        {
            for (var k = 0; k < i; k++)
            {
                b[i] -= l[(i * n) + k] * b[k];
            }

            b[i] /= l[(i * n) + i];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < n; k++)
            {
                b[i] -= l[(k * n) + i] * b[k];
            }

            b[i] /= l[(i * n) + i];
        }
    }
}
