namespace Ashery.Blending;

/// <summary>
/// What to search: columns of contents, a wanted ratio, linear rows and forbidden pairs. This room knows no chemistry;
/// a column may be a fertiliser, a water or anything else that adds up by mass.
/// </summary>
public sealed record BlendRequest
{
    public required IReadOnlyList<Column> Columns { get; init; }

    /// <summary>Wanted shares of the target's nutrients; all positive, any scale. A wanted zero is a row, not a ratio term.</summary>
    public required IReadOnlyList<double> Target { get; init; }

    /// <summary>Rows sum(g_i m_i) &lt;= 0 over the masses m of the columns.</summary>
    public IReadOnlyList<LinearRow> Rows { get; init; } = [];

    /// <summary>Columns that may not be together in one blend, as index pairs.</summary>
    public IReadOnlyList<(int A, int B)> ForbiddenPairs { get; init; } = [];

    /// <summary>Largest number of columns in a blend.</summary>
    public int AtMost { get; init; } = 4;

    /// <summary>How many blends, best first.</summary>
    public int Best { get; init; } = 20;

    /// <summary>
    /// How much work a search may do before it stops without a proof, in linear programmes of about a microsecond. Counted, not timed:
    /// the same request gives the same answer on every machine.
    /// </summary>
    public long WorkLimit { get; init; } = 5_000_000;
}

/// <summary>One thing that can go into the blend.</summary>
/// <param name="Name">Decides ties last.</param>
/// <param name="Content">Mass fraction of each of the target's nutrients, in the target's order.</param>
/// <param name="Price">A kg of the column; null when unknown.</param>
public sealed record Column(string Name, IReadOnlyList<double> Content, double? Price = null);

/// <summary>A homogeneous limit: sum(Coefficients[i] * mass[i]) &lt;= 0.</summary>
/// <param name="Name">Shown when the row is what stops a blend.</param>
/// <param name="Coefficients">One for each column.</param>
public sealed record LinearRow(string Name, IReadOnlyList<double> Coefficients);
