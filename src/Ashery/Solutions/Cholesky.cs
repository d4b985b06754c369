using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ashery.Solutions;

/// <summary>
/// A symmetric positive definite system with two right sides, by square-root-free Cholesky factors (L D Lᵀ). Columns lie one after another, the
/// right sides as two more rows under the matrix, so that forward substitution is part of the elimination.
/// </summary>
internal static class Cholesky
{
    /// <summary>Length of a column for this many unknowns: whole vectors.</summary>
    public static int Stride(int n) => (n + 2 + 7) / 8 * 8;

    /// <summary>
    /// Solves in place; only the lower triangle is read. False when the matrix is not positive definite.
    /// </summary>
    /// <param name="a">Column j from j * stride on: rows j to n - 1 of the matrix, then both right sides.</param>
    /// <param name="n">Number of unknowns.</param>
    /// <param name="first">Answer for the first right side.</param>
    /// <param name="second">Answer for the second.</param>
    public static bool Solve(double[] a, int n, double[] first, double[] second)
    {
        var stride = Stride(n);
        ArgumentOutOfRangeException.ThrowIfLessThan(a.Length, n * stride);
        ref var start = ref MemoryMarshal.GetArrayDataReference(a);
        for (var j = 0; j < n; j++)
        {
            var pivot = a[(j * stride) + j];

            // Not "<=": a NaN must fail as well.
            if (!(pivot > 0))
            {
                return false;
            }

            var inverse = 1 / pivot;
            for (var k = j + 1; k < n; k++)
            {
                var f = Vector512.Create(-a[(j * stride) + k] * inverse);
                for (var i = k & ~7; i < stride; i += 8)
                {
                    var at = (nuint)((k * stride) + i);
                    Vector512.MultiplyAddEstimate(f, Vector512.LoadUnsafe(ref start, (nuint)((j * stride) + i)), Vector512.LoadUnsafe(ref start, at)).StoreUnsafe(ref start, at);
                }
            }

            // The upper triangle is free: the inverse of the pivot waits there for the way back.
            a[j * stride] = j == 0 ? a[0] : inverse;
        }

        a[0] = 1 / a[0];
        for (var j = n - 1; j >= 0; j--)
        {
            var column = a.AsSpan(j * stride, stride);
            double one = column[n], two = column[n + 1];
            for (var i = j + 1; i < n; i++)
            {
                one -= column[i] * first[i];
                two -= column[i] * second[i];
            }

            first[j] = one * column[0];
            second[j] = two * column[0];
        }

        return true;
    }
}
