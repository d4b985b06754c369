namespace Ashery.Blending;

/// <summary>
/// A request in the form the searches work on: columns in canonical order, scaled so that one unit of a column
/// brings one unit of nutrient mass.
/// </summary>
/// <remarks>
/// With a_ij the content of nutrient j in column i, T_i = sum_j a_ij and tau_j the target's shares, the unknown is
/// x_i = T_i m_i for masses m normalised to sum x_i = 1, and u_ij = a_ij / (T_i tau_j), so that the relative deviation of
/// nutrient j is sum_i u_ij x_i - 1. A column without any of the nutrients (sand) keeps x_i = m_i and stays out of
/// the sum. Mass, cost and side rows are linear in x. Canonical order (name, then contents, price and rows) makes every
/// search independent of the order in which the columns were given.
/// </remarks>
internal sealed class BlendModel
{
    public BlendModel(BlendRequest request)
    {
        BlendGuard.Check(request);
        Request = request;
        Order = CanonicalOrder.Of(request);
        Columns = Order.Length;
        Nutrients = request.Target.Count;
        RowCount = request.Rows.Count;
        Target = BlendGuard.Normalised(request.Target);
        U = new double[Columns * Nutrients];
        Brings = new double[Columns];
        Scale = new double[Columns];
        Unpriced = new double[Columns];
        Cost = new double[Columns];
        Mass = new double[Columns];
        Rows = new double[RowCount * Columns];
        for (var i = 0; i < Columns; i++)
        {
            FillColumn(i, request.Columns[Order[i]]);
        }

        for (var r = 0; r < RowCount; r++)
        {
            FillRow(r, request.Rows[r].Coefficients);
        }

        Forbidden = ForbiddenPairs(request);
    }

    public BlendRequest Request { get; }

    /// <summary>Canonical place to place in the request.</summary>
    public int[] Order { get; }

    public int Columns { get; }

    public int Nutrients { get; }

    public int RowCount { get; }

    /// <summary>Target shares, summing to one.</summary>
    public double[] Target { get; }

    /// <summary>u_ij, column after column.</summary>
    public double[] U { get; }

    /// <summary>1 where the column brings any of the target's nutrients, else 0.</summary>
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

    /// <summary>Symmetric matrix of pairs that may not be together.</summary>
    public bool[,] Forbidden { get; }

    /// <summary>Last tie-break between amounts: earlier names first; square roots keep the weights independent.</summary>
    public static double Rank(int column) => Math.Sqrt(column + 1.0);

    private void FillColumn(int i, Column column)
    {
        var total = column.Content.Sum();
        Scale[i] = total > 0 ? total : 1;
        Brings[i] = total > 0 ? 1 : 0;
        for (var j = 0; j < Nutrients; j++)
        {
            U[(i * Nutrients) + j] = column.Content[j] / (Scale[i] * Target[j]);
        }

        Mass[i] = 1 / Scale[i];
        Unpriced[i] = column.Price is null ? 1 : 0;
        Cost[i] = (column.Price ?? 0) / Scale[i];
    }

    private void FillRow(int r, IReadOnlyList<double> coefficients)
    {
        var largest = 0.0;
        for (var i = 0; i < Columns; i++)
        {
            var g = coefficients[Order[i]] / Scale[i];
            Rows[(r * Columns) + i] = g;
            largest = Math.Max(largest, Math.Abs(g));
        }

        if (largest > 0)
        {
            for (var i = 0; i < Columns; i++)
            {
                Rows[(r * Columns) + i] /= largest;
            }
        }
    }

    private bool[,] ForbiddenPairs(BlendRequest request)
    {
        var place = new int[Columns];
        for (var i = 0; i < Columns; i++)
        {
            place[Order[i]] = i;
        }

        var forbidden = new bool[Columns, Columns];
        foreach (var (a, b) in request.ForbiddenPairs)
        {
            forbidden[place[a], place[b]] = true;
            forbidden[place[b], place[a]] = true;
        }

        return forbidden;
    }
}
