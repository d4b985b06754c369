using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Ashery.Blending;

/// <content>The dual simplex itself.</content>
internal sealed unsafe partial class BlendProgramme
{
    /// <summary>How a solve ended.</summary>
    public enum Outcome
    {
        Optimal,

        /// <summary>The value has passed the cutoff; nothing below it is left.</summary>
        AboveCutoff,

        /// <summary>The rows leave no blend.</summary>
        Infeasible,

        /// <summary>Step limit: the value is still a lower bound.</summary>
        Unfinished,
    }

    /// <summary>
    /// A dual feasible start: deviations basic below zero, side rows slack, and the one column that is cheapest against
    /// those signs in the sum row.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public bool Start()
    {
        var first = CheapestAlone();
        if (first < 0)
        {
            return false;
        }

        for (var r = 0; r < RowCount; r++)
        {
            basic[r] = width + r;
            rowBasic[r] = r != d;
            sign[r] = -1;
        }

        basic[d] = first;
        Refactor();
        return true;
    }

    /// <summary>Runs to the optimum, or until the value passes the cutoff.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public Outcome Run(double cutoff)
    {
        var limit = 60 + (20 * RowCount);
        for (var step = 0; step < limit; step++)
        {
            if (pi[d] > cutoff)
            {
                return Outcome.AboveCutoff;
            }

            var row = Leaving(out var s);
            if (row < 0)
            {
                return Outcome.Optimal;
            }

            Steps++;
            var rho = inverse + (row * stride);
            FillAlpha(rho);
            var enter = Entering(rho, s, out var t);
            var id = basic[row];
            if (IsDeviation(id) && t >= weightAbove + weightBelow)
            {
                Move(rho, s * (weightAbove + weightBelow), 0);
                sign[row] = -sign[row];
                continue;
            }

            if (enter < 0)
            {
                return Outcome.Infeasible;
            }

            Pivot(row, enter, rho, s);
        }

        return Outcome.Unfinished;
    }

    private int CheapestAlone()
    {
        var first = -1;
        var best = double.PositiveInfinity;
        for (var c = 0; c < Columns; c++)
        {
            if (excluded[c] || a[(d * width) + c] == 0)
            {
                continue;
            }

            double value = 0;
            for (var j = 0; j < d; j++)
            {
                value -= weightBelow * a[(j * width) + c];
            }

            if (first < 0 || value < best - Tied || (value <= best + Tied && LowerLevels(c, first)))
            {
                best = value;
                first = c;
            }
        }

        return first;
    }

    /// <summary>True when column c costs less than column e by the later objectives, both alone in the sum row.</summary>
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

    /// <summary>The basic variable farthest on the wrong side, and the direction s that mends it; -1 when none is.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Leaving(out double s)
    {
        var row = -1;
        var worst = Feasible;
        s = 0;
        for (var r = 0; r < RowCount; r++)
        {
            var v = inverse[(r * stride) + d];
            var id = basic[r];
            double wrong;
            if (IsDeviation(id))
            {
                wrong = -v * sign[r];
            }
            else
            {
                wrong = v < 0 || (IsColumn(id) && excluded[id]) ? Math.Abs(v) : 0;
            }

            if (wrong > worst)
            {
                worst = wrong;
                row = r;
                s = v < 0 ? -1 : 1;
            }
        }

        return row;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FillAlpha(double* rho)
    {
        for (var c = 0; c < width; c += 4)
        {
            var sum = Vector256.Load(a + c) * rho[0];
            for (var r = 1; r < RowCount; r++)
            {
                sum = Vector256.MultiplyAddEstimate(Vector256.Load(a + (r * width) + c), Vector256.Create(rho[r]), sum);
            }

            sum.Store(alpha + c);
        }
    }

    /// <summary>
    /// The variable that may enter soonest, by column number or width + row; -1 when none may. The step t is
    /// infinite then.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Entering(double* rho, double s, out double t)
    {
        var least = Vector256.Create(double.PositiveInfinity);
        var vs = Vector256.Create(s);
        var pivotable = Vector256.Create(Pivotable);
        for (var c = 0; c < width; c += 4)
        {
            var slope = Vector256.Load(alpha + c) * vs;
            var ratio = Vector256.Max(Vector256.Load(reduced + c), Vector256<double>.Zero) / slope;
            ratio += Vector256.Load(closed + c);
            ratio = Vector256.ConditionalSelect(Vector256.GreaterThan(slope, pivotable), ratio, Vector256.Create(double.PositiveInfinity));
            least = Vector256.Min(least, ratio);
        }

        t = Math.Min(Math.Min(least[0], least[1]), Math.Min(least[2], least[3]));
        for (var r = 0; r < RowCount; r++)
        {
            t = Math.Min(t, RowRatio(rho, s, r));
        }

        if (double.IsPositiveInfinity(t))
        {
            return -1;
        }

        return Choose(rho, s, t);
    }

    /// <summary>Ratio of the variable that belongs to a row: its deviation, or its slack.</summary>
    private double RowRatio(double* rho, double s, int r)
    {
        var slope = s * rho[r];
        if (r == d || rowBasic[r] || Math.Abs(slope) <= Pivotable)
        {
            return double.PositiveInfinity;
        }

        if (r > d)
        {
            return slope > 0 ? Math.Max(0, -pi[r]) / slope : double.PositiveInfinity;
        }

        return slope > 0 ? Math.Max(0, weightBelow - pi[r]) / slope : Math.Max(0, weightAbove + pi[r]) / -slope;
    }

    /// <summary>Of the variables whose ratio ties with t, the lexicographically least.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Choose(double* rho, double s, double t)
    {
        var enter = -1;
        var limit = t + Tied;
        for (var c = 0; c < width; c++)
        {
            var slope = alpha[c] * s;
            if (slope > Pivotable && closed[c] == 0 && Math.Max(0, reduced[c]) <= limit * slope
                && (enter < 0 || Before(c, enter, rho, s)))
            {
                enter = c;
            }
        }

        for (var r = 0; r < RowCount; r++)
        {
            if (RowRatio(rho, s, r) <= limit && (enter < 0 || Before(width + r, enter, rho, s)))
            {
                enter = width + r;
            }
        }

        return enter;
    }

    private bool Before(int id, int other, double* rho, double s)
    {
        for (var l = 0; l < levels; l++)
        {
            var difference = LevelRatio(l, id, rho, s) - LevelRatio(l, other, rho, s);
            if (Math.Abs(difference) > Tied)
            {
                return difference < 0;
            }
        }

        return false;
    }

    private double LevelRatio(int level, int id, double* rho, double s)
    {
        var price = level == 0 ? pi2 : LevelPrices(level);
        if (IsColumn(id))
        {
            var value = level == 0 ? reduced2[id] : ReducedAt(level, price, id);
            return value / (alpha[id] * s);
        }

        var r = id - width;
        return -price[r] / (s * rho[r]);
    }

    private double ReducedAt(int level, double* price, int c)
    {
        var value = cost[(level * width) + c];
        for (var r = 0; r < RowCount; r++)
        {
            value -= price[r] * a[(r * width) + c];
        }

        return value;
    }

    /// <summary>Multipliers of a later objective, made only when a tie asks for them.</summary>
    private double* LevelPrices(int level)
    {
        for (var k = 0; k < RowCount; k++)
        {
            scratch[k] = 0;
        }

        for (var r = 0; r < RowCount; r++)
        {
            if (IsColumn(basic[r]))
            {
                var c = cost[(level * width) + basic[r]];
                for (var k = 0; k < RowCount; k++)
                {
                    scratch[k] += c * inverse[(r * stride) + k];
                }
            }
        }

        return scratch;
    }

    /// <summary>Moves the multipliers of both kept objectives along a row of the inverse.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Move(double* rho, double step, double step2)
    {
        var v1 = Vector256.Create(-step);
        var v2 = Vector256.Create(-step2);
        for (var c = 0; c < width; c += 4)
        {
            var slope = Vector256.Load(alpha + c);
            Vector256.MultiplyAddEstimate(slope, v1, Vector256.Load(reduced + c)).Store(reduced + c);
            Vector256.MultiplyAddEstimate(slope, v2, Vector256.Load(reduced2 + c)).Store(reduced2 + c);
        }

        for (var k = 0; k < stride; k += 4)
        {
            var row = Vector256.Load(rho + k);
            Vector256.MultiplyAddEstimate(row, -v1, Vector256.Load(pi + k)).Store(pi + k);
            Vector256.MultiplyAddEstimate(row, -v2, Vector256.Load(pi2 + k)).Store(pi2 + k);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Pivot(int row, int enter, double* rho, double s)
    {
        var column = scratch + stride;
        double step;
        double step2;
        if (IsColumn(enter))
        {
            step = Math.Max(0, reduced[enter] / (alpha[enter] * s)) * s;
            step2 = reduced2[enter] / alpha[enter];
            for (var r = 0; r < RowCount; r++)
            {
                double sum = 0;
                for (var k = 0; k < RowCount; k++)
                {
                    sum += inverse[(r * stride) + k] * a[(k * width) + enter];
                }

                column[r] = sum;
            }
        }
        else
        {
            var k = enter - width;
            var direction = k < d ? -1 : 1;
            step = RowRatio(rho, s, k) * s;
            step2 = -pi2[k] / rho[k];
            for (var r = 0; r < RowCount; r++)
            {
                column[r] = direction * inverse[(r * stride) + k];
            }
        }

        // A deviation that comes in falls when s rho > 0 and rises otherwise; its slope is the sign it gets.
        var entersAbove = !IsColumn(enter) && s * rho[enter - width] < 0;
        Move(rho, step, step2);
        Exchange(row, enter, column, entersAbove);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Exchange(int row, int enter, double* column, bool entersAbove)
    {
        var inv = Vector256.Create(1 / column[row]);
        var pivotRow = inverse + (row * stride);
        for (var k = 0; k < stride; k += 4)
        {
            (Vector256.Load(pivotRow + k) * inv).Store(pivotRow + k);
        }

        for (var r = 0; r < RowCount; r++)
        {
            if (r != row)
            {
                var f = Vector256.Create(-column[r]);
                var target = inverse + (r * stride);
                for (var k = 0; k < stride; k += 4)
                {
                    Vector256.MultiplyAddEstimate(Vector256.Load(pivotRow + k), f, Vector256.Load(target + k)).Store(target + k);
                }
            }
        }

        var leave = basic[row];
        if (IsColumn(leave))
        {
            closed[leave] = excluded[leave] ? double.PositiveInfinity : 0;
        }
        else
        {
            rowBasic[leave - width] = false;
        }

        basic[row] = enter;
        if (IsColumn(enter))
        {
            closed[enter] = double.PositiveInfinity;
            reduced[enter] = 0;
            reduced2[enter] = 0;
        }
        else
        {
            rowBasic[enter - width] = true;
            sign[row] = entersAbove ? 1 : -1;
        }
    }
}
