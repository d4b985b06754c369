using Ashery.Climate;
using Ashery.Gardens;
using Ashery.Planning;
using Ashery.Records;

namespace Ashery.Web.Gardens;

/// <summary>The garden of one request, and the one way to change it.</summary>
public sealed class GardenDesk(IGardenStore store, IJournal journal, GardenCache cache, CurrentGarden whose)
{
    private KnownGarden? current;
    private IReadOnlyList<Done>? latest;

    /// <summary>Key of the garden in the records.</summary>
    public string Key => whose.Key;

    public Garden Garden => Stored.Garden;

    /// <summary>Which state of the garden this page shows; a form sends it back, so that a change says what it was made on.</summary>
    public long Version => Stored.Version;

    /// <summary>The state by version and instant, for what is kept in memory of it.</summary>
    public long Stamp => HashCode.Combine(Version, Known.At);

    private StoredGarden Stored => Known.Stored;

    private KnownGarden Known => current ??= cache.Newest(whose.Key, store) ?? new KnownGarden(new StoredGarden(FirstGarden.Empty, 0), default);

    /// <summary>Changes the garden, when it is still the one that the form was filled in on.</summary>
    public SaveOutcome Change(long basedOn, string what, Func<Garden, Garden> change)
    {
        if (basedOn != Version)
        {
            return new SaveOutcome.Overtaken(Latest ?? new Change(0, default, ""));
        }

        var outcome = store.Save(change(Garden), basedOn, what);
        current = null;
        latest = null;
        return outcome;
    }

    /// <summary>What was done last to the garden or in its journal; null when nothing was.</summary>
    public Done? LastDone => (latest ??= DoneLately(1)) is [var last, ..] ? last : null;

    /// <summary>What was done to the garden and in its journal, newest first.</summary>
    public IReadOnlyList<Done> DoneLately(int atMost) => Done.Together(store.History(atMost), journal.Latest(atMost), atMost);

    /// <summary>The latest revisions of the journal, newest first.</summary>
    public IReadOnlyList<StoredEntry> WrittenLately(int atMost) => journal.Latest(atMost);

    /// <summary>The latest change of the garden itself, that can be undone.</summary>
    public Change? Latest => History(1) is [var latest, ..] ? latest : null;

    /// <summary>The year from a day on.</summary>
    public YearPlan Year(DateOnly from) => YearPlanner.Plan(new YearRequest(Garden, from));

    public IReadOnlyList<Change> History(int atMost) => store.History(atMost);

    /// <summary>Puts an earlier state back, as a change of its own that can be undone again.</summary>
    public SaveOutcome? GoBackTo(long version, long basedOn, string what) =>
        store.LoadState(version) is { } earlier ? Change(basedOn, what, _ => earlier.Garden) : null;
}
