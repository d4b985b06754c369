namespace Ashery.Blending;

/// <summary>The best amounts of one given set of columns.</summary>
internal sealed class SupportSolver(BlendModel model, int largest) : IDisposable
{
    private readonly BlendProgramme programme = new(model, largest);
    private readonly int[] columns = new int[largest];
    private readonly double[] amounts = new double[largest];

    /// <summary>Programmes solved, for reports.</summary>
    public long Solved { get; private set; }

    public BlendProgramme Programme => programme;

    /// <summary>
    /// The blend of exactly these columns (ascending), or null when one of them gets no amount, the rows cannot be
    /// kept or the error passes the cutoff.
    /// </summary>
    public FoundBlend? Solve(ReadOnlySpan<int> members, double cutoff)
    {
        Solved++;
        programme.Load(model, members);
        if (!programme.Start() || programme.Run(cutoff) != BlendProgramme.Outcome.Optimal)
        {
            return null;
        }

        return Read(members);
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
        programme.Load(model, members);
        return programme.Start() && programme.Run(double.PositiveInfinity) == BlendProgramme.Outcome.Optimal
            ? programme.Value
            : double.PositiveInfinity;
    }

    public void Dispose() => programme.Dispose();
}
