using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ashery.Blending;

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

    private readonly int d;
    private readonly int levels;
    private readonly double weightAbove;
    private readonly double weightBelow;
    private readonly int width;
    private readonly int stride;
    private readonly double* slab;

    // Shape: a is [R][width], cost is [levels][width], inverse is [R][stride].
    private readonly double* a;
    private readonly double* cost;
    private readonly double* inverse;
    private readonly double* pi;
    private readonly double* pi2;
    private readonly double* reduced;
    private readonly double* reduced2;
    private readonly double* alpha;
    private readonly double* closed;
    private readonly double* scratch;
    private readonly double* snapshot;
    private readonly int stateSize;
    private readonly int* basic;
    private readonly double* sign;
    private readonly bool* rowBasic;
    private readonly bool[] excluded;

    /// <summary>Room for <paramref name="capacity"/> columns of the model's programme.</summary>
    public BlendProgramme(BlendModel model, int capacity)
    {
        d = model.Nutrients;
        RowCount = d + 1 + model.RowCount;
        levels = model.Levels.Length;
        weightAbove = model.WeightAbove;
        weightBelow = model.WeightBelow;
        width = (capacity + 3) & ~3;
        stride = (RowCount + 3) & ~3;
        var size = (nuint)((width * (RowCount + levels + 1 + 6)) + (stride * (2 + (2 * (RowCount + 5)))));
        slab = (double*)NativeMemory.AlignedAlloc(size * sizeof(double), 64);
        NativeMemory.Clear(slab, size * sizeof(double));
        var at = slab;
        a = Take(ref at, width * RowCount);
        cost = Take(ref at, width * levels);
        alpha = Take(ref at, width);
        scratch = Take(ref at, stride * 2);

        // From here on the state that a snapshot copies in one go.
        reduced = Take(ref at, width);
        reduced2 = Take(ref at, width);
        closed = Take(ref at, width);
        inverse = Take(ref at, stride * RowCount);
        pi = Take(ref at, stride);
        pi2 = Take(ref at, stride);
        basic = (int*)Take(ref at, stride);
        sign = Take(ref at, stride);
        rowBasic = (bool*)Take(ref at, stride);
        stateSize = (int)(at - reduced);
        snapshot = Take(ref at, stateSize);
        excluded = new bool[width];
    }

    public int RowCount { get; }

    /// <summary>Columns in use.</summary>
    public int Columns { get; private set; }

    /// <summary>Error of the optimum, or its lower bound when a solve stopped early.</summary>
    public double Value => pi[d];

    /// <summary>Second objective of the optimum.</summary>
    public double SecondValue => pi2[d];

    /// <summary>Steps taken since the start, for reports.</summary>
    public long Steps { get; private set; }

    public void Dispose() => NativeMemory.AlignedFree(slab);

    /// <summary>Takes the model's columns, all of them or those named.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Load(BlendModel model, ReadOnlySpan<int> columns)
    {
        Columns = columns.Length;
        for (var c = 0; c < columns.Length; c++)
        {
            var i = columns[c];
            for (var j = 0; j < d; j++)
            {
                a[(j * width) + c] = model.U[(i * d) + j] - model.Brings[i];
            }

            a[(d * width) + c] = model.Brings[i];
            for (var r = 0; r < model.RowCount; r++)
            {
                a[((d + 1 + r) * width) + c] = model.Rows[(r * model.Columns) + i];
            }

            for (var l = 0; l < levels; l++)
            {
                cost[(l * width) + c] = model.Levels[l][i];
            }

            excluded[c] = false;
        }

        for (var c = columns.Length; c < width; c++)
        {
            excluded[c] = true;
            for (var r = 0; r < RowCount; r++)
            {
                a[(r * width) + c] = 0;
            }
        }
    }

    private static double* Take(ref double* at, int count)
    {
        var here = at;
        at += count;
        return here;
    }

    private int DeviationId(int j) => width + j;

    private bool IsColumn(int id) => id < width;

    private bool IsDeviation(int id) => id >= width && id < width + d;
}
