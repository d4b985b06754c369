using Ashery.Blending.Model;
using Ashery.Blending.Programme;
using Ashery.Blending.Tree;

namespace Ashery.Blending.WholeSteps;

/// <summary>Sets of columns with the error of their free amounts, least first.</summary>
internal sealed class StepSets
{
    private readonly List<int[]> members = [];
    private readonly List<double> errors = [];
    private int[] order = [];

    public int Count => members.Count;

    public double LeastError => errors[order[0]];

    public int[] Members(int place) => members[order[place]];

    public double Error(int place) => errors[order[place]];

    /// <summary>
    /// Every compatible set that the rows leave, or, when there are more than <paramref name="mostSets"/>, the best free blends
    /// and their extensions by one column.
    /// </summary>
    public static StepSets All(BlendModel model, int[] usable, int mostSets, long mostProgrammes, out bool complete)
    {
        var sets = new StepSets();
        var most = Math.Min(model.Request.AtMost, usable.Length);
        if (most > 0)
        {
            using var support = new SupportSolver(model, most);
            complete = SupportCount.UpTo(usable.Length, most) <= Math.Min(mostSets, mostProgrammes);
            if (complete)
            {
                sets.Extend(model, support, usable, new int[most], 0, 0);
            }
            else
            {
                sets.Nearest(model, support, usable, most);
            }
        }
        else
        {
            complete = true;
        }

        sets.Sort();
        return sets;
    }

    private void Sort()
    {
        order = [.. Enumerable.Range(0, members.Count)];
        var keys = errors.ToArray();
        Array.Sort(keys, order);
    }

    private void Extend(BlendModel model, SupportSolver support, int[] usable, int[] set, int size, int next)
    {
        if (size > 0)
        {
            Add(support, set.AsSpan(0, size));
        }

        for (var i = next; i < usable.Length && size < set.Length; i++)
        {
            set[size] = usable[i];
            if (model.Fits(set.AsSpan(0, size), usable[i]))
            {
                Extend(model, support, usable, set, size + 1, i + 1);
            }
        }
    }

    private void Nearest(BlendModel model, SupportSolver support, int[] usable, int most)
    {
        var best = new BestBlends(60);
        using var tree = new BlendTree(model, best);
        tree.Run(2_000);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var blend in best.Found)
        {
            if (blend.Members.All(usable.Contains))
            {
                AddOnce(support, seen, blend.Members);
                foreach (var i in usable)
                {
                    if (blend.Members.Length < most && !blend.Members.Contains(i) && model.Fits(blend.Members, i))
                    {
                        AddOnce(support, seen, [.. blend.Members.Append(i).Order()]);
                    }
                }
            }
        }
    }

    private void AddOnce(SupportSolver support, HashSet<string> seen, int[] set)
    {
        if (seen.Add(string.Join(',', set)))
        {
            Add(support, set);
        }
    }

    private void Add(SupportSolver support, ReadOnlySpan<int> set)
    {
        if (support.Error(set) is var error && double.IsFinite(error))
        {
            members.Add(set.ToArray());
            errors.Add(error);
        }
    }
}
