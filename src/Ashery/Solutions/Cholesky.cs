namespace Ashery.Solutions;

/// <summary>Cholesky factors of a small symmetric positive definite matrix, lower triangle by rows, in place.</summary>
internal static class Cholesky
{
    public static bool Factor(double[] a, int n)
    {
        for (var j = 0; j < n; j++)
        {
            var rowJ = a.AsSpan(j * n, j + 1);
            var diagonal = rowJ[j];
            for (var k = 0; k < j; k++)
            {
                diagonal -= rowJ[k] * rowJ[k];
            }

            // Not "<=": a NaN must fail as well.
            if (!(diagonal > 0))
            {
                return false;
            }

            var root = Math.Sqrt(diagonal);
            rowJ[j] = root;
            var inverse = 1 / root;
            for (var i = j + 1; i < n; i++)
            {
                var rowI = a.AsSpan(i * n, j + 1);
                var sum = rowI[j];
                for (var k = 0; k < j; k++)
                {
                    sum -= rowI[k] * rowJ[k];
                }

                rowI[j] = sum * inverse;
            }
        }

        return true;
    }

    public static void Solve(double[] a, int n, double[] b)
    {
        for (var i = 0; i < n; i++)
        {
            var sum = b[i];
            for (var k = 0; k < i; k++)
            {
                sum -= a[(i * n) + k] * b[k];
            }

            b[i] = sum / a[(i * n) + i];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            var sum = b[i];
            for (var k = i + 1; k < n; k++)
            {
                sum -= a[(k * n) + i] * b[k];
            }

            b[i] = sum / a[(i * n) + i];
        }
    }
}
