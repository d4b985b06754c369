namespace Ashery.Journal;

/// <summary>
/// One thing that was done, measured, bought, made or seen. An entry never changes in place: a change is a new revision of it,
/// kept by the records beside the old.
/// </summary>
public sealed record Entry
{
    /// <summary>Made by whoever writes it, on the phone even without a network: the same id sent again is the same entry.</summary>
    public required Guid Id { get; init; }

    /// <summary>Day in the garden.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Hour in the garden, where known.</summary>
    public TimeOnly? Time { get; init; }

    /// <summary>Ids of the pots it is about; none for the garden as a whole.</summary>
    public IReadOnlyList<string> Pots { get; init; } = [];

    /// <summary>The grower's own words.</summary>
    public string Note { get; init; } = "";

    /// <summary>What it is.</summary>
    public required EntryFacts Facts { get; init; }
}

/// <summary>What an entry tells of. A closed set: the kinds stand in this folder, and files and tables name each by its word.</summary>
public abstract record EntryFacts
{
    private protected EntryFacts()
    {
    }
}
