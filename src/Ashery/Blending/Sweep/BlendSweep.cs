using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Ashery.Blending.Model;
using Ashery.Blending.Programme;

namespace Ashery.Blending.Sweep;

/// <summary>
/// Depth-first pass over all sets of at most c columns with a vectorised geometric bound; a programme is solved only for
/// the sets that the bound leaves. Best when at most c columns is tighter than the number of nutrients.
/// </summary>
/// <remarks>
/// In coordinates v_ij = s_j (u_ij - 1) the target is the origin and a blend a convex mean of its columns' points. An
/// error of at most E keeps a blend inside |v| &lt;= rho = d E, for scales s_j chosen so that the ball just holds the polytope
/// of such deviations (<see cref="Ellipsoid"/>). Take the first member as base, w_i = v_i - v_1, t = -v_1, and project the further
/// members out one by one (one Cholesky row of inner products a member). With r the part of t and w that of a candidate
/// outside the members' hull and k = |r|^2 - rho^2 &gt; 0, some s in [0, 1] with |r - s w| &lt;= rho exists only if
/// r.w &gt;= k / 2 and (r.w)^2 &gt;= k |w|^2: a handful of multiply-adds for eight candidates at a time.
/// Margins: rounding in the inner products is covered by 1e-11 of the largest; a member nearly inside the hull of the
/// others (below 1e-4 of its length) is not projected out but added to the radius.
/// Complexity: a fraction of a nanosecond a set, plus the programmes of those left.
/// </remarks>
internal sealed unsafe partial class BlendSweep : IDisposable
{
    private const double Rounding = 1e-11;
    private const double NearlyInside = 1e-8;

    private readonly BlendModel model;
    private readonly BestBlends best;
    private readonly SupportSolver support;
    private readonly int n;
    private readonly int width;
    private readonly int most;
    private readonly int least;
    private readonly int[] order;
    private readonly double* slab;
    private readonly double* gram;
    private readonly double*[] matrix;
    private readonly Level[] levels;
    private readonly LeafRows leaf;
    private readonly double* zeros;
    private readonly int[] chosen;
    private readonly int[] members;
    private double worstColumn;
    private double largest;
    private long looked;
    private int next;

    /// <summary>All sets of at most the request's number of columns.</summary>
    public BlendSweep(BlendModel model, BestBlends best)
        : this(model, best, Math.Min(model.Request.AtMost, model.Columns), 1)
    {
    }

    /// <summary>
    /// Sets of <paramref name="least"/> to <paramref name="most"/> columns. When the two are the same, sets come in the order of names and the pass
    /// ends as soon as all that follow would come after the last blend kept, errors and costs being equal.
    /// </summary>
    public BlendSweep(BlendModel model, BestBlends best, int most, int least)
    {
        this.model = model;
        this.best = best;
        this.most = most;
        this.least = least;
        support = new SupportSolver(model, most);
        order = ColumnOrder(model);
        n = order.Length;
        width = (n + 7) & ~7;
        chosen = new int[most + 1];
        members = new int[most + 1];
        matrix = new double*[Math.Max(1, most - 2)];
        levels = new Level[most + 1];
        var size = (nuint)((n * width * (1 + matrix.Length)) + (width * ((3 * levels.Length) + 6)));
        slab = (double*)NativeMemory.AlignedAlloc(size * sizeof(double), 64);
        NativeMemory.Clear(slab, size * sizeof(double));
        var at = slab;
        gram = Take(ref at, n * width);
        for (var l = 0; l < matrix.Length; l++)
        {
            matrix[l] = Take(ref at, n * width);
        }

        for (var l = 0; l < levels.Length; l++)
        {
            levels[l] = new Level(Take(ref at, width), Take(ref at, width), Take(ref at, width));
        }

        zeros = Take(ref at, width);
        leaf = new LeafRows(Take(ref at, width), Take(ref at, width), Take(ref at, width), Take(ref at, width), Take(ref at, width));
        FillGram();
    }

    /// <summary>Sets left by the bound and solved.</summary>
    public long Solved => support.Solved;

    /// <summary>Work so far in programmes; a look at a set's hull is a sixteenth of one.</summary>
    public long Work => support.Solved + (looked >> 4);

    /// <summary>True when a programme hit its step limit.</summary>
    public bool Doubtful => support.Doubtful;

    public void Dispose()
    {
        support.Dispose();
        NativeMemory.AlignedFree(slab);
    }

    /// <summary>Goes on until the best blends are proved (true) or so many programmes have been solved (false).</summary>
    public bool Run(long programmes)
    {
        var until = Work + programmes;
        for (; next < n && model.Brings[order[next]] > 0; next++)
        {
            if (Work > until)
            {
                return false;
            }

            chosen[0] = next;
            if (PastLast(0))
            {
                next = n;
                return true;
            }

            From(next);
        }

        return true;
    }

    private static double* Take(ref double* at, int count)
    {
        var here = at;
        at += count;
        return here;
    }

    /// <summary>Columns without nutrients last: they cannot be a base.</summary>
    private static int[] ColumnOrder(BlendModel model)
    {
        var sorted = new int[model.Columns];
        var at = 0;
        foreach (var bringing in new[] { true, false })
        {
            for (var i = 0; i < sorted.Length; i++)
            {
                if (model.Brings[i] > 0 == bringing)
                {
                    sorted[at++] = i;
                }
            }
        }

        return sorted;
    }

    private void FillGram()
    {
        var d = model.Nutrients;
        var scale = Ellipsoid.Scales(model.Target);
        var points = new double[n * d];
        for (var a = 0; a < n; a++)
        {
            double error = 0;
            for (var j = 0; j < d; j++)
            {
                var deviation = model.U[(order[a] * d) + j] - 1;
                points[(a * d) + j] = scale[j] * deviation;
                error += Math.Abs(deviation) / d;
            }

            worstColumn = Math.Max(worstColumn, error + BestBlends.Margin);
        }

        for (var a = 0; a < n; a++)
        {
            for (var b = 0; b <= a; b++)
            {
                double sum = 0;
                for (var j = 0; j < d; j++)
                {
                    sum += points[(a * d) + j] * points[(b * d) + j];
                }

                gram[(a * width) + b] = sum;
                gram[(b * width) + a] = sum;
            }
        }
    }

    /// <summary>All sets whose first member is this one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void From(int first)
    {
        chosen[0] = first;
        Try(0);
        if (most == 1)
        {
            return;
        }

        var norm = gram[(first * width) + first];
        Base(first, norm);
        var level = levels[1];
        for (var a = first + 1; a < n; a++)
        {
            var k = Excess(norm, 0);
            var b = level.Product[a];
            if (k <= 0 || (b >= k / 2 && b * b >= k * level.Squared[a]))
            {
                chosen[1] = a;
                Try(1);
            }
        }

        if (most == 3)
        {
            LastTwo(1, norm, 0, matrix[0], zeros, 0);
        }
        else if (most > 3)
        {
            Descend(1, norm, 0);
        }
    }

    /// <summary>Inner products relative to the base: of candidates with each other, with themselves and with the target.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Base(int first, double norm)
    {
        var own = gram + (first * width);
        var level = levels[1];
        var vNorm = Vector512.Create(norm);
        var from = (first + 1) & ~7;
        largest = norm;
        for (var a = first + 1; a < n; a++)
        {
            var row = gram + (a * width);
            var to = matrix[0] + (a * width);
            if (model.Brings[order[a]] > 0)
            {
                var shift = vNorm - Vector512.Create(own[a]);
                for (var i = from; i < width; i += 8)
                {
                    (Vector512.Load(row + i) - Vector512.Load(own + i) + shift).Store(to + i);
                }

                for (var i = n - 1; i > first && model.Brings[order[i]] == 0; i--)
                {
                    to[i] = 0;
                }

                level.Squared[a] = to[a];
                level.Product[a] = norm - own[a];
                largest = Math.Max(largest, to[a]);
            }
            else
            {
                new Span<double>(to, width).Clear();
                level.Squared[a] = 0;
                level.Product[a] = 0;
            }
        }
    }

    /// <summary>
    /// Radius of the ball that holds every blend still wanted. While there is no cutoff: a mean is no farther off than the worst column.
    /// </summary>
    private double Radius() => model.Nutrients * Math.Min(best.Cutoff, worstColumn);

    /// <summary>How far the target's rest, squared, is outside the ball; a margin for rounding taken off.</summary>
    private double Excess(double targetSquared, double extra)
    {
        var radius = Radius() + extra;
        return targetSquared - (radius * radius) - (Rounding * (targetSquared + largest));
    }

    private void Try(int depth)
    {
        if (depth + 1 < least)
        {
            return;
        }

        looked++;
        if (depth > 1 && !MayHoldTarget(depth))
        {
            return;
        }

        for (var k = 0; k <= depth; k++)
        {
            members[k] = order[chosen[k]];
        }

        var set = members.AsSpan(0, depth + 1);
        set.Sort();
        if (model.Compatible(set) && support.Solve(set, best.Cutoff) is { } blend)
        {
            best.Add(blend);
        }
    }

    /// <summary>In a pass over one size: true when every set that starts with those chosen so far comes after the last blend kept.</summary>
    private bool PastLast(int depth)
    {
        if (least != most || !best.Full || best.Last.Members.Length > most)
        {
            return false;
        }

        if (best.Last.Members.Length < most)
        {
            return true;
        }

        for (var k = 0; k <= depth; k++)
        {
            var difference = order[chosen[k]] - best.Last.Members[k];
            if (difference != 0)
            {
                return difference > 0;
            }
        }

        return false;
    }

    /// <summary>True when the column at this place may not join those chosen before.</summary>
    private bool Barred(int depth, int place)
    {
        if (model.Conflicts is not { } conflicts)
        {
            return false;
        }

        for (var k = 0; k < depth; k++)
        {
            if (conflicts[order[chosen[k]]].Has(order[place]))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Rows over the candidates at one depth.</summary>
    private readonly struct Level(double* squared, double* product, double* column)
    {
        /// <summary>|w|^2 outside the hull of the members chosen so far.</summary>
        public double* Squared { get; } = squared;

        /// <summary>r.w there.</summary>
        public double* Product { get; } = product;

        /// <summary>w.w_p with the last member projected out.</summary>
        public double* Column { get; } = column;
    }

    /// <summary>What the innermost loop needs of each last but one member.</summary>
    private readonly struct LeafRows(double* inverse, double* factor, double* slope, double* excess, double* half)
    {
        public double* Inverse { get; } = inverse;

        public double* Factor { get; } = factor;

        public double* Slope { get; } = slope;

        public double* Excess { get; } = excess;

        public double* Half { get; } = half;
    }
}
