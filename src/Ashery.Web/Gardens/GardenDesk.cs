using Ashery.Climate;
using Ashery.Gardens;
using Ashery.Planning;
using Ashery.Records;

namespace Ashery.Web.Gardens;

/// <summary>The garden of one request, and the one way to change it.</summary>
public sealed class GardenDesk(IGardenStore store, GardenCache cache)
{
    private StoredGarden? current;

    public Garden Garden => Stored.Garden;

    /// <summary>Which state of the garden this page shows; a form sends it back, so that a change says what it was made on.</summary>
    public long Version => Stored.Version;

    private StoredGarden Stored => current ??= cache.Newest(store) ?? new StoredGarden(FirstGarden.Empty, 0);

    /// <summary>Changes the garden, when it is still the one that the form was filled in on.</summary>
    public SaveOutcome Change(long basedOn, string what, Func<Garden, Garden> change)
    {
        if (basedOn != Version)
        {
            return new SaveOutcome.Overtaken(Latest ?? new Change(0, default, ""));
        }

        var outcome = store.Save(change(Garden), basedOn, what);
        current = null;
        return outcome;
    }

    /// <summary>The latest change, that can be undone.</summary>
    public Change? Latest => History(1) is [var latest, ..] ? latest : null;

    /// <summary>The year from a day on.</summary>
    public YearPlan Year(DateOnly from) => YearPlanner.Plan(new YearRequest(Garden, from));

    public IReadOnlyList<Change> History(int atMost) => store.History(atMost);

    /// <summary>Puts an earlier state back, as a change of its own that can be undone again.</summary>
    public SaveOutcome? GoBackTo(long version, long basedOn, string what) =>
        store.LoadState(version) is { } earlier ? Change(basedOn, what, _ => earlier.Garden) : null;
}

/// <summary>The newest garden in memory: a garden never changes, only its newest number does.</summary>
public sealed class GardenCache
{
    private volatile StoredGarden? kept;

    public StoredGarden? Newest(IGardenStore store)
    {
        if (store.History(1) is not [var newest, ..])
        {
            return null;
        }

        if (kept?.Version != newest.Version)
        {
            kept = store.Load();
        }

        return kept;
    }
}
