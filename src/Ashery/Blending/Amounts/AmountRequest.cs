namespace Ashery.Blending.Amounts;

/// <summary>
/// Amounts wanted beside a fixed column: something that is there already and brings its own share (a water, say). Masses and amounts are
/// in one unit of the caller's, such as grams a litre.
/// </summary>
public sealed record AmountRequest
{
    /// <summary>What may be added, contents as mass fractions in the target's order.</summary>
    public required IReadOnlyList<Column> Columns { get; init; }

    /// <summary>Wanted amounts, all positive.</summary>
    public required IReadOnlyList<double> Target { get; init; }

    /// <summary>What the fixed column brings of each, in the target's order.</summary>
    public required IReadOnlyList<double> Fixed { get; init; }

    public IReadOnlyList<AmountRow> Rows { get; init; } = [];

    /// <summary>Columns that may not be together, as index pairs.</summary>
    public IReadOnlyList<(int A, int B)> ForbiddenPairs { get; init; } = [];

    /// <summary>Most columns, the fixed one not counted.</summary>
    public int AtMost { get; init; } = 6;

    /// <summary>How many sets of columns, best first.</summary>
    public int Best { get; init; } = 5;

    /// <summary>Work before a search stops without a proof; counted as in <see cref="BlendRequest.WorkLimit"/>.</summary>
    public long WorkLimit { get; init; } = 2_000_000;
}

/// <summary>A limit: sum(Coefficients[i] * mass[i]) + Constant &lt;= 0.</summary>
/// <param name="Name">In the words it was given in.</param>
/// <param name="Coefficients">One for each column.</param>
/// <param name="Constant">What the fixed column brings, less what is allowed.</param>
public sealed record AmountRow(string Name, IReadOnlyList<double> Coefficients, double Constant);
