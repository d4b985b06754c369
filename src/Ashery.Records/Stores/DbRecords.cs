using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Stores;

/// <summary>All gardens of one database.</summary>
public class DbRecords(DatabaseEngine engine, TimeProvider clock) : IRecords
{
    /// <summary>Longest key of a garden; a key is made of letters, digits, <c>-</c> and <c>_</c>.</summary>
    public const int LongestKey = 64;

    public DatabaseEngine Engine => engine;

    public IGardenStore Garden(string garden, string by = "") => new DbGardenStore(engine, clock, Key(garden), by);

    public IJournal Journal(string garden, string by = "") => new DbJournal(engine, clock, Key(garden), by);

    public IReadOnlyList<GardenListing> Gardens() => engine.Run<IReadOnlyList<GardenListing>>(() =>
    {
        using var db = engine.Connect();
        var newest = db.States.GroupBy(s => s.Garden).Select(g => new { g.Key, Version = g.Max(s => s.Version) });
        return [.. db.States.Join(newest, s => new { Key = s.Garden, s.Version }, n => n, (s, n) => new { s.Garden, s.Name })
            .OrderBy(s => s.Garden).AsEnumerable().Select(s => new GardenListing(s.Garden, s.Name))];
    });

    public bool IsThere()
    {
        try
        {
            using var db = engine.Connect();
            _ = db.States.Any();
            return true;
        }
        catch (Exception e) when (engine.Trouble(e) is not null)
        {
            return false;
        }
    }

    // A search index puts the key before each word, so it must hold no space.
    private static string Key(string garden) =>
        garden.Length is > 0 and <= LongestKey && garden.All(static c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_')
            ? garden
            : throw new ArgumentException("A key of a garden is 1 to 64 letters, digits, - and _.", nameof(garden));
}
