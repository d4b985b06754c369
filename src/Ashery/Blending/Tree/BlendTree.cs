using Ashery.Blending.Model;
using Ashery.Blending.Programme;

namespace Ashery.Blending.Tree;

/// <summary>
/// Best-first search over (must contain, excluded) with a linear programme as bound: best when at most c columns is
/// no tighter than the number of nutrients.
/// </summary>
/// <remarks>
/// A node stands for all blends that contain its set M and none of its set X. Its bound is the lexicographic optimum over
/// the columns outside X. Let P be the columns with a positive amount there. If M is in P, P is small enough and
/// compatible, P is a blend. Every other blend of the node lacks at least one member of P, because a larger set that
/// contains P has P's optimum and so is no blend with all amounts positive. Hence the children: the first member of P
/// excluded; the first required and the second excluded; and so on: disjoint and complete. When M has reached the
/// limit only M itself is left; one below the limit, and where the limit is tighter than the nutrients, one more column is swept
/// by its reduced cost. Excluding one column is one or two dual steps from the node's own optimum. The members whose loss costs
/// most are excluded first: their children, the least restricted ones, are then the first to fall.
/// </remarks>
internal sealed class BlendTree : IDisposable
{
    /// <summary>Nodes that tie with the last blend kept before sets are gone through by size and names instead.</summary>
    private const long TiedBeforeOrdering = 100;

    private readonly BlendModel model;
    private readonly BestBlends best;
    private readonly BlendProgramme programme;
    private SupportSolver? support;
    private LastColumn? last;
    private readonly NodeStore store;
    private readonly int most;
    private readonly bool sweepLast;
    private bool doubtful;
    private long tied;
    private readonly ulong[] must;
    private readonly ulong[] without;
    private readonly int[] columns;
    private readonly double[] amounts;
    private readonly int[] members;
    private readonly TreeChild[] children;
    private readonly TreeChild own;

    public BlendTree(BlendModel model, BestBlends best)
    {
        this.model = model;
        this.best = best;
        most = Math.Min(model.Request.AtMost, model.Columns);
        sweepLast = most < model.Nutrients;
        programme = new BlendProgramme(model, model.Columns);
        store = new NodeStore(model.Columns, programme.RowCount);
        must = new ulong[store.Words];
        without = new ulong[store.Words];
        columns = new int[programme.RowCount];
        amounts = new double[programme.RowCount];
        members = new int[Math.Max(most, programme.RowCount) + 1];
        own = new TreeChild(programme.RowCount);
        children = new TreeChild[programme.RowCount];
        for (var i = 0; i < children.Length; i++)
        {
            children[i] = new TreeChild(programme.RowCount);
        }
    }

    /// <summary>Nodes branched on so far.</summary>
    public long Nodes { get; private set; }

    public long Steps => programme.Steps;

    public long Solved => support?.Solved ?? 0;

    /// <summary>Error of the best blend when the number of columns does not matter.</summary>
    public double RootError { get; private set; }

    /// <summary>Multipliers of the rows at the root's optimum; null when the rows leave no blend.</summary>
    public double[]? RootMultipliers { get; private set; }

    /// <summary>True when a programme hit its step limit.</summary>
    public bool Doubtful => support is { Doubtful: true } || doubtful;

    /// <summary>Runs until the best blends are proved (true) or so many nodes have been branched on (false).</summary>
    public bool Run(long nodes)
    {
        if (RootMultipliers is null && !Root())
        {
            return true;
        }

        while (store.Count > 0)
        {
            if (Nodes >= nodes || store.Full)
            {
                return false;
            }

            var node = store.Pop();
            if (best.RulesOut(store.Error(node), store.Cost(node), TreeSets.Count(store.Must(node))))
            {
                store.Free(node);
                continue;
            }

            // A host of blends may tie in error and cost (no prices, say); then only number and names decide, and the
            // tree cannot see those. All that is left comes no earlier than this node.
            if (best.Ties(store.Error(node), store.Cost(node)) && ++tied % TiedBeforeOrdering == 0
                && TiedBlends.Finish(model, best, tied))
            {
                return true;
            }

            Nodes++;
            Branch(node);
        }

        return true;
    }

    public void Dispose()
    {
        programme.Dispose();
        support?.Dispose();
    }

    private bool Root()
    {
        programme.LoadAll();
        if (!programme.Start() || programme.Run(double.PositiveInfinity) != BlendProgramme.Outcome.Optimal)
        {
            return false;
        }

        RootError = Math.Max(0, programme.Value);
        RootMultipliers = new double[programme.RowCount];
        for (var r = 0; r < RootMultipliers.Length; r++)
        {
            RootMultipliers[r] = programme.Multiplier(r);
        }

        var root = children[0];
        root.Read(model, programme);
        Settle(root, 0);

        return !(best.Wanted == 1 && Unrivalled(root));
    }

    /// <summary>
    /// True when the only blend wanted is the root's and no other can tie with it in error and cost: that is the proof already.
    /// </summary>
    private bool Unrivalled(TreeChild root) =>
        best.Full && double.IsFinite(best.Last.Cost) && (model.CostLevel == 0 || model.UnpricedLevel == 0)
        && best.Last.Members.AsSpan().SequenceEqual(root.Columns.AsSpan(0, root.Count)) && programme.Unrivalled();

    private void Branch(int node)
    {
        store.Must(node).CopyTo(must);
        store.Without(node).CopyTo(without);
        programme.OpenAllBut(without);
        var restored = programme.Restore(store.Basis(node));
        store.Free(node);
        if (!restored)
        {
            throw new InvalidOperationException("A basis that was solved before turned singular; this is a fault of the search.");
        }

        if (model.Conflicts is not null && !WithoutBarred())
        {
            return;
        }

        programme.Keep();
        var count = programme.Positive(columns, amounts);
        var branching = 0;
        for (var k = 0; k < count; k++)
        {
            if (!TreeSets.Has(must, columns[k]))
            {
                Solve(children[branching++], columns[k]);
            }
        }

        Array.Sort(children, 0, branching, TreeChild.HighestFirst);
        Divide(branching);
    }

    /// <summary>
    /// A pair may have shut members since the basis was saved: solves again, and keeps the optimum if it is a blend now.
    /// </summary>
    private bool WithoutBarred()
    {
        own.Outcome = programme.Run(best.Cutoff);
        doubtful |= own.Outcome == BlendProgramme.Outcome.Unfinished;
        if (own.Outcome is BlendProgramme.Outcome.Infeasible or BlendProgramme.Outcome.AboveCutoff)
        {
            return false;
        }

        own.Read(model, programme);
        Offer(own, TreeSets.Count(must));
        return true;
    }

    /// <summary>The programme without one more column.</summary>
    private void Solve(TreeChild child, int column)
    {
        child.Column = column;
        programme.Shut(column);
        child.Outcome = programme.Run(best.Cutoff);
        doubtful |= child.Outcome == BlendProgramme.Outcome.Unfinished;
        child.Read(model, programme);
        programme.Open(column);
        programme.GoBack();
    }

    private void Divide(int branching)
    {
        var mustCount = TreeSets.Count(must);
        for (var k = 0; k < branching && mustCount <= most; k++)
        {
            var child = children[k];
            var barred = TreeSets.Has(without, child.Column);
            TreeSets.Add(without, child.Column);
            Visit(child, mustCount);
            if (barred)
            {
                // Shut out by a pair with a member now required: nothing contains it, so this is the last child.
                return;
            }

            TreeSets.Remove(without, child.Column);
            TreeSets.Add(must, child.Column);
            mustCount++;
            if (model.Conflicts is { } conflicts)
            {
                for (var w = 0; w < store.Words; w++)
                {
                    without[w] |= conflicts[child.Column].Words[w];
                }
            }
        }
    }

    /// <summary>A child with must and without as they stand.</summary>
    private void Visit(TreeChild child, int mustCount)
    {
        if (child.Outcome is BlendProgramme.Outcome.Infeasible or BlendProgramme.Outcome.AboveCutoff
            || best.RulesOut(child.Error, child.Cost, Math.Max(1, mustCount)))
        {
            return;
        }

        if (mustCount == most)
        {
            support ??= new SupportSolver(model, most);
            if (support.Solve(Must(), best.Cutoff) is { } blend)
            {
                best.Add(blend);
            }
        }
        else if (mustCount == most - 1 && sweepLast)
        {
            support ??= new SupportSolver(model, most);
            last ??= new LastColumn(model, best, support);
            last.Sweep(Must(), programme, without);
        }
        else
        {
            Settle(child, mustCount);
        }
    }

    /// <summary>Keeps the child's optimum if it is one of the node's blends, and the node for later.</summary>
    private void Settle(TreeChild child, int mustCount)
    {
        Offer(child, mustCount);

        // Ties with the root are rounding: the heap then goes by cost.
        var error = child.Error <= RootError + FoundBlend.Tie ? RootError : child.Error;
        if (!best.RulesOut(error, child.Cost, Math.Max(1, mustCount)))
        {
            var node = store.Push(error, child.Cost);
            must.CopyTo(store.Must(node));
            without.CopyTo(store.Without(node));
            child.Basis.CopyTo(store.Basis(node));
        }
    }

    private void Offer(TreeChild child, int mustCount)
    {
        var set = child.Columns.AsSpan(0, child.Count);
        if (child.Outcome == BlendProgramme.Outcome.Optimal && child.Count <= most
            && Held(set) == mustCount && Open(set) && model.Compatible(set))
        {
            best.Add(FoundBlend.Of(model, set, child.Amounts.AsSpan(0, child.Count)));
        }
    }

    private int Held(ReadOnlySpan<int> set)
    {
        var held = 0;
        foreach (var column in set)
        {
            held += TreeSets.Has(must, column) ? 1 : 0;
        }

        return held;
    }

    private bool Open(ReadOnlySpan<int> set)
    {
        foreach (var column in set)
        {
            if (TreeSets.Has(without, column))
            {
                return false;
            }
        }

        return true;
    }

    private ReadOnlySpan<int> Must()
    {
        var count = 0;
        for (var w = 0; w < must.Length; w++)
        {
            for (var bits = must[w]; bits != 0; bits &= bits - 1)
            {
                members[count++] = (w << 6) + System.Numerics.BitOperations.TrailingZeroCount(bits);
            }
        }

        return members.AsSpan(0, count);
    }
}
