using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Ashery.Blending.Programme;

/// <content>The dual simplex itself; long, because its loops share registers and read best in one place.</content>
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

    /// <summary>Runs to the optimum, or until the value passes the cutoff.</summary>
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
            for (var k = 0; k < RowCount; k++)
            {
                rho[k] = inverse[(k * stride) + row];
            }

            var t = Math.Min(ColumnRatios(s), RowRatios(s));
            var id = basic[row];
            var turn = id >= width && id < width + d ? weightAbove + weightBelow : double.PositiveInfinity;
            var enter = t <= turn + Tied && !double.IsPositiveInfinity(t) ? Choose(s, t) : -1;
            if (enter >= 0 && (t < turn - Tied || Negative(enter, s)))
            {
                Exchange(row, enter, s);
            }
            else if (double.IsPositiveInfinity(turn))
            {
                return Outcome.Infeasible;
            }
            else
            {
                // The deviation changes sides before anything else can come in.
                Move(s * turn, 0);
                sign[row] = -sign[row];
            }
        }

        return Outcome.Unfinished;
    }

    /// <summary>The basic variable farthest on the wrong side, and the direction s that mends it; -1 when none is.</summary>
    private int Leaving(out double s)
    {
        var row = -1;
        var worst = Feasible;
        var values = inverse + (d * stride);
        for (var r = 0; r < RowCount; r++)
        {
            var v = values[r];
            var id = basic[r];
            var wrong = id < width ? (shut[id] > 0 ? Math.Abs(v) : -v) : id < width + d ? -v * sign[r] : -v;
            if (wrong > worst)
            {
                worst = wrong;
                row = r;
            }
        }

        s = row >= 0 && values[row] < 0 ? -1 : 1;
        return row;
    }

    /// <summary>The row of the tableau and each column's ratio in it; returns the least ratio.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double ColumnRatios(double s)
    {
        var least = Vector512.Create(double.PositiveInfinity);
        var vs = Vector512.Create(s);
        var infinite = Vector512.Create(double.PositiveInfinity);
        for (var c = 0; c < width; c += 8)
        {
            var sum = Vector512.Load(a + c) * Vector512.Create(rho[0]);
            for (var r = 1; r < RowCount; r++)
            {
                sum = Vector512.MultiplyAddEstimate(Vector512.Load(a + (r * width) + c), Vector512.Create(rho[r]), sum);
            }

            sum.Store(alpha + c);
            var slope = sum * vs;
            var quotient = (Vector512.Max(Vector512.Load(reduced + c), Vector512<double>.Zero) / slope) + Vector512.Load(closed + c);
            quotient = Vector512.ConditionalSelect(Vector512.GreaterThan(slope, Vector512.Create(Pivotable)), quotient, infinite);
            quotient.Store(ratio + c);
            least = Vector512.Min(least, quotient);
        }

        var four = Vector256.Min(least.GetLower(), least.GetUpper());
        var two = Vector128.Min(four.GetLower(), four.GetUpper());
        return Math.Min(two[0], two[1]);
    }

    /// <summary>The ratios of the variables that belong to rows, deviations and slacks; returns the least.</summary>
    private double RowRatios(double s)
    {
        var least = double.PositiveInfinity;
        for (var r = 0; r < RowCount; r++)
        {
            var slope = s * rho[r];
            var value = double.PositiveInfinity;
            if (r != d && !rowBasic[r] && Math.Abs(slope) > Pivotable)
            {
                if (slope > 0)
                {
                    value = Math.Max(0, (r < d ? weightBelow : 0) - pi[r]) / slope;
                }
                else if (r < d)
                {
                    value = Math.Max(0, weightAbove + pi[r]) / -slope;
                }
            }

            rowRatio[r] = value;
            least = Math.Min(least, value);
        }

        return least;
    }

    /// <summary>Of the variables whose ratio ties with t, the lexicographically least.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Choose(double s, double t)
    {
        var enter = -1;
        var limit = Vector512.Create(t + Tied);
        for (var c = 0; c < width; c += 8)
        {
            var bits = Vector512.LessThanOrEqual(Vector512.Load(ratio + c), limit).ExtractMostSignificantBits();
            for (; bits != 0; bits &= bits - 1)
            {
                var id = c + BitOperations.TrailingZeroCount(bits);
                if (enter < 0 || Before(id, enter, s))
                {
                    enter = id;
                }
            }
        }

        for (var r = 0; r < RowCount; r++)
        {
            if (rowRatio[r] <= t + Tied && (enter < 0 || Before(width + r, enter, s)))
            {
                enter = width + r;
            }
        }

        return enter;
    }

    private bool Before(int id, int other, double s)
    {
        for (var l = 0; l < levels; l++)
        {
            var price = l == 0 ? pi2 : LevelPrices(l);
            var difference = LevelRatio(l, price, id, s) - LevelRatio(l, price, other, s);
            if (Math.Abs(difference) > Tied)
            {
                return difference < 0;
            }
        }

        return false;
    }

    /// <summary>True when the first later objective that is not zero at this variable is negative: it goes before a change of sides.</summary>
    private bool Negative(int id, double s)
    {
        for (var l = 0; l < levels; l++)
        {
            var value = LevelRatio(l, l == 0 ? pi2 : LevelPrices(l), id, s);
            if (Math.Abs(value) > Tied)
            {
                return value < 0;
            }
        }

        return false;
    }

    private double LevelRatio(int level, double* price, int id, double s)
    {
        if (id >= width)
        {
            return -price[id - width] / (s * rho[id - width]);
        }

        var value = level == 0 ? reduced2[id] : ReducedAt(level, price, id);
        return value / (alpha[id] * s);
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
            double sum = 0;
            for (var r = 0; r < RowCount; r++)
            {
                if (basic[r] < width)
                {
                    sum += cost[(level * width) + basic[r]] * inverse[(k * stride) + r];
                }
            }

            prices[k] = sum;
        }

        return prices;
    }

    /// <summary>Moves the multipliers of both kept objectives along the row of the inverse.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Move(double step, double step2)
    {
        var v1 = Vector512.Create(-step);
        var v2 = Vector512.Create(-step2);
        for (var c = 0; c < width; c += 8)
        {
            var slope = Vector512.Load(alpha + c);
            Vector512.MultiplyAddEstimate(slope, v1, Vector512.Load(reduced + c)).Store(reduced + c);
            Vector512.MultiplyAddEstimate(slope, v2, Vector512.Load(reduced2 + c)).Store(reduced2 + c);
        }

        for (var k = 0; k < stride; k += 8)
        {
            var row = Vector512.Load(rho + k);
            (Vector512.Load(pi + k) - (row * v1)).Store(pi + k);
            (Vector512.Load(pi2 + k) - (row * v2)).Store(pi2 + k);
        }
    }

    /// <summary>Brings a variable into the basis for the one in this row.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Exchange(int row, int enter, double s)
    {
        double step;
        double step2;
        var above = false;
        if (enter < width)
        {
            step = Math.Max(0, reduced[enter] / (alpha[enter] * s)) * s;
            step2 = reduced2[enter] / alpha[enter];
            FillEntering(enter);
        }
        else
        {
            // A deviation's own column is -e, a slack's e. The deviation falls when s rho > 0 and rises otherwise.
            var own = enter - width;
            step = rowRatio[own] * s;
            step2 = -pi2[own] / rho[own];
            above = s * rho[own] < 0;
            var direction = Vector512.Create(own < d ? -1.0 : 1.0);
            for (var k = 0; k < stride; k += 8)
            {
                (Vector512.Load(inverse + (own * stride) + k) * direction).Store(entering + k);
            }
        }

        Move(step, step2);
        Eliminate(row);
        var leave = basic[row];
        if (leave < width)
        {
            closed[leave] = shut[leave];
        }
        else
        {
            rowBasic[leave - width] = false;
        }

        basic[row] = enter;
        if (enter < width)
        {
            closed[enter] = double.PositiveInfinity;
            reduced[enter] = 0;
            reduced2[enter] = 0;
        }
        else
        {
            rowBasic[enter - width] = true;
            sign[row] = above ? 1 : -1;
        }
    }

    /// <summary>The inverse times a column.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FillEntering(int column)
    {
        for (var k = 0; k < stride; k += 8)
        {
            var sum = Vector512<double>.Zero;
            for (var r = 0; r < RowCount; r++)
            {
                sum = Vector512.MultiplyAddEstimate(Vector512.Load(inverse + (r * stride) + k), Vector512.Create(a[(r * width) + column]), sum);
            }

            sum.Store(entering + k);
        }
    }

    /// <summary>Turns the inverse so that the entering column becomes the unit vector of this row.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Eliminate(int row)
    {
        var pivot = 1 / entering[row];
        entering[row] = 0;
        for (var r = 0; r < RowCount; r++)
        {
            var at = inverse + (r * stride);
            var f = at[row] * pivot;
            var vf = Vector512.Create(-f);
            for (var k = 0; k < stride; k += 8)
            {
                Vector512.MultiplyAddEstimate(Vector512.Load(entering + k), vf, Vector512.Load(at + k)).Store(at + k);
            }

            at[row] = f;
        }
    }
}
