using Ashery.Blending.Model;
using Ashery.Blending.WholeSteps;

namespace Ashery.Blending;

/// <summary>
/// The best blends in whole steps of a scale or whole scoops, for a batch between two masses.
/// </summary>
/// <remarks>
/// Method: every set of columns gets the error of its free amounts from a linear programme; no whole steps of the set
/// can do better. The sets are taken in that order, and inside each a depth-first search over the counts cuts every
/// count's range by linear inequalities: the mass window, the side rows, and for each nutrient j
/// |s_j / tau_j - 1| &lt;= D_j, the largest deviation that the last blend kept leaves (<see cref="StepCounts"/>). When the next
/// set's free error passes the last blend kept, the list is proved. Passes with a growing error cap keep the first
/// ranges short. Where there are too many sets, only the best free blends and their extensions by one column are
/// searched, and the gap to the free optimum is stated.
/// Complexity: one small programme a set, then a few counts for each set that survives.
/// The whole-step problem may use more columns than a free blend ever needs.
/// </remarks>
public static class WholeStepSearch
{
    private const int MostSets = 400_000;
    private const long WorkPerProgramme = 20;
    private static readonly double[] Caps = [0.005, 0.03, 0.2, double.PositiveInfinity];

    /// <summary>The best blends in whole steps, and whether they are proved best.</summary>
    public static WholeStepAnswer Find(WholeStepRequest request)
    {
        StepGuard.Check(request);
        var model = new BlendModel(request.Blend);
        var usable = Usable(model, request);
        var best = new BestSteps(request.Blend.Best);
        var counts = new StepCounts(model, request, best);
        var sets = StepSets.All(model, usable, MostSets, request.WorkLimit / WorkPerProgramme, out var complete);
        var finished = complete;
        counts.Work += sets.Count * WorkPerProgramme;
        foreach (var cap in Caps)
        {
            if (!Pass(sets, counts, best, cap, request.WorkLimit))
            {
                finished = false;
                break;
            }

            if (best.Full)
            {
                break;
            }
        }

        var least = sets.Count > 0 ? sets.LeastError : 0;
        var gap = finished || best.Found.Count == 0 ? 0 : Math.Max(0, best.Found[0].Error - least);
        return new WholeStepAnswer([.. best.Found.Select(f => f.ToBlend(model, request))], finished, gap);
    }

    private static bool Pass(StepSets sets, StepCounts counts, BestSteps best, double cap, long workLimit)
    {
        for (var s = 0; s < sets.Count; s++)
        {
            var limit = Math.Min(cap, best.Cutoff);
            if (sets.Error(s) > limit)
            {
                return true;
            }

            if (counts.Work > workLimit)
            {
                return false;
            }

            counts.Search(sets.Members(s), limit);
        }

        return true;
    }

    /// <summary>Columns of which one step fits the batch; without side rows a column without nutrients only dilutes.</summary>
    private static int[] Usable(BlendModel model, WholeStepRequest request)
    {
        var usable = new List<int>();
        for (var i = 0; i < model.Columns; i++)
        {
            if (request.StepGrams[model.Order[i]] <= request.ToGrams * (1 + StepCounts.Slack) && (model.Brings[i] > 0 || model.RowCount > 0))
            {
                usable.Add(i);
            }
        }

        return [.. usable];
    }
}
