using System.Collections.Concurrent;
using Ashery.Records;

namespace Ashery.Web.Gardens;

/// <summary>
/// The newest gardens in memory: a state never changes, only which is the newest does, and that is asked for each time. A state is known by its version
/// and its instant: a restored backup may hold another state of the same version.
/// </summary>
public sealed class GardenCache
{
    private const int Most = 256;

    private readonly ConcurrentDictionary<string, KnownGarden> kept = new(StringComparer.Ordinal);

    /// <summary>The newest state of a garden; null when it has none.</summary>
    public KnownGarden? Newest(string key, IGardenStore store)
    {
        if (store.History(1) is not [var newest, ..])
        {
            return null;
        }

        if (kept.TryGetValue(key, out var known) && known.Stored.Version == newest.Version && known.At == newest.At)
        {
            return known;
        }

        if (store.Load() is not { } read)
        {
            return null;
        }

        if (kept.Count >= Most)
        {
            kept.Clear();
        }

        return kept[key] = new(read, newest.At);
    }
}

/// <summary>A garden in memory.</summary>
/// <param name="Stored">The state.</param>
/// <param name="At">When it was saved.</param>
public sealed record KnownGarden(StoredGarden Stored, DateTimeOffset At);
