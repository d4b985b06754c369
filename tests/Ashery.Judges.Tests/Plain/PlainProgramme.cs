using Ashery.Blending;

namespace Ashery.Plain;

/// <summary>
/// The linear programme of one set of columns by the textbook tableau simplex, lexicographic in (infeasibility, error,
/// share without a price, cost, mass, order of names).
/// </summary>
internal sealed class PlainProgramme
{
    private const int Levels = 6;
    private const double Zero = 1e-11;
    private readonly int d;
    private readonly int r;
    private readonly double[] u;
    private readonly double[] brings;
    private readonly double[] g;
    private readonly double[][] levels;
    private readonly bool[] unpriced;
    private readonly double[] cost;
    private readonly double[] t;
    private readonly int[] basis;
    private readonly double[] x;
    private int rows;
    private int width;
    private int k;

    public PlainProgramme(BlendRequest request, int[] order)
    {
        d = request.Target.Count;
        r = request.Rows.Count;
        var m = order.Length;
        var sum = request.Target.Sum();
        u = new double[m * d];
        brings = new double[m];
        g = new double[m * r];
        unpriced = new bool[m];
        cost = new double[m];
        levels = [new double[m], new double[m], new double[m], new double[m]];
        for (var i = 0; i < m; i++)
        {
            var column = request.Columns[order[i]];
            var total = column.Content.Sum();
            brings[i] = total > 0 ? 1 : 0;
            var scale = total > 0 ? total : 1;
            for (var j = 0; j < d; j++)
            {
                u[(i * d) + j] = column.Content[j] / scale / (request.Target[j] / sum);
            }

            unpriced[i] = column.Price is null;
            cost[i] = (column.Price ?? 0) / scale;
            levels[0][i] = unpriced[i] ? 1 : 0;
            levels[1][i] = cost[i];
            levels[2][i] = 1 / scale;
            levels[3][i] = Math.Sqrt(i + 1.0);
            for (var l = 0; l < r; l++)
            {
                g[(i * r) + l] = request.Rows[l].Coefficients[order[i]] / scale;
            }
        }

        for (var l = 0; l < r; l++)
        {
            var largest = Enumerable.Range(0, m).Max(i => Math.Abs(g[(i * r) + l]));
            for (var i = 0; i < m && largest > 0; i++)
            {
                g[(i * r) + l] /= largest;
            }
        }

        var most = Math.Min(request.AtMost, m);
        t = new double[(d + 1 + r + Levels) * (most + (2 * d) + (2 * r) + 2)];
        basis = new int[d + 1 + r];
        x = new double[most];
    }

    public double Error { get; private set; }

    public double Cost { get; private set; }

    public double Amount(int place) => x[place];

    /// <summary>Solves; false when the side rows leave nothing.</summary>
    public bool Solve(ReadOnlySpan<int> support)
    {
        k = support.Length;
        rows = d + 1 + r;
        width = k + (2 * d) + (2 * r) + 1;
        Array.Clear(t, 0, (rows + Levels) * width);
        if (!Fill(support))
        {
            return false;
        }

        for (var pivots = 0; ; pivots++)
        {
            var enter = Entering(bland: pivots > 60);
            if (enter < 0)
            {
                break;
            }

            var leave = Leaving(enter);
            if (leave < 0 || pivots > 10_000)
            {
                throw new InvalidOperationException("A bounded programme had no end.");
            }

            Pivot(leave, enter);
        }

        return -t[(rows * width) + width - 1] <= 1e-9 && Read(support);
    }

    private bool Read(ReadOnlySpan<int> support)
    {
        Array.Clear(x);
        for (var i = 0; i < rows; i++)
        {
            if (basis[i] < k)
            {
                x[basis[i]] = t[(i * width) + width - 1];
            }
        }

        double error = 0;
        Cost = 0;
        for (var j = 0; j < d; j++)
        {
            double sum = -1;
            for (var c = 0; c < k; c++)
            {
                sum += u[(support[c] * d) + j] * x[c];
            }

            error += Math.Abs(sum) / d;
        }

        for (var c = 0; c < k; c++)
        {
            Cost += unpriced[support[c]] ? double.PositiveInfinity : cost[support[c]] * x[c];
        }

        Error = error;
        return true;
    }

    /// <summary>
    /// Starts from the first column that brings nutrients, alone: shortfalls and excesses are basic by their sign, side
    /// rows by their slack or, where the column breaks them, by an artificial.
    /// </summary>
    private bool Fill(ReadOnlySpan<int> support)
    {
        var first = 0;
        while (first < k && brings[support[first]] == 0)
        {
            first++;
        }

        if (first == k)
        {
            return false;
        }

        var last = width - 1;
        var f = support[first];
        for (var c = 0; c < k; c++)
        {
            var i = support[c];
            t[(d * width) + c] = brings[i];
            for (var j = 0; j < d; j++)
            {
                t[(j * width) + c] = u[(i * d) + j] - (brings[i] * u[(f * d) + j]);
            }

            for (var l = 0; l < r; l++)
            {
                t[((d + 1 + l) * width) + c] = g[(i * r) + l] - (brings[i] * g[(f * r) + l]);
            }

            for (var level = 0; level < 4; level++)
            {
                t[((rows + 2 + level) * width) + c] = levels[level][i] - (brings[i] * levels[level][f]);
            }
        }

        t[(d * width) + last] = 1;
        basis[d] = first;
        for (var j = 0; j < d; j++)
        {
            t[(j * width) + k + j] = 1;
            t[(j * width) + k + d + j] = -1;
            t[(j * width) + last] = 1 - u[(f * d) + j];
            t[((rows + 1) * width) + k + j] = 1.0 / d;
            t[((rows + 1) * width) + k + d + j] = 1.0 / d;
            var above = t[(j * width) + last] < 0;
            basis[j] = above ? k + d + j : k + j;
            Settle(j, above, rows + 1, 1.0 / d);
        }

        for (var l = 0; l < r; l++)
        {
            var row = d + 1 + l;
            var slack = k + (2 * d) + l;
            t[(row * width) + slack] = 1;
            t[(row * width) + last] = -g[(f * r) + l];
            var broken = t[(row * width) + last] < 0;
            basis[row] = broken ? slack + r : slack;
            if (broken)
            {
                t[(row * width) + slack + r] = -1;
                t[(rows * width) + slack + r] = 1;
                Settle(row, true, rows, 1);
            }
        }

        return true;
    }

    /// <summary>Turns a row so that its basic variable has coefficient one, and prices it out of its objective.</summary>
    private void Settle(int row, bool negate, int objective, double price)
    {
        for (var c = 0; c < width; c++)
        {
            ref var v = ref t[(row * width) + c];
            v = negate ? -v : v;
            t[(objective * width) + c] -= price * v;
        }
    }

    private int Entering(bool bland)
    {
        var enter = -1;
        var level = Levels;
        double least = 0;
        for (var c = 0; c < width - 1; c++)
        {
            for (var l = 0; l < Levels && l <= level; l++)
            {
                var reduced = t[((rows + l) * width) + c];
                if (reduced > Zero)
                {
                    break;
                }

                if (reduced < -Zero)
                {
                    if (bland)
                    {
                        return c;
                    }

                    if (l < level || reduced < least)
                    {
                        (enter, level, least) = (c, l, reduced);
                    }

                    break;
                }
            }
        }

        return enter;
    }

    private int Leaving(int enter)
    {
        var leave = -1;
        var best = double.PositiveInfinity;
        for (var i = 0; i < rows; i++)
        {
            var slope = t[(i * width) + enter];
            if (slope > Zero)
            {
                var ratio = Math.Max(0, t[(i * width) + width - 1]) / slope;
                if (ratio < best - 1e-13 || (ratio <= best + 1e-13 && basis[i] < basis[leave]))
                {
                    best = Math.Min(best, ratio);
                    leave = i;
                }
            }
        }

        return leave;
    }

    private void Pivot(int leave, int enter)
    {
        var pivotRow = t.AsSpan(leave * width, width);
        var p = 1 / pivotRow[enter];
        for (var c = 0; c < pivotRow.Length; c++)
        {
            pivotRow[c] *= p;
        }

        for (var i = 0; i < rows + Levels; i++)
        {
            var row = t.AsSpan(i * width, width);
            var f = row[enter];
            if (i != leave && f != 0)
            {
                for (var c = 0; c < row.Length; c++)
                {
                    row[c] -= f * pivotRow[c];
                }

                row[enter] = 0;
            }
        }

        basis[leave] = enter;
    }
}
