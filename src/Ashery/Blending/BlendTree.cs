namespace Ashery.Blending;

/// <summary>
/// Best-first search over (must contain, excluded) with a linear programme as bound: best when at most c columns is
/// no tighter than the number of nutrients less one.
/// </summary>
/// <remarks>
/// A node stands for all blends that contain its set M and none of its set X. Its bound is the lexicographic optimum over
/// the columns outside X. Let P be the columns with a positive amount there. If M is in P, P is small enough and
/// compatible, P is a blend. Every other blend of the node lacks at least one member of P, because a larger set that
/// contains P has P's optimum and so is no blend with all amounts positive. Hence the children: the first member of P
/// excluded; the first required and the second excluded; and so on: disjoint and complete. When M has reached the
/// limit only M itself is left; one below the limit, one more column, swept by its reduced cost.
/// </remarks>
internal sealed class BlendTree : IDisposable
{
    private readonly BlendModel model;
    private readonly BestBlends best;
    private readonly BlendProgramme programme;
    private readonly SupportSolver support;
    private readonly LastColumn last;
    private readonly NodeStore store;
    private readonly int most;
    private readonly ulong[] must;
    private readonly ulong[] without;
    private readonly ulong[] childMust;
    private readonly ulong[] childWithout;
    private readonly int[] columns;
    private readonly double[] amounts;
    private readonly int[] members;
    private readonly Child[] children;

    public BlendTree(BlendModel model, BestBlends best)
    {
        this.model = model;
        this.best = best;
        most = Math.Min(model.Request.AtMost, model.Columns);
        programme = new BlendProgramme(model, model.Columns);
        support = new SupportSolver(model, most + 1);
        last = new LastColumn(model, best, support);
        store = new NodeStore(model.Columns, programme.RowCount);
        must = new ulong[store.Words];
        without = new ulong[store.Words];
        childMust = new ulong[store.Words];
        childWithout = new ulong[store.Words];
        columns = new int[programme.RowCount];
        amounts = new double[programme.RowCount];
        members = new int[Math.Max(most, programme.RowCount) + 1];
        children = new Child[programme.RowCount];
        for (var i = 0; i < children.Length; i++)
        {
            children[i] = new Child(programme.RowCount);
        }
    }

    /// <summary>Nodes branched on so far.</summary>
    public long Nodes { get; private set; }

    public long Steps => programme.Steps;

    public long Solved => support.Solved;

    public long Swept => last.Swept;

    /// <summary>Error of the best blend when the number of columns does not matter.</summary>
    public double RootError { get; private set; }

    /// <summary>Multipliers of the rows at the root's optimum.</summary>
    public double[]? RootMultipliers { get; private set; }

    /// <summary>Runs until the best blends are proved (true) or so many nodes have been branched on (false).</summary>
    public bool Run(long nodes)
    {
        if (RootMultipliers is null && !Root())
        {
            return true;
        }

        while (store.Count > 0)
        {
            if (Nodes >= nodes)
            {
                return false;
            }

            var node = store.Pop();
            if (best.RulesOut(store.Error(node), store.Cost(node), Count(store.Must(node))))
            {
                store.Free(node);
                continue;
            }

            Nodes++;
            Branch(node);
        }

        return true;
    }

    public void Dispose()
    {
        programme.Dispose();
        support.Dispose();
    }

    private bool Root()
    {
        var all = new int[model.Columns];
        for (var i = 0; i < all.Length; i++)
        {
            all[i] = i;
        }

        programme.Load(model, all);
        if (!programme.Start() || programme.Run(double.PositiveInfinity) != BlendProgramme.Outcome.Optimal)
        {
            return false;
        }

        RootError = programme.Value;
        RootMultipliers = new double[programme.RowCount];
        for (var r = 0; r < RootMultipliers.Length; r++)
        {
            RootMultipliers[r] = programme.Multiplier(r);
        }

        Report(0);
        Push();
        return true;
    }

    /// <summary>Keeps the programme's present optimum as a blend, if it is one of the node's.</summary>
    private void Report(int mustCount)
    {
        var count = programme.Positive(columns, amounts);
        if (count > most || !ContainsMust(count, mustCount) || !model.Compatible(columns.AsSpan(0, count)))
        {
            return;
        }

        best.Add(FoundBlend.Of(model, columns.AsSpan(0, count), amounts.AsSpan(0, count)));
    }

    private bool ContainsMust(int count, int mustCount)
    {
        var held = 0;
        for (var k = 0; k < count; k++)
        {
            if (Has(childMust, columns[k]))
            {
                held++;
            }
        }

        return held == mustCount;
    }

    private void Push()
    {
        var node = store.Push(programme.Value, CostBound());
        childMust.CopyTo(store.Must(node));
        childWithout.CopyTo(store.Without(node));
        programme.Save(store.Basis(node));
    }

    /// <summary>Least cost of the node's blends at its error; infinite when each of them needs a column without a price.</summary>
    private double CostBound() => model.CostBound(programme);

    private void Branch(int node)
    {
        store.Must(node).CopyTo(must);
        store.Without(node).CopyTo(without);
        programme.Restore(store.Basis(node));
        store.Free(node);
        programme.Exclude(without);
        if (!programme.Refactor())
        {
            throw new InvalidOperationException("A basis that was solved before turned singular; this is a fault of the search.");
        }

        programme.Keep();
        var count = programme.Positive(columns, amounts);
        var branching = 0;
        for (var k = 0; k < count; k++)
        {
            if (!Has(must, columns[k]))
            {
                children[branching++].Column = columns[k];
            }
        }

        for (var k = 0; k < branching; k++)
        {
            var child = children[k];
            programme.Exclude(child.Column);
            child.Outcome = programme.Run(best.Cutoff);
            child.Error = child.Outcome == BlendProgramme.Outcome.Infeasible ? double.PositiveInfinity : programme.Value;
            programme.Save(child.Basis);
            programme.Open(child.Column);
            programme.GoBack();
        }

        Array.Sort(children, 0, branching, Child.HighestFirst);
        Divide(branching);
    }

    private void Divide(int branching)
    {
        must.CopyTo(childMust, 0);
        without.CopyTo(childWithout, 0);
        var mustCount = Count(must);
        for (var k = 0; k < branching; k++)
        {
            var child = children[k];
            if (!Has(childWithout, child.Column))
            {
                childWithout[child.Column >> 6] |= 1UL << (child.Column & 63);
                Visit(child, mustCount);
                childWithout[child.Column >> 6] &= ~(1UL << (child.Column & 63));
            }
            else
            {
                // Shut out by a pair: nothing contains it, so this is the last child, as it stands.
                Visit(child, mustCount);
                return;
            }

            childMust[child.Column >> 6] |= 1UL << (child.Column & 63);
            mustCount++;
            if (mustCount > most)
            {
                return;
            }

            if (model.Conflicts is { } conflicts)
            {
                for (var w = 0; w < store.Words; w++)
                {
                    childWithout[w] |= conflicts[child.Column].Words[w];
                }
            }
        }
    }

    private void Visit(Child child, int mustCount)
    {
        if (child.Outcome == BlendProgramme.Outcome.Infeasible || best.RulesOut(child.Error, 0, Math.Max(1, mustCount)))
        {
            return;
        }

        if (mustCount >= most - 1)
        {
            var held = Members(childMust);
            if (mustCount == most)
            {
                if (support.Solve(members.AsSpan(0, held), best.Cutoff) is { } blend)
                {
                    best.Add(blend);
                }
            }
            else
            {
                last.Sweep(members.AsSpan(0, held), programme, childWithout);
            }

            return;
        }

        programme.Restore(child.Basis);
        programme.Exclude(childWithout);
        if (!programme.Refactor())
        {
            return;
        }

        var outcome = programme.Run(best.Cutoff);
        if (outcome is BlendProgramme.Outcome.Infeasible or BlendProgramme.Outcome.AboveCutoff)
        {
            return;
        }

        Report(mustCount);
        if (!best.RulesOut(programme.Value, CostBound(), Math.Max(1, mustCount)))
        {
            Push();
        }
    }

    private int Members(ulong[] set)
    {
        var count = 0;
        for (var i = 0; i < model.Columns; i++)
        {
            if (Has(set, i))
            {
                members[count++] = i;
            }
        }

        return count;
    }

    private static bool Has(ReadOnlySpan<ulong> set, int i) => (set[i >> 6] >> (i & 63) & 1) != 0;

    private static int Count(ReadOnlySpan<ulong> set)
    {
        var count = 0;
        foreach (var word in set)
        {
            count += System.Numerics.BitOperations.PopCount(word);
        }

        return count;
    }

    private sealed class Child(int rows)
    {
        public static readonly IComparer<Child> HighestFirst = Comparer<Child>.Create((a, b) =>
        {
            var c = b.Error.CompareTo(a.Error);
            return c != 0 ? c : a.Column.CompareTo(b.Column);
        });

        public int Column { get; set; }

        public double Error { get; set; }

        public BlendProgramme.Outcome Outcome { get; set; }

        public short[] Basis { get; } = new short[rows];
    }
}
