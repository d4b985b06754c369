namespace Ashery.Blending;

/// <summary>
/// The linear programme of one support by the textbook tableau simplex with Bland's rule, lexicographic in
/// (infeasibility, error, unpriced share, cost, mass, name order). Slow and plain on purpose.
/// </summary>
internal static class PlainProgramme
{
    private const int Levels = 6;
    private const double Zero = 1e-11;

    /// <summary>The optimal amounts x, in the order of <paramref name="support"/>; null when the rows leave nothing.</summary>
    public static double[]? Solve(BlendModel model, List<int> support)
    {
        var (k, d, r) = (support.Count, model.Nutrients, model.RowCount);
        var rows = d + 1 + r;
        var columns = k + (2 * d) + 1 + r;
        var t = new double[rows + Levels, columns + 1];
        var basis = new int[rows];
        Fill(model, support, t, basis);
        for (var pivots = 0; ; pivots++)
        {
            var enter = Entering(t, rows, columns);
            if (enter < 0)
            {
                break;
            }

            var leave = Leaving(t, rows, columns, enter, basis);
            if (leave < 0 || pivots > 10_000)
            {
                throw new InvalidOperationException("A bounded programme had no end; this is a fault of the search.");
            }

            Pivot(t, rows + Levels, columns, leave, enter);
            basis[leave] = enter;
        }

        if (-t[rows, columns] > 1e-9)
        {
            return null;
        }

        var x = new double[k];
        for (var i = 0; i < rows; i++)
        {
            if (basis[i] < k)
            {
                x[basis[i]] = t[i, columns];
            }
        }

        return x;
    }

    private static void Fill(BlendModel model, List<int> support, double[,] t, int[] basis)
    {
        var (k, d, r) = (support.Count, model.Nutrients, model.RowCount);
        var rows = d + 1 + r;
        var columns = k + (2 * d) + 1 + r;
        var artificial = k + (2 * d);
        for (var c = 0; c < k; c++)
        {
            var i = support[c];
            for (var j = 0; j < d; j++)
            {
                t[j, c] = model.U[(i * d) + j];
            }

            t[d, c] = model.Brings[i];
            for (var g = 0; g < r; g++)
            {
                t[d + 1 + g, c] = model.Rows[(g * model.Columns) + i];
            }

            t[rows + 2, c] = model.Unpriced[i];
            t[rows + 3, c] = model.Cost[i];
            t[rows + 4, c] = model.Mass[i];
            t[rows + 5, c] = BlendModel.Rank(i);
        }

        for (var j = 0; j < d; j++)
        {
            t[j, k + j] = 1;
            t[j, k + d + j] = -1;
            t[rows + 1, k + j] = 1.0 / d;
            t[rows + 1, k + d + j] = 1.0 / d;
            t[j, columns] = 1;
            basis[j] = k + j;
        }

        t[d, artificial] = 1;
        t[d, columns] = 1;
        t[rows, artificial] = 1;
        basis[d] = artificial;
        for (var g = 0; g < r; g++)
        {
            t[d + 1 + g, artificial + 1 + g] = 1;
            basis[d + 1 + g] = artificial + 1 + g;
        }

        // Price out the first basis: the shortfalls cost 1/d each, the artificial one.
        for (var c = 0; c <= columns; c++)
        {
            t[rows, c] -= t[d, c];
            for (var j = 0; j < d; j++)
            {
                t[rows + 1, c] -= t[j, c] / d;
            }
        }
    }

    private static int Entering(double[,] t, int rows, int columns)
    {
        for (var c = 0; c < columns; c++)
        {
            for (var level = 0; level < Levels; level++)
            {
                var reduced = t[rows + level, c];
                if (reduced < -Zero)
                {
                    return c;
                }

                if (reduced > Zero)
                {
                    break;
                }
            }
        }

        return -1;
    }

    private static int Leaving(double[,] t, int rows, int columns, int enter, int[] basis)
    {
        var leave = -1;
        var best = double.PositiveInfinity;
        for (var i = 0; i < rows; i++)
        {
            if (t[i, enter] > Zero)
            {
                var ratio = Math.Max(0, t[i, columns]) / t[i, enter];
                if (ratio < best - 1e-13 || (ratio <= best + 1e-13 && basis[i] < basis[leave]))
                {
                    best = Math.Min(best, ratio);
                    leave = i;
                }
            }
        }

        return leave;
    }

    private static void Pivot(double[,] t, int rows, int columns, int leave, int enter)
    {
        var p = 1 / t[leave, enter];
        for (var c = 0; c <= columns; c++)
        {
            t[leave, c] *= p;
        }

        for (var i = 0; i < rows; i++)
        {
            var f = t[i, enter];
            if (i != leave && f != 0)
            {
                for (var c = 0; c <= columns; c++)
                {
                    t[i, c] -= f * t[leave, c];
                }

                t[i, enter] = 0;
            }
        }
    }
}
