using System.Runtime.CompilerServices;
using Ashery.Blending.Model;
using Ashery.Blending.Programme;

namespace Ashery.Blending.Tree;

/// <summary>
/// All blends that add one column to a given set, or are that set: the set's own programme prices every candidate, and
/// only those that can still come in are solved.
/// </summary>
/// <remarks>
/// With pi the multipliers of the set's optimum e, a candidate with reduced cost r_i = -pi a_i has, by weak duality,
/// e + min(0, r_i) x_i as lower bound of the larger set's error, and x_i is at most the least (1 + D_j) / u_ij, D_j the
/// largest excess of nutrient j that the cutoff leaves. A candidate with r_i above zero would get no amount.
/// </remarks>
internal sealed class LastColumn(BlendModel model, BestBlends best, SupportSolver support)
{
    private readonly double[] reduced = new double[(model.Columns + 7) & ~7];
    private readonly double[] upper = new double[model.Columns];
    private readonly int[] members = new int[Math.Min(model.Request.AtMost, model.Columns) + 1];
    private double upperFor = double.NaN;

    public long Swept { get; private set; }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Sweep(ReadOnlySpan<int> held, BlendProgramme all, ReadOnlySpan<ulong> without)
    {
        Swept++;
        var programme = support.Programme;
        programme.Load(held);
        var solved = support.Optimal(double.PositiveInfinity);
        var error = double.PositiveInfinity;
        if (solved)
        {
            error = programme.Value;
            if (error <= best.Cutoff && support.Read(held) is { } blend)
            {
                best.Add(blend);
            }

            all.Price(programme, reduced);
        }

        FindUpper();
        for (var i = 0; i < model.Columns; i++)
        {
            if ((without[i >> 6] >> (i & 63) & 1) != 0 || held.Contains(i))
            {
                continue;
            }

            if (solved && (reduced[i] > BestBlends.Margin || error + (reduced[i] * upper[i]) > best.Cutoff))
            {
                continue;
            }

            Try(held, i);
        }
    }

    private void Try(ReadOnlySpan<int> held, int i)
    {
        var at = 0;
        while (at < held.Length && held[at] < i)
        {
            at++;
        }

        held[..at].CopyTo(members);
        members[at] = i;
        held[at..].CopyTo(members.AsSpan(at + 1));
        var count = held.Length + 1;
        if (support.Solve(members.AsSpan(0, count), best.Cutoff) is { } blend)
        {
            best.Add(blend);
        }
    }

    private void FindUpper()
    {
        var cutoff = best.Cutoff;
        if (cutoff == upperFor)
        {
            return;
        }

        upperFor = cutoff;
        for (var i = 0; i < model.Columns; i++)
        {
            upper[i] = model.LargestAmount(i, cutoff);
        }
    }
}
