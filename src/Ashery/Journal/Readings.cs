namespace Ashery.Journal;

/// <summary>A figure read on a pot.</summary>
/// <param name="Day">When.</param>
/// <param name="Time">Hour, where known.</param>
/// <param name="Value">In the unit of its kind.</param>
/// <param name="Entry">Id of the entry it stands in.</param>
public sealed record Reading(DateOnly Day, TimeOnly? Time, double Value, Guid Entry);

/// <summary>All readings of one kind on one pot, oldest first.</summary>
/// <param name="What">Which figure.</param>
/// <param name="Points">At least one.</param>
public sealed record ReadingSeries(MeasuredKind What, IReadOnlyList<Reading> Points)
{
    public Reading Last => Points[^1];

    public double Least => Points.Min(static p => p.Value);

    public double Most => Points.Max(static p => p.Value);

    public double Mean => Points.Average(static p => p.Value);
}

/// <summary>Readings of the journal put in order.</summary>
public static class Readings
{
    /// <summary>A pot's readings by kind, in the order of <see cref="MeasuredKind"/>; kinds never read are left out.</summary>
    public static IReadOnlyList<ReadingSeries> Of(IEnumerable<Entry> entries, string potId) =>
        [.. entries
            .Where(e => e.Facts is Measured && e.Pots.Contains(potId, StringComparer.Ordinal))
            .GroupBy(static e => ((Measured)e.Facts).What)
            .OrderBy(static g => g.Key)
            .Select(static g => new ReadingSeries(g.Key, [.. g
                .Select(static e => new Reading(e.Day, e.Time, ((Measured)e.Facts).Value, e.Id))
                .OrderBy(static r => r.Day).ThenBy(static r => r.Time ?? TimeOnly.MinValue).ThenBy(static r => r.Entry)]))];
}
