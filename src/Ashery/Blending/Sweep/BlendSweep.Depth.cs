using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Ashery.Blending.Sweep;

/// <content>The recursion and its innermost loop.</content>
internal sealed unsafe partial class BlendSweep
{
    /// <summary>
    /// Chooses the next member among the candidates at this depth (so many members are chosen), projects it out, tests all
    /// sets that one more candidate makes, and goes on.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Descend(int depth, double targetSquared, double extra)
    {
        var here = levels[depth];
        var there = levels[depth + 1];
        var rows = matrix[depth - 1];
        for (var p = chosen[depth - 1] + 1; p < n; p++)
        {
            if (Barred(depth, p))
            {
                continue;
            }

            chosen[depth] = p;
            if (PastLast(depth))
            {
                return;
            }

            var row = rows + (p * width);
            var (inverse, deeper) = Project(here.Squared[p], row[p], extra);
            var slope = here.Product[p] * inverse;
            var rest = targetSquared - (here.Product[p] * slope);
            var k = Excess(rest, deeper);
            var vInverse = Vector512.Create(inverse);
            var vSlope = Vector512.Create(slope);
            var vk = Vector512.Create(k);
            var vHalf = Vector512.Create(k > 0 ? k / 2 : double.NegativeInfinity);
            for (var i = (p + 1) & ~7; i < width; i += 8)
            {
                var c = Vector512.Load(row + i);
                var s = Vector512.Load(here.Squared + i) - (c * c * vInverse);
                var b = Vector512.Load(here.Product + i) - (c * vSlope);
                c.Store(there.Column + i);
                s.Store(there.Squared + i);
                b.Store(there.Product + i);
                var bits = (Vector512.GreaterThanOrEqual(b, vHalf) & Vector512.GreaterThanOrEqual(b * b, vk * s)).ExtractMostSignificantBits();
                if (bits != 0)
                {
                    Survivors(depth + 1, i, bits, p);
                }
            }

            if (depth == most - 3)
            {
                LastTwo(depth + 1, rest, deeper, rows, there.Column, inverse);
            }
            else
            {
                Deflate(rows, matrix[depth], there.Column, inverse, p);
                Descend(depth + 1, rest, deeper);
            }
        }
    }

    /// <summary>
    /// One over the squared length outside the hull; zero, and a wider ball, for a member nearly inside it.
    /// </summary>
    private static (double Inverse, double Extra) Project(double squared, double full, double extra) =>
        squared > NearlyInside * Math.Abs(full) && squared > 1e-200
            ? (1 / squared, extra)
            : (0, extra + Math.Sqrt(Math.Max(0, squared)));

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Deflate(double* from, double* into, double* column, double inverse, int p)
    {
        for (var a = p + 1; a < n; a++)
        {
            var f = Vector512.Create(-column[a] * inverse);
            var source = from + (a * width);
            var target = into + (a * width);
            for (var i = (p + 1) & ~7; i < width; i += 8)
            {
                Vector512.MultiplyAddEstimate(Vector512.Load(column + i), f, Vector512.Load(source + i)).Store(target + i);
            }
        }
    }

    /// <summary>
    /// All pairs of last members. So many members are chosen; <paramref name="column"/> belongs to the last of them, which
    /// is not yet projected out of <paramref name="rows"/>. Eight last members stay in registers while the last but one
    /// runs, so that the loop is long and its only vector load is a row of inner products.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void LastTwo(int depth, double targetSquared, double extra, double* rows, double* column, double columnInverse)
    {
        var level = levels[depth];
        var first = chosen[depth - 1] + 1;
        PrepareLeaf(level, first, targetSquared, extra, column, columnInverse);
        var inverse = leaf.Inverse;
        var factor = leaf.Factor;
        var slope = leaf.Slope;
        var excess = leaf.Excess;
        var half = leaf.Half;
        for (var block = (first + 1) & ~7; block < width; block += 8)
        {
            var vColumn = Vector512.Load(column + block);
            var vSquared = Vector512.Load(level.Squared + block);
            var vProduct = Vector512.Load(level.Product + block);
            var highest = Vector512.Create(double.NegativeInfinity);
            var until = Math.Min(n - 1, block + 7);
            var row = rows + (first * width) + block;
            for (var p = first; p < until; p++, row += width)
            {
                var c = Vector512.MultiplyAddEstimate(vColumn, Vector512.Create(factor[p]), Vector512.Load(row));
                var s = Vector512.MultiplyAddEstimate(c * Vector512.Create(inverse[p]), c, vSquared);
                var b = Vector512.MultiplyAddEstimate(c, Vector512.Create(slope[p]), vProduct);
                var outside = Vector512.MultiplyAddEstimate(s, Vector512.Create(excess[p]), b * b);
                highest = Vector512.Max(highest, Vector512.Min(b - Vector512.Create(half[p]), outside));
            }

            if (Vector512.GreaterThanOrEqualAny(highest, Vector512<double>.Zero))
            {
                Again(depth, first, block, rows, column, level);
            }
        }
    }

    /// <summary>
    /// What the loop needs of each last but one member p, for all at once: -1/|w|^2, -(column factor), -(r.w/|w|^2),
    /// -(excess) and half the excess, signs turned so that the loop only adds.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void PrepareLeaf(Level level, int first, double targetSquared, double extra, double* column, double columnInverse)
    {
        var full = levels[1].Squared;
        var radius = Vector512.Create(Radius() + extra);
        var rest = Vector512.Create(targetSquared - (Rounding * (targetSquared + largest)));
        var zero = Vector512<double>.Zero;
        for (var p = first & ~7; p < width; p += 8)
        {
            var squared = Vector512.Load(level.Squared + p);
            var outside = Vector512.GreaterThan(squared, Vector512.Load(full + p) * NearlyInside) & Vector512.GreaterThan(squared, Vector512.Create(1e-200));
            var inverse = Vector512.ConditionalSelect(outside, Vector512<double>.One / squared, zero);
            var deeper = radius + Vector512.ConditionalSelect(outside, zero, Vector512.Sqrt(Vector512.Max(squared, zero)));
            var product = Vector512.Load(level.Product + p);
            var slope = product * inverse;
            var excess = rest - (product * slope) - (deeper * deeper);
            (-inverse).Store(leaf.Inverse + p);
            (-slope).Store(leaf.Slope + p);
            (-excess).Store(leaf.Excess + p);
            Vector512.ConditionalSelect(Vector512.GreaterThan(excess, zero), excess * 0.5, Vector512.Create(double.NegativeInfinity)).Store(leaf.Half + p);
            (Vector512.Load(column + p) * -columnInverse).Store(leaf.Factor + p);
        }
    }

    /// <summary>The pairs of a block in which some pair passed, one by one.</summary>
    private void Again(int depth, int first, int block, double* rows, double* column, Level level)
    {
        for (var p = first; p < Math.Min(n - 1, block + 7); p++)
        {
            var row = rows + (p * width);
            for (var i = Math.Max(block, p + 1); i < Math.Min(n, block + 8); i++)
            {
                var c = row[i] + (column[i] * leaf.Factor[p]);
                var s = level.Squared[i] + (c * leaf.Inverse[p] * c);
                var b = level.Product[i] + (c * leaf.Slope[p]);

                // A little wider than the vector test, so that its rounding cannot matter.
                var slack = 1e-12 * (Math.Abs(leaf.Excess[p]) + (b * b));
                if (b - leaf.Half[p] >= -slack && (b * b) + (leaf.Excess[p] * s) >= -slack)
                {
                    chosen[depth] = p;
                    chosen[depth + 1] = i;
                    Try(depth + 1);
                }
            }
        }
    }

    private void Survivors(int depth, int from, ulong bits, int above)
    {
        for (; bits != 0; bits &= bits - 1)
        {
            var i = from + BitOperations.TrailingZeroCount(bits);
            if (i > above && i < n)
            {
                chosen[depth] = i;
                Try(depth);
            }
        }
    }
}
