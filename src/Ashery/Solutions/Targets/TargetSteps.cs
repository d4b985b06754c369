using Ashery.Blending.Amounts;

namespace Ashery.Solutions.Targets;

/// <summary>
/// The best amounts in whole steps of a scale: branch and bound over the proved search. A node fixes a range of steps for some materials; its best free amounts bound
/// all whole ones in it, the material farthest from a whole step is split in two. Ends with the proof, or by its limit with the gap.
/// </summary>
internal static class TargetSteps
{
    private const int MostNodes = 3000;
    private const double Whole = 1e-6;

    /// <param name="request">The free problem.</param>
    /// <param name="step">g/L of one step.</param>
    /// <returns>The best found; whether it is proved; null when no whole steps keep the limits.</returns>
    public static (AmountBlend? Best, bool Proved) Find(AmountRequest request, double step)
    {
        AmountBlend? best = null;
        var open = new PriorityQueue<(int Column, int Steps, bool AtLeast)[], double>();
        open.Enqueue([], 0);
        for (var nodes = 0; open.TryDequeue(out var ranges, out var bound); nodes++)
        {
            if (best is not null && bound >= best.Error - 1e-12)
            {
                return (best, true);
            }

            if (nodes >= MostNodes)
            {
                return (best, false);
            }

            var answer = AmountSearch.Find(request with { Best = 1, Rows = [.. request.Rows, .. ranges.Select(r => Row(request, r, step))] });
            if (answer.Blends.Count == 0 || (best is not null && answer.Blends[0].Error >= best.Error - 1e-12))
            {
                continue;
            }

            var free = answer.Blends[0];
            best = Better(best, Rounded(request, free, step));
            var split = Farthest(free, step);
            if (split < 0)
            {
                continue;
            }

            var down = (int)Math.Floor((free.Masses[split] / step) + Whole);
            open.Enqueue([.. ranges, (free.Members[split], down, false)], free.Error);
            open.Enqueue([.. ranges, (free.Members[split], down + 1, true)], free.Error);
        }

        return (best, true);
    }

    private static AmountRow Row(AmountRequest request, (int Column, int Steps, bool AtLeast) range, double step)
    {
        var coefficients = new double[request.Columns.Count];
        coefficients[range.Column] = range.AtLeast ? -1 : 1;
        return new("steps", coefficients, (range.AtLeast ? 1 : -1) * range.Steps * step);
    }

    private static AmountBlend? Better(AmountBlend? a, AmountBlend? b) => b is null || (a is not null && a.Error <= b.Error) ? a : b;

    // To the nearest steps, if the limits still hold.
    private static AmountBlend? Rounded(AmountRequest request, AmountBlend free, double step)
    {
        var members = new List<int>();
        var masses = new List<double>();
        for (var k = 0; k < free.Members.Count; k++)
        {
            var steps = Math.Round(free.Masses[k] / step);
            if (steps > 0)
            {
                members.Add(free.Members[k]);
                masses.Add(steps * step);
            }
        }

        foreach (var row in request.Rows)
        {
            double sum = row.Constant, size = Math.Abs(row.Constant);
            for (var k = 0; k < members.Count; k++)
            {
                sum += row.Coefficients[members[k]] * masses[k];
                size += Math.Abs(row.Coefficients[members[k]] * masses[k]);
            }

            if (sum > 1e-9 * size)
            {
                return null;
            }
        }

        return AmountBlend.Of(request, members, masses);
    }

    private static int Farthest(AmountBlend free, double step)
    {
        var found = -1;
        var farthest = Whole;
        for (var k = 0; k < free.Members.Count; k++)
        {
            var steps = free.Masses[k] / step;
            var off = Math.Abs(steps - Math.Round(steps));
            if (off > farthest)
            {
                (found, farthest) = (k, off);
            }
        }

        return found;
    }
}
