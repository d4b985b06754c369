using Ashery.Blending.Programme;

namespace Ashery.Blending.Model;

/// <summary>What a search minimises first.</summary>
internal enum BlendAim
{
    /// <summary>Mean relative deviation of the shares, then cost, then mass.</summary>
    Ratio,

    /// <summary>Mean relative deviation of the shares, then mass: the strongest blend at the ratio.</summary>
    StrongestAtRatio,

    /// <summary>Mean relative shortfall of contents wanted at least, then cost, then mass.</summary>
    AtLeast,
}

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
internal sealed class BlendModel
{
    public BlendModel(BlendRequest request, BlendAim aim = BlendAim.Ratio)
    {
        BlendGuard.Check(request);
        Request = request;
        Aim = aim;
        Order = CanonicalOrder.Of(request);
        Columns = Order.Length;
        Nutrients = request.Target.Count;
        RowCount = request.Rows.Count;
        Target = aim == BlendAim.AtLeast ? Copy(request.Target) : BlendGuard.Normalised(request.Target);
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
            FillColumn(i, request.Columns[Order[i]]);
        }

        for (var r = 0; r < RowCount; r++)
        {
            FillRow(r, request.Rows[r].Coefficients);
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
    /// unknown one), cost, mass, names. Those that cannot tell two columns apart are left out.
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

        return CostLevel >= 0 ? programme.LevelValue(CostLevel) : FlatCost;
    }

    /// <summary>
    /// Largest amount of a column in a blend whose error is at most the cutoff: it alone must not bring more than
    /// 1 + D_j of any nutrient. An excess D of nutrient j is paid twice, once itself and once by the shortfall elsewhere
    /// that keeps the shares' sum, so D_j (1 + tau_j / max tau) is at most d times the cutoff.
    /// </summary>
    public double LargestAmount(int i, double cutoff)
    {
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

    /// <summary>Last tie-break between amounts: earlier names first; square roots keep the weights independent.</summary>
    public static double Rank(int column) => Math.Sqrt(column + 1.0);

    private void FillColumn(int i, Column column)
    {
        double total = 0;
        for (var j = 0; j < Nutrients; j++)
        {
            total += column.Content[j];
        }

        // A trace below a millionth of a millionth is none: its scale would drown everything else in rounding.
        total = total < 1e-12 ? 0 : total;
        var byMass = Aim == BlendAim.AtLeast;
        Scale[i] = total > 0 && !byMass ? total : 1;
        Brings[i] = total > 0 || byMass ? 1 : 0;
        for (var j = 0; j < Nutrients; j++)
        {
            U[(i * Nutrients) + j] = Brings[i] > 0 ? column.Content[j] / (Scale[i] * Target[j]) : 0;
        }

        Mass[i] = 1 / Scale[i];
        Unpriced[i] = column.Price is null ? 1 : 0;
        Cost[i] = (column.Price ?? 0) / Scale[i];
    }

    private void FillRow(int r, IReadOnlyList<double> coefficients)
    {
        var from = r * Columns;
        var largest = 0.0;
        for (var i = 0; i < Columns; i++)
        {
            Rows[from + i] = coefficients[Order[i]] / Scale[i];
            largest = Math.Max(largest, Math.Abs(Rows[from + i]));
        }

        RowScale[r] = largest > 0 ? largest : 1;
        for (var i = 0; i < Columns; i++)
        {
            Rows[from + i] /= RowScale[r];
        }
    }

    private double[][] FindLevels()
    {
        var rank = new double[Columns];
        for (var i = 0; i < Columns; i++)
        {
            rank[i] = Rank(i);
        }

        var levels = new List<double[]>();
        if (Aim == BlendAim.StrongestAtRatio)
        {
            // Mass takes the place of cost, in the objectives and in the order of blends.
            Array.Copy(Mass, Cost, Columns);
            Array.Clear(Unpriced);
        }

        if (Differ(Unpriced, Unpriced.Length > 0 ? Unpriced[0] : 0))
        {
            UnpricedLevel = levels.Count;
            levels.Add(Unpriced);
        }

        var priced = Holds(Unpriced, 0);
        FlatCost = priced ? 0 : double.PositiveInfinity;
        if (priced && Differ(Cost, 0))
        {
            CostLevel = levels.Count;
            levels.Add(Cost);
        }

        if (Aim != BlendAim.StrongestAtRatio && Differ(Mass, Mass.Length > 0 ? Mass[0] : 0))
        {
            levels.Add(Mass);
        }

        levels.Add(rank);
        return [.. levels];
    }

    private double[] Stack()
    {
        var stacked = new double[Columns * ProgrammeRows];
        for (var i = 0; i < Columns; i++)
        {
            var from = i * ProgrammeRows;
            for (var j = 0; j < Nutrients; j++)
            {
                stacked[from + j] = U[(i * Nutrients) + j] - Brings[i];
            }

            stacked[from + Nutrients] = Brings[i];
            for (var r = 0; r < RowCount; r++)
            {
                stacked[from + Nutrients + 1 + r] = Rows[(r * Columns) + i];
            }
        }

        return stacked;
    }

    private static double[] Copy(IReadOnlyList<double> values)
    {
        var copy = new double[values.Count];
        for (var j = 0; j < copy.Length; j++)
        {
            copy[j] = values[j];
        }

        return copy;
    }

    private static bool Holds(double[] level, double value)
    {
        foreach (var v in level)
        {
            if (v == value)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True when not all are this value.</summary>
    private static bool Differ(double[] level, double value)
    {
        foreach (var v in level)
        {
            if (v != value)
            {
                return true;
            }
        }

        return false;
    }

    private BitSet[]? FindConflicts(BlendRequest request)
    {
        if (request.ForbiddenPairs.Count == 0)
        {
            return null;
        }

        var place = new int[Columns];
        var conflicts = new BitSet[Columns];
        for (var i = 0; i < Columns; i++)
        {
            place[Order[i]] = i;
            conflicts[i] = new BitSet(Columns);
        }

        for (var p = 0; p < request.ForbiddenPairs.Count; p++)
        {
            var pair = request.ForbiddenPairs[p];
            conflicts[place[pair.A]].Add(place[pair.B]);
            conflicts[place[pair.B]].Add(place[pair.A]);
        }

        return conflicts;
    }
}
