using System.Collections.Concurrent;
using Ashery.Records;

namespace Ashery.Web.Gardens;

/// <summary>The newest gardens in memory: a garden never changes, only its newest version does, and that is asked for each time.</summary>
public sealed class GardenCache
{
    private const int Most = 256;

    private readonly ConcurrentDictionary<string, StoredGarden> kept = new(StringComparer.Ordinal);

    /// <summary>The newest state of a garden; null when it has none.</summary>
    public StoredGarden? Newest(string key, IGardenStore store)
    {
        if (store.History(1) is not [var newest, ..])
        {
            return null;
        }

        if (kept.TryGetValue(key, out var known) && known.Version == newest.Version)
        {
            return known;
        }

        var read = store.Load();
        if (read is not null)
        {
            if (kept.Count >= Most)
            {
                kept.Clear();
            }

            kept[key] = read;
        }

        return read;
    }
}
