using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Ashery.Blending;

/// <content>Bases: keeping, restoring, reading.</content>
internal sealed unsafe partial class BlendProgramme
{
    /// <summary>Inverts the basis anew and prices every column; false when the basis is singular.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public bool Refactor()
    {
        if (!Invert())
        {
            return false;
        }

        Price(0, pi, reduced, error: true);
        Price(0, pi2, reduced2, error: false);
        for (var c = 0; c < width; c++)
        {
            closed[c] = excluded[c] ? double.PositiveInfinity : 0;
        }

        for (var r = 0; r < RowCount; r++)
        {
            if (IsColumn(basic[r]))
            {
                closed[basic[r]] = double.PositiveInfinity;
                reduced[basic[r]] = 0;
                reduced2[basic[r]] = 0;
            }
        }

        return true;
    }

    /// <summary>Opens every column, or all but those in the set.</summary>
    public void Exclude(ReadOnlySpan<ulong> set)
    {
        for (var c = 0; c < Columns; c++)
        {
            excluded[c] = !set.IsEmpty && (set[c >> 6] >> (c & 63) & 1) != 0;
        }
    }

    /// <summary>Shuts one column; a solve after it drives the column out.</summary>
    public void Exclude(int column)
    {
        excluded[column] = true;
        closed[column] = double.PositiveInfinity;
    }

    /// <summary>Keeps the whole state, so that several solves can start from it.</summary>
    public void Keep() => new ReadOnlySpan<double>(reduced, stateSize).CopyTo(new Span<double>(snapshot, stateSize));

    /// <summary>Back to the state kept last; which columns are shut stays as it is.</summary>
    public void GoBack() => new ReadOnlySpan<double>(snapshot, stateSize).CopyTo(new Span<double>(reduced, stateSize));

    /// <summary>Opens a column shut after <see cref="Keep"/>.</summary>
    public void Open(int column) => excluded[column] = false;

    /// <summary>The basis as RowCount numbers, negative for a deviation below zero.</summary>
    public void Save(Span<short> into)
    {
        for (var r = 0; r < RowCount; r++)
        {
            into[r] = (short)(IsDeviation(basic[r]) && sign[r] < 0 ? -basic[r] - 1 : basic[r]);
        }
    }

    public void Restore(ReadOnlySpan<short> from)
    {
        new Span<bool>(rowBasic, RowCount).Clear();
        for (var r = 0; r < RowCount; r++)
        {
            basic[r] = from[r] < 0 ? -from[r] - 1 : from[r];
            sign[r] = from[r] < 0 ? -1 : 1;
            if (!IsColumn(basic[r]))
            {
                rowBasic[basic[r] - width] = true;
            }
        }
    }

    /// <summary>The columns with a positive amount, ascending, and their amounts; returns how many.</summary>
    public int Positive(Span<int> columns, Span<double> amounts)
    {
        var count = 0;
        for (var r = 0; r < RowCount; r++)
        {
            var v = inverse[(r * stride) + d];
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
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Price(BlendProgramme by, Span<double> into)
    {
        fixed (double* to = into)
        {
            for (var c = 0; c < width; c += 4)
            {
                var sum = Vector256<double>.Zero;
                for (var r = 0; r < RowCount; r++)
                {
                    sum = Vector256.MultiplyAddEstimate(Vector256.Load(a + (r * width) + c), Vector256.Create(-by.pi[r]), sum);
                }

                sum.Store(to + c);
            }
        }
    }

    /// <summary>Multipliers of the rows at the optimum, for a certificate.</summary>
    public double Multiplier(int row) => pi[row];

    /// <summary>Value of a later objective at the present basis.</summary>
    public double LevelValue(int level)
    {
        double sum = 0;
        for (var r = 0; r < RowCount; r++)
        {
            if (IsColumn(basic[r]))
            {
                sum += cost[(level * width) + basic[r]] * inverse[(r * stride) + d];
            }
        }

        return sum;
    }

    private void Price(int level, double* price, double* into, bool error)
    {
        for (var k = 0; k < stride; k++)
        {
            price[k] = 0;
        }

        for (var r = 0; r < RowCount; r++)
        {
            var c = IsColumn(basic[r])
                ? (error ? 0 : cost[(level * width) + basic[r]])
                : (error && IsDeviation(basic[r]) ? (sign[r] > 0 ? weightAbove : -weightBelow) : 0);
            if (c != 0)
            {
                for (var k = 0; k < RowCount; k++)
                {
                    price[k] += c * inverse[(r * stride) + k];
                }
            }
        }

        for (var c = 0; c < width; c += 4)
        {
            var sum = error ? Vector256<double>.Zero : Vector256.Load(cost + (level * width) + c);
            for (var r = 0; r < RowCount; r++)
            {
                sum = Vector256.MultiplyAddEstimate(Vector256.Load(a + (r * width) + c), Vector256.Create(-price[r]), sum);
            }

            sum.Store(into + c);
        }
    }

    /// <summary>Gauss-Jordan with row pivoting; deviations and slacks are unit columns and cost nothing to eliminate.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Invert()
    {
        var n = RowCount;
        for (var r = 0; r < n; r++)
        {
            for (var k = 0; k < stride; k++)
            {
                inverse[(r * stride) + k] = r == k ? 1 : 0;
            }
        }

        // Unit columns first: each goes to its own row, with its sign.
        var done = stackalloc bool[n];
        var place = stackalloc int[n];
        var pending = stackalloc int[n];
        var waiting = 0;
        for (var r = 0; r < n; r++)
        {
            done[r] = false;
        }

        for (var b = 0; b < n; b++)
        {
            var id = basic[b];
            if (IsColumn(id))
            {
                pending[waiting++] = b;
                continue;
            }

            var own = id - width;
            done[own] = true;
            place[b] = own;
            if (IsDeviation(id))
            {
                inverse[(own * stride) + own] = -1;
            }
        }

        var column = scratch + stride;
        for (var w = 0; w < waiting; w++)
        {
            var b = pending[w];
            var best = -1;
            for (var r = 0; r < n; r++)
            {
                double sum = 0;
                for (var k = 0; k < n; k++)
                {
                    sum += inverse[(r * stride) + k] * a[(k * width) + basic[b]];
                }

                column[r] = sum;
                if (!done[r] && (best < 0 || Math.Abs(sum) > Math.Abs(column[best])))
                {
                    best = r;
                }
            }

            if (best < 0 || Math.Abs(column[best]) < 1e-13)
            {
                return false;
            }

            done[best] = true;
            place[b] = best;
            EliminateColumn(best, column);
        }

        Permute(place);
        return true;
    }

    private void EliminateColumn(int pivot, double* column)
    {
        var pivotRow = inverse + (pivot * stride);
        var inv = Vector256.Create(1 / column[pivot]);
        for (var k = 0; k < stride; k += 4)
        {
            (Vector256.Load(pivotRow + k) * inv).Store(pivotRow + k);
        }

        for (var r = 0; r < RowCount; r++)
        {
            if (r != pivot && column[r] != 0)
            {
                var f = Vector256.Create(-column[r]);
                var target = inverse + (r * stride);
                for (var k = 0; k < stride; k += 4)
                {
                    Vector256.MultiplyAddEstimate(Vector256.Load(pivotRow + k), f, Vector256.Load(target + k)).Store(target + k);
                }
            }
        }
    }

    /// <summary>Row place[b] of the inverse belongs to basic variable b: rename the basics rather than move the rows.</summary>
    private void Permute(int* place)
    {
        var n = RowCount;
        var ids = stackalloc int[n];
        var signs = stackalloc double[n];
        for (var b = 0; b < n; b++)
        {
            ids[place[b]] = basic[b];
            signs[place[b]] = sign[b];
        }

        for (var r = 0; r < n; r++)
        {
            basic[r] = ids[r];
            sign[r] = signs[r];
        }
    }
}
