using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Ashery.Blending.Model;

namespace Ashery.Blending.Programme;

/// <content>Bases: starting, keeping, restoring, reading.</content>
internal sealed unsafe partial class BlendProgramme
{
    /// <summary>
    /// A dual feasible start: deviations basic below zero, side rows slack, and in the sum row the one column that is
    /// cheapest against those signs; false when no open column counts in the sum. Beside a fixed column deviations start above zero: no
    /// column that adds to them can then lower the value.
    /// </summary>
    public bool Start()
    {
        var first = CheapestAlone();
        if (first < 0)
        {
            return false;
        }

        // The inverse of that basis is known without elimination: -1 for deviations, 1 for slacks, and the column's own
        // entries in the column of the sum row.
        NativeMemory.Clear(inverse, (nuint)(stride * RowCount * sizeof(double)));
        for (var r = 0; r < RowCount; r++)
        {
            basic[r] = width + r;
            rowBasic[r] = r != d;
            sign[r] = model.Aim == BlendAim.Amounts ? 1 : -1;
            var entry = a[(r * width) + first];
            inverse[(r * stride) + r] = r < d ? -1 : 1;
            inverse[(d * stride) + r] = r < d ? entry : r > d ? -entry : 1;
        }

        basic[d] = first;
        PriceAll();
        return true;
    }

    /// <summary>Takes up a saved basis over the open columns; false when it is singular.</summary>
    public bool Restore(ReadOnlySpan<short> from)
    {
        for (var r = 0; r < RowCount; r++)
        {
            rowBasic[r] = false;
        }

        for (var r = 0; r < RowCount; r++)
        {
            basic[r] = from[r] < 0 ? -from[r] - 1 : from[r];
            sign[r] = from[r] < 0 ? -1 : 1;
            if (basic[r] >= width)
            {
                rowBasic[basic[r] - width] = true;
            }
        }

        if (!Invert())
        {
            return false;
        }

        PriceAll();
        return true;
    }

    /// <summary>Keeps the whole state, so that several solves can start from it.</summary>
    public void Keep() => Buffer.MemoryCopy(reduced, snapshot, stateSize * sizeof(double), stateSize * sizeof(double));

    /// <summary>Back to the state kept last; which columns are shut stays as it is.</summary>
    public void GoBack() => Buffer.MemoryCopy(snapshot, reduced, stateSize * sizeof(double), stateSize * sizeof(double));

    /// <summary>The basis as RowCount numbers, negative for a deviation below zero.</summary>
    public void Save(Span<short> into)
    {
        for (var r = 0; r < RowCount; r++)
        {
            into[r] = (short)(IsDeviation(basic[r]) && sign[r] < 0 ? -basic[r] - 1 : basic[r]);
        }
    }

    /// <summary>The columns with a positive amount, ascending, and their amounts; returns how many.</summary>
    public int Positive(Span<int> columns, Span<double> amounts)
    {
        var count = 0;
        for (var r = 0; r < RowCount; r++)
        {
            var v = inverse[(d * stride) + r];
            if (IsColumn(basic[r]) && v > FoundBlend.Positive)
            {
                var at = count++;
                for (; at > 0 && columns[at - 1] > basic[r]; at--)
                {
                    columns[at] = columns[at - 1];
                    amounts[at] = amounts[at - 1];
                }

                columns[at] = basic[r];
                amounts[at] = v;
            }
        }

        return count;
    }

    /// <summary>Reduced costs of this programme's columns under another programme's multipliers.</summary>
    public void Price(BlendProgramme by, Span<double> into)
    {
        fixed (double* to = into)
        {
            Price(by.pi, null, to);
        }
    }

    /// <summary>Multiplier of a row at the optimum.</summary>
    public double Multiplier(int row) => pi[row];

    /// <summary>Value of a later objective at the present basis.</summary>
    public double LevelValue(int level)
    {
        double sum = 0;
        for (var r = 0; r < RowCount; r++)
        {
            if (IsColumn(basic[r]))
            {
                sum += cost[(level * width) + basic[r]] * inverse[(d * stride) + r];
            }
        }

        return sum;
    }

    /// <summary>
    /// True when every other blend has a larger error, or the same error and a larger second objective: all variables out of the basis
    /// would cost something.
    /// </summary>
    public bool Unrivalled()
    {
        for (var c = 0; c < Columns; c++)
        {
            if (closed[c] == 0 && reduced[c] <= Tied && !(reduced[c] >= -Tied && reduced2[c] > Tied))
            {
                return false;
            }
        }

        for (var r = 0; r < RowCount; r++)
        {
            if (r == d || rowBasic[r])
            {
                continue;
            }

            if (r > d)
            {
                if (-pi[r] <= Tied && -pi2[r] <= Tied)
                {
                    return false;
                }
            }
            else if ((weightAbove + pi[r] <= Tied && pi2[r] <= Tied) || (weightBelow - pi[r] <= Tied && -pi2[r] <= Tied))
            {
                return false;
            }
        }

        return true;
    }

    private int CheapestAlone()
    {
        var first = -1;
        var best = double.PositiveInfinity;
        for (var c = 0; c < Columns; c++)
        {
            if (shut[c] > 0 || a[(d * width) + c] == 0)
            {
                continue;
            }

            double value = 0;
            for (var j = 0; j < d; j++)
            {
                value -= a[(j * width) + c];
            }

            value *= weightBelow;
            if (first < 0 || value < best - Tied || (value <= best + Tied && LowerLevels(c, first)))
            {
                best = value;
                first = c;
            }
        }

        return first;
    }

    /// <summary>True when column c costs less than column e by the later objectives, each alone in the sum row.</summary>
    private bool LowerLevels(int c, int e)
    {
        for (var l = 0; l < levels; l++)
        {
            var difference = cost[(l * width) + c] - cost[(l * width) + e];
            if (Math.Abs(difference) > Tied)
            {
                return difference < 0;
            }
        }

        return false;
    }

    /// <summary>Multipliers and reduced costs of both kept objectives from the inverse.</summary>
    private void PriceAll()
    {
        for (var k = 0; k < RowCount; k++)
        {
            var column = inverse + (k * stride);
            double first = 0;
            double second = 0;
            for (var r = 0; r < RowCount; r++)
            {
                var id = basic[r];
                if (id < width)
                {
                    second += cost[id] * column[r];
                }
                else if (id < width + d)
                {
                    first += (sign[r] > 0 ? weightAbove : -weightBelow) * column[r];
                }
            }

            pi[k] = first;
            pi2[k] = second;
        }

        Price(pi, null, reduced);
        Price(pi2, cost, reduced2);
        Buffer.MemoryCopy(shut, closed, width * sizeof(double), width * sizeof(double));

        for (var r = 0; r < RowCount; r++)
        {
            if (basic[r] < width)
            {
                closed[basic[r]] = double.PositiveInfinity;
                reduced[basic[r]] = 0;
                reduced2[basic[r]] = 0;
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Price(double* price, double* own, double* into)
    {
        for (var c = 0; c < width; c += 8)
        {
            var sum = own is null ? Vector512<double>.Zero : Vector512.Load(own + c);
            for (var r = 0; r < RowCount; r++)
            {
                sum = Vector512.MultiplyAddEstimate(Vector512.Load(a + (r * width) + c), Vector512.Create(-price[r]), sum);
            }

            sum.Store(into + c);
        }
    }

    /// <summary>
    /// Inverts the basis: deviations and slacks are unit columns and cost nothing; the columns follow one by one with
    /// the largest pivot.
    /// </summary>
    private bool Invert()
    {
        NativeMemory.Clear(inverse, (nuint)(stride * RowCount * sizeof(double)));
        var taken = stackalloc bool[RowCount];
        var ids = stackalloc int[RowCount];
        var signs = stackalloc double[RowCount];
        for (var r = 0; r < RowCount; r++)
        {
            inverse[(r * stride) + r] = rowBasic[r] && r < d ? -1 : 1;
            taken[r] = rowBasic[r];
            ids[r] = width + r;
        }

        for (var b = 0; b < RowCount; b++)
        {
            if (basic[b] >= width)
            {
                signs[basic[b] - width] = sign[b];
                continue;
            }

            FillEntering(basic[b]);
            var pivot = -1;
            for (var r = 0; r < RowCount; r++)
            {
                if (!taken[r] && (pivot < 0 || Math.Abs(entering[r]) > Math.Abs(entering[pivot])))
                {
                    pivot = r;
                }
            }

            if (pivot < 0 || Math.Abs(entering[pivot]) < 1e-13)
            {
                return false;
            }

            taken[pivot] = true;
            ids[pivot] = basic[b];
            Eliminate(pivot);
        }

        for (var r = 0; r < RowCount; r++)
        {
            basic[r] = ids[r];
            sign[r] = signs[r];
        }

        return true;
    }
}
