using Ashery.Gardens;

namespace Ashery.Records;

/// <summary>
/// Keeps one garden and the states it was in. A save is whole or not at all, and it says on which state it builds, so
/// that two windows cannot overwrite each other unseen.
/// </summary>
public interface IGardenStore
{
    /// <summary>True when a garden was ever saved.</summary>
    bool HasGarden { get; }

    /// <summary>The garden as last saved; null when there is none.</summary>
    StoredGarden? Load();

    /// <summary>An earlier state; null when it is no longer kept.</summary>
    StoredGarden? LoadState(long version);

    /// <summary>Saves a whole garden.</summary>
    /// <param name="garden">What to keep from now on.</param>
    /// <param name="basedOn">The version the change was made on; 0 when there was no garden.</param>
    /// <param name="what">What the change was, in the grower's words, for the list of changes.</param>
    SaveOutcome Save(Garden garden, long basedOn, string what);

    /// <summary>The latest changes, newest first.</summary>
    IReadOnlyList<Change> History(int atMost);

    /// <summary>When each pot, by its id, first stood in a state that is still kept.</summary>
    IReadOnlyDictionary<string, DateTimeOffset> PotsSince();
}

/// <summary>A garden and which state of it this is.</summary>
/// <param name="Garden">The garden.</param>
/// <param name="Version">Grows by one with each save.</param>
public sealed record StoredGarden(Garden Garden, long Version);

/// <summary>A saved change.</summary>
/// <param name="Version">The state it made.</param>
/// <param name="At">When.</param>
/// <param name="What">What it was.</param>
/// <param name="By">Who made it: a name; empty where there are no accounts.</param>
public sealed record Change(long Version, DateTimeOffset At, string What, string By = "");

/// <summary>How a save ended.</summary>
public abstract record SaveOutcome
{
    private SaveOutcome()
    {
    }

    /// <summary>On the disk.</summary>
    public sealed record Saved(long Version) : SaveOutcome;

    /// <summary>Someone else saved first; nothing was written.</summary>
    public sealed record Overtaken(Change By) : SaveOutcome;
}
