using System.Runtime.InteropServices;
using Ashery.Blending.Model;

namespace Ashery.Blending.Programme;

/// <summary>
/// The linear programme of a blend, solved by a warm-started, lexicographic dual simplex over rows of vectors.
/// </summary>
/// <remarks>
/// Rows: d deviations sum_i (u_ij - b_i) x_i - v_j = 0, the sum sum_i b_i x_i = 1, and side rows sum_i g_i x_i + s = 0.
/// Only the sum row has a right-hand side, so the basic values are column d of the inverse of the basis and the value of
/// the programme is the multiplier of that row. A deviation v_j is one variable with slopes w+ above and w- below zero,
/// not two variables: every non-basic variable stands at zero, its only kink or bound.
/// The dual ratio test is lexicographic in the objectives (error, unpriced share, cost, mass, names), which makes the
/// optimum unique and keeps degenerate programmes from cycling. The value never falls from one step to the next and
/// bounds the optimum from below, so a solve may stop early.
/// Complexity: one step costs about R m fused multiply-adds for R = d + 1 + rows and m columns.
/// Numbers: values within 1e-11 of a bound count as on it; ratios within 1e-11 of each other count as tied; pivots
/// below 1e-9 are refused.
/// </remarks>
internal sealed unsafe partial class BlendProgramme : IDisposable
{
    private const double Feasible = 1e-11;
    private const double Tied = 1e-11;
    private const double Pivotable = 1e-9;

    private readonly BlendModel model;
    private readonly int d;
    private readonly int levels;
    private readonly double weightAbove;
    private readonly double weightBelow;
    private readonly int width;
    private readonly int stride;
    private readonly double* slab;

    // Shapes: a is [R][width] and cost [levels][width] over columns; inverse is [R][stride], one column of the inverse after the other.
    private readonly double* a;
    private readonly double* cost;
    private readonly double* alpha;
    private readonly double* ratio;
    private readonly double* shut;
    private readonly double* rho;
    private readonly double* entering;
    private readonly double* rowRatio;
    private readonly double* prices;
    private readonly double* reduced;
    private readonly double* reduced2;
    private readonly double* closed;
    private readonly double* inverse;
    private readonly double* pi;
    private readonly double* pi2;
    private readonly double* sign;
    private readonly int* basic;
    private readonly bool* rowBasic;
    private readonly double* snapshot;
    private readonly int stateSize;

    /// <summary>Room for <paramref name="capacity"/> columns of the model's programme.</summary>
    public BlendProgramme(BlendModel model, int capacity)
    {
        this.model = model;
        d = model.Nutrients;
        RowCount = model.ProgrammeRows;
        levels = model.Levels.Length;
        weightAbove = model.WeightAbove;
        weightBelow = model.WeightBelow;
        width = (capacity + 7) & ~7;
        stride = (RowCount + 7) & ~7;
        var state = (3 * width) + (stride * (RowCount + 5));
        var size = (nuint)((width * (RowCount + levels + 3)) + (4 * stride) + (2 * state));
        slab = (double*)NativeMemory.AlignedAlloc(size * sizeof(double), 64);
        NativeMemory.Clear(slab, size * sizeof(double));
        var at = slab;
        a = Take(ref at, width * RowCount);
        cost = Take(ref at, width * levels);
        alpha = Take(ref at, width);
        ratio = Take(ref at, width);
        shut = Take(ref at, width);
        rho = Take(ref at, stride);
        entering = Take(ref at, stride);
        rowRatio = Take(ref at, stride);
        prices = Take(ref at, stride);

        // From here on the state that a snapshot copies in one go.
        reduced = Take(ref at, width);
        reduced2 = Take(ref at, width);
        closed = Take(ref at, width);
        inverse = Take(ref at, stride * RowCount);
        pi = Take(ref at, stride);
        pi2 = Take(ref at, stride);
        sign = Take(ref at, stride);
        basic = (int*)Take(ref at, stride);
        rowBasic = (bool*)Take(ref at, stride);
        stateSize = (int)(at - reduced);
        snapshot = Take(ref at, stateSize);
    }

    public int RowCount { get; }

    /// <summary>Columns in use.</summary>
    public int Columns { get; private set; }

    /// <summary>Error of the optimum, or its lower bound when a solve stopped early.</summary>
    public double Value => pi[d];

    /// <summary>Steps taken since the start, for reports.</summary>
    public long Steps { get; private set; }

    public void Dispose() => NativeMemory.AlignedFree(slab);

    /// <summary>Takes all of the model's columns.</summary>
    public void LoadAll()
    {
        Columns = model.Columns;
        for (var r = 0; r < RowCount; r++)
        {
            var row = a + (r * width);
            for (var c = 0; c < Columns; c++)
            {
                row[c] = model.Stacked[(c * RowCount) + r];
            }
        }

        for (var l = 0; l < levels; l++)
        {
            Marshal.Copy(model.Levels[l], 0, (nint)(cost + (l * width)), Columns);
        }

        OpenAll();
    }

    /// <summary>Takes the columns named.</summary>
    public void Load(ReadOnlySpan<int> columns)
    {
        Columns = columns.Length;
        fixed (double* stacked = model.Stacked)
        {
            for (var c = 0; c < columns.Length; c++)
            {
                var from = stacked + (columns[c] * RowCount);
                for (var r = 0; r < RowCount; r++)
                {
                    a[(r * width) + c] = from[r];
                }
            }
        }

        for (var l = 0; l < levels; l++)
        {
            var level = model.Levels[l];
            for (var c = 0; c < columns.Length; c++)
            {
                cost[(l * width) + c] = level[columns[c]];
            }
        }

        OpenAll();
    }

    /// <summary>Opens every column in use.</summary>
    public void OpenAll()
    {
        for (var c = 0; c < width; c++)
        {
            shut[c] = c < Columns ? 0 : double.PositiveInfinity;
        }
    }

    /// <summary>Opens every column but those in the set.</summary>
    public void OpenAllBut(ReadOnlySpan<ulong> set)
    {
        OpenAll();
        for (var w = 0; w < set.Length; w++)
        {
            for (var bits = set[w]; bits != 0; bits &= bits - 1)
            {
                shut[(w << 6) + System.Numerics.BitOperations.TrailingZeroCount(bits)] = double.PositiveInfinity;
            }
        }
    }

    /// <summary>Shuts one column; a solve after it drives the column out.</summary>
    public void Shut(int column) => shut[column] = double.PositiveInfinity;

    /// <summary>Opens a column again, once the state from before it was shut is back.</summary>
    public void Open(int column) => shut[column] = 0;

    private static double* Take(ref double* at, int count)
    {
        var here = at;
        at += count;
        return here;
    }

    private bool IsColumn(int id) => id < width;

    private bool IsDeviation(int id) => id >= width && id < width + d;
}
