using Ashery.Blending.Model;
using Ashery.Blending.Programme;

namespace Ashery.Blending.Tree;

/// <summary>What the tree keeps of a child's programme until the children are put in order.</summary>
internal sealed class TreeChild(int rows)
{
    public static readonly IComparer<TreeChild> HighestFirst = Comparer<TreeChild>.Create(CompareBounds);

    /// <summary>The column that the child excludes.</summary>
    public int Column { get; set; }

    public BlendProgramme.Outcome Outcome { get; set; }

    /// <summary>Lower bound of the error.</summary>
    public double Error { get; private set; }

    /// <summary>Least cost at that error; infinite when a column without a price is needed.</summary>
    public double Cost { get; private set; }

    /// <summary>Columns with a positive amount at the optimum.</summary>
    public int Count { get; private set; }

    public int[] Columns { get; } = new int[rows];

    public double[] Amounts { get; } = new double[rows];

    public short[] Basis { get; } = new short[rows];

    public void Read(BlendModel model, BlendProgramme programme)
    {
        Error = Outcome == BlendProgramme.Outcome.Infeasible ? double.PositiveInfinity : programme.Value;
        Cost = Outcome == BlendProgramme.Outcome.Optimal ? model.CostBound(programme) : 0;
        Count = programme.Positive(Columns, Amounts);
        programme.Save(Basis);
    }

    private static int CompareBounds(TreeChild a, TreeChild b)
    {
        // Errors that differ by rounding only are the same: then the cost decides.
        var c = Math.Abs(a.Error - b.Error) <= FoundBlend.Tie ? 0 : b.Error.CompareTo(a.Error);
        c = c != 0 ? c : b.Cost.CompareTo(a.Cost);
        return c != 0 ? c : a.Column.CompareTo(b.Column);
    }
}
