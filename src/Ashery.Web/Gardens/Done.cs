using Ashery.Records;

namespace Ashery.Web.Gardens;

/// <summary>Something that was done and can be undone: a change of the garden, or a revision of an entry of its journal.</summary>
/// <param name="Change">A change of the garden; null when it is of the journal.</param>
/// <param name="Entry">A revision of an entry; null when it is of the garden.</param>
public sealed record Done(Change? Change, StoredEntry? Entry)
{
    public DateTimeOffset At => Change?.At ?? Entry!.At;

    public string By => Change?.By ?? Entry!.By;

    /// <summary>Both lists as one, newest first.</summary>
    public static IReadOnlyList<Done> Together(IReadOnlyList<Change> changes, IReadOnlyList<StoredEntry> entries, int atMost) =>
        [.. entries.Select(static e => new Done(null, e)).Concat(changes.Select(static c => new Done(c, null))).OrderByDescending(static d => d.At).Take(atMost)];
}
