using Ashery.Blending.Model;

namespace Ashery.Blending.Programme;

/// <summary>The best amounts of one given set of columns.</summary>
internal sealed class SupportSolver(BlendModel model, int largest) : IDisposable
{
    private readonly BlendProgramme programme = new(model, largest);
    private readonly int[] columns = new int[largest];
    private readonly double[] amounts = new double[largest];

    /// <summary>Programmes solved, for reports.</summary>
    public long Solved { get; private set; }

    /// <summary>True when a programme hit its step limit, so that nothing may be called proved.</summary>
    public bool Doubtful { get; private set; }

    public BlendProgramme Programme => programme;

    /// <summary>
    /// The blend of exactly these columns (ascending), or null when one of them gets no amount, the rows cannot be
    /// kept or the error passes the cutoff.
    /// </summary>
    public FoundBlend? Solve(ReadOnlySpan<int> members, double cutoff)
    {
        Solved++;
        programme.Load(members);
        return Optimal(cutoff) ? Read(members) : null;
    }

    /// <summary>The blend at the programme's present optimum, if all of the members take part.</summary>
    public FoundBlend? Read(ReadOnlySpan<int> members)
    {
        var count = programme.Positive(columns, amounts);
        return count == members.Length ? FoundBlend.Of(model, members, amounts.AsSpan(0, count)) : null;
    }

    /// <summary>Least error with any amounts of these columns; infinite when the rows leave nothing.</summary>
    public double Error(ReadOnlySpan<int> members)
    {
        programme.Load(members);
        return Optimal(double.PositiveInfinity) ? programme.Value : double.PositiveInfinity;
    }

    /// <summary>Solves the loaded programme; false when it is infeasible or passes the cutoff.</summary>
    public bool Optimal(double cutoff)
    {
        if (!programme.Start())
        {
            return false;
        }

        var outcome = programme.Run(cutoff);
        Doubtful |= outcome == BlendProgramme.Outcome.Unfinished;
        return outcome == BlendProgramme.Outcome.Optimal;
    }

    public void Dispose() => programme.Dispose();
}
