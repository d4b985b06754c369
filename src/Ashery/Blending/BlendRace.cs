using Ashery.Blending.Model;
using Ashery.Blending.Sweep;
using Ashery.Blending.Tree;

namespace Ashery.Blending;

/// <summary>
/// Runs the tree and, where it may win, the sweep: a short tree for good first blends, then the two in turn with growing shares of
/// work, each going on where it stopped, until one of them has the proof.
/// </summary>
/// <remarks>
/// Measured rule: with at most c columns and d nutrients the tree alone where c &gt;= d, since a best blend then needs no
/// more members than c and the first programmes are the proof; the sweep where c &lt; d, since its cost is known beforehand (about a
/// nanosecond a set) and the tree's is not. Side rows weaken the sweep's bound, not the tree's; turns settle it. Work is counted in
/// programmes of about a microsecond, not in time, so that the same request always gives the same answer.
/// </remarks>
internal sealed class BlendRace : IDisposable
{
    /// <summary>Work of one node of the tree.</summary>
    private const long NodeWork = 8;
    private const long FirstNodes = 30;

    private readonly BlendModel model;
    private readonly BestBlends best;
    private readonly BlendTree tree;
    private readonly double sweepWork;

    public BlendRace(BlendModel model, BestBlends best)
    {
        this.model = model;
        this.best = best;
        tree = new BlendTree(model, best);
        sweepWork = SupportCount.UpTo(model.Columns, model.Request.AtMost) / 1000;
    }

    /// <summary>Multipliers of the programme over all columns; null when the rows leave no blend.</summary>
    public double[]? RootMultipliers => tree.RootMultipliers;

    /// <summary>True when the best blends are proved.</summary>
    public bool Run(long workLimit)
    {
        var mayWin = model.Aim is not (BlendAim.AtLeast or BlendAim.Amounts) && Math.Min(model.Request.AtMost, model.Columns) < model.Nutrients && sweepWork <= workLimit;
        if (!mayWin)
        {
            return tree.Run(workLimit / NodeWork) && !tree.Doubtful;
        }

        var nodes = FirstNodes + (long)(sweepWork / (8 * NodeWork));
        if (tree.Run(nodes) || (BoundsBite() && tree.Run(10 * nodes)))
        {
            return !tree.Doubtful;
        }

        using var sweep = new BlendSweep(model, best);
        for (var share = 2000L; ; share *= 4)
        {
            if (sweep.Run(share))
            {
                return !sweep.Doubtful;
            }

            if (tree.Run(tree.Nodes + (share / NodeWork)))
            {
                return !tree.Doubtful;
            }

            if (sweep.Solved + (tree.Nodes * NodeWork) > workLimit)
            {
                return false;
            }
        }
    }

    /// <summary>True when the programmes' bounds start near the errors they have to reach: then the tree is short.</summary>
    private bool BoundsBite() => best.Full && tree.RootError > 0.3 * best.Last.Error;

    public void Dispose() => tree.Dispose();
}
