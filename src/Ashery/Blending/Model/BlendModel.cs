using Ashery.Blending.Programme;

namespace Ashery.Blending.Model;

/// <summary>
/// A request in the form the searches work on: columns in canonical order, scaled so that one unit of a column
/// brings one unit of nutrient mass.
/// </summary>
/// <remarks>
/// With a_ij the content of nutrient j in column i, T_i = sum_j a_ij and tau_j the target's shares, the unknown is
/// x_i = T_i m_i for masses m normalised to sum x_i = 1, and u_ij = a_ij / (T_i tau_j), so that the relative deviation of
/// nutrient j is sum_i (u_ij - 1) x_i. A column without any of the nutrients (sand) keeps x_i = m_i and stays out of
/// the sum. Mass, cost and side rows are linear in x. For contents wanted at least, x_i = m_i and u_ij = a_ij / g_j.
/// Canonical order (name, then contents, price and rows) makes every search independent of the order in which the
/// columns were given.
/// </remarks>
internal sealed partial class BlendModel
{
    public BlendModel(BlendRequest request, BlendAim aim = BlendAim.Ratio)
    {
        BlendGuard.Check(request);
        Request = request;
        Aim = aim;
        var columns = Numbers.Array(request.Columns);
        Order = CanonicalOrder.Of(columns, request.Rows);
        Columns = Order.Length;
        Nutrients = request.Target.Count;
        RowCount = request.Rows.Count;
        Target = aim == BlendAim.AtLeast ? Numbers.Span(request.Target).ToArray() : BlendGuard.Normalised(request.Target);
        U = new double[Columns * Nutrients];
        Brings = new double[Columns];
        Scale = new double[Columns];
        Unpriced = new double[Columns];
        Cost = new double[Columns];
        Mass = new double[Columns];
        Rows = new double[RowCount * Columns];
        RowScale = new double[RowCount];
        for (var i = 0; i < Columns; i++)
        {
            FillColumn(i, columns[Order[i]]);
        }

        for (var r = 0; r < RowCount; r++)
        {
            FillRow(r, Numbers.Span(request.Rows[r].Coefficients));
        }

        foreach (var share in Target)
        {
            largestTarget = Math.Max(largestTarget, share);
        }

        Conflicts = FindConflicts(request);
        Levels = FindLevels();
        ProgrammeRows = Nutrients + 1 + RowCount;
        Stacked = Stack();
    }

    private readonly double largestTarget;
    private double costScale = 1;

    public BlendRequest Request { get; }

    public BlendAim Aim { get; }

    /// <summary>Canonical place to place in the request.</summary>
    public int[] Order { get; }

    public int Columns { get; }

    public int Nutrients { get; }

    public int RowCount { get; }

    /// <summary>Target shares, summing to one; for contents wanted at least, those contents.</summary>
    public double[] Target { get; }

    /// <summary>u_ij, column after column.</summary>
    public double[] U { get; }

    /// <summary>1 where the column counts in the sum of shares, else 0.</summary>
    public double[] Brings { get; }

    /// <summary>T_i, or 1 for a column without nutrients: m_i = x_i / Scale_i.</summary>
    public double[] Scale { get; }

    /// <summary>1 where the price is unknown, else 0.</summary>
    public double[] Unpriced { get; }

    /// <summary>Price of one unit of x (price per kg over T_i); 0 where unknown.</summary>
    public double[] Cost { get; }

    /// <summary>Mass of one unit of x.</summary>
    public double[] Mass { get; }

    /// <summary>Side rows over x, row after row, each scaled to a largest coefficient of one.</summary>
    public double[] Rows { get; }

    /// <summary>What each row was divided by.</summary>
    public double[] RowScale { get; }

    /// <summary>For each column the columns it may not be with; null when there are no pairs.</summary>
    public BitSet[]? Conflicts { get; }

    /// <summary>
    /// Objectives after the error, most important first: the share without a price (so that a known cost goes before an
    /// unknown one), cost, mass, names, each scaled to a largest value of one. Those that cannot tell two columns apart
    /// are left out.
    /// </summary>
    public double[][] Levels { get; }

    /// <summary>Rows of the linear programme: deviations, the sum, side rows.</summary>
    public int ProgrammeRows { get; }

    /// <summary>The programme's columns one after the other: u_ij - b_i, b_i, g_i.</summary>
    public double[] Stacked { get; }

    /// <summary>True when some column brings none of the target's nutrients.</summary>
    public bool HasFillers => Holds(Brings, 0);

    /// <summary>Place of the unpriced share among the levels; -1 when prices are all known or all unknown.</summary>
    public int UnpricedLevel { get; private set; } = -1;

    /// <summary>Place of the cost among the levels; -1 when no column costs anything, or no price is known.</summary>
    public int CostLevel { get; private set; } = -1;

    /// <summary>Cost of every blend when cost is no level.</summary>
    public double FlatCost { get; private set; }

    /// <summary>Cost per unit of a deviation above and below.</summary>
    public double WeightAbove => Aim == BlendAim.AtLeast ? 0 : 1.0 / Nutrients;

    public double WeightBelow => 1.0 / Nutrients;

    /// <summary>True when the column may join the members.</summary>
    public bool Fits(ReadOnlySpan<int> members, int column)
    {
        if (Conflicts is not null)
        {
            foreach (var i in members)
            {
                if (Conflicts[i].Has(column))
                {
                    return false;
                }
            }
        }

        return true;
    }

    public bool Compatible(ReadOnlySpan<int> members)
    {
        if (Conflicts is not null)
        {
            for (var a = 1; a < members.Length; a++)
            {
                for (var b = 0; b < a; b++)
                {
                    if (Conflicts[members[a]].Has(members[b]))
                    {
                        return false;
                    }
                }
            }
        }

        return true;
    }

    /// <summary>
    /// Least cost of blends at a programme's optimum error; infinite when each of them needs a column without a price.
    /// </summary>
    public double CostBound(BlendProgramme programme)
    {
        if (UnpricedLevel >= 0 && programme.LevelValue(UnpricedLevel) > FoundBlend.Positive)
        {
            return double.PositiveInfinity;
        }

        return CostLevel >= 0 ? programme.LevelValue(CostLevel) * costScale : FlatCost;
    }

    /// <summary>
    /// Largest amount of a column in a blend whose error is at most the cutoff: it alone must not bring more than
    /// 1 + D_j of any nutrient. An excess D of nutrient j is paid twice, once itself and once by the shortfall elsewhere
    /// that keeps the shares' sum, so D_j (1 + tau_j / max tau) is at most d times the cutoff.
    /// </summary>
    public double LargestAmount(int i, double cutoff)
    {
        if (Aim == BlendAim.Amounts)
        {
            return LargestBeside(i, cutoff);
        }

        if (Brings[i] == 0)
        {
            return double.PositiveInfinity;
        }

        if (Aim == BlendAim.AtLeast || double.IsPositiveInfinity(cutoff))
        {
            return 1;
        }

        var largest = 1.0;
        for (var j = 0; j < Nutrients; j++)
        {
            var excess = Nutrients * cutoff / (1 + (Target[j] / largestTarget));
            largest = Math.Min(largest, (1 + excess) / Math.Max(U[(i * Nutrients) + j], 1e-300));
        }

        return largest;
    }

    // Beside a fixed column nothing needs to fall short for another to be in excess: the excess D_j is paid once.
    private double LargestBeside(int i, double cutoff)
    {
        var largest = double.PositiveInfinity;
        for (var j = 0; j < Nutrients; j++)
        {
            if (U[(i * Nutrients) + j] > 0)
            {
                largest = Math.Min(largest, (1 + (Nutrients * cutoff)) / U[(i * Nutrients) + j]);
            }
        }

        return largest;
    }

    /// <summary>Last tie-break between amounts: earlier names first; square roots keep the weights independent.</summary>
    public static double Rank(int column) => Math.Sqrt(column + 1.0);
}
