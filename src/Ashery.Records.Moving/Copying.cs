using Ashery.Problems;
using Ashery.Records.Moving.Tables;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Records.Moving;

/// <summary>Moves everything from one database to another, SQLite or PostgreSQL.</summary>
public static class Copying
{
    /// <summary>Copies all gardens and journals; the target must be empty.</summary>
    /// <param name="from">File or address.</param>
    /// <param name="to">File or address; its tables are made.</param>
    /// <param name="sets">Which tables; null: all.</param>
    /// <returns>The content hash, the same of both.</returns>
    public static Result<string> Copy(string from, string to, IReadOnlyList<TableSet>? sets = null) => Trouble.Told(() =>
    {
        if (!Databases.IsServer(from) && !File.Exists(from))
        {
            return Result.Fail<string>("from", $"There is no file {from}.", "Name the garden file, or an address postgres://USER@HOST/NAME.");
        }

        sets ??= TableSet.All;
        var (source, target) = (Ready(from, sets), Ready(to, sets));
        using var one = source.Value;
        using var other = target.Value;
        if (one is null || other is null)
        {
            return Result.Fail<string>([.. source.Problems, .. target.Problems]);
        }

        return IsEmpty(other)
            ? TableCopy.Replace(one, other)
            : Result.Fail<string>("to", "The target holds gardens already. Nothing was changed.", "Name an empty database, or a file that is not there yet.");
    });

    /// <summary>Content hash of a database.</summary>
    public static Result<string> HashOf(string database, IReadOnlyList<TableSet>? sets = null) => Trouble.Told(() =>
    {
        var opened = Ready(database, sets ?? TableSet.All);
        using var tables = opened.Value;
        if (tables is null)
        {
            return Result.Fail<string>(opened.Problems);
        }

        using var reading = tables.BeginRead();
        return Result.Of(ContentHash.Of(tables.Contexts));
    });

    /// <summary>Opens a database with its tables up to date.</summary>
    internal static Result<OpenTables> Ready(string database, IReadOnlyList<TableSet> sets)
    {
        // By the stores' own door first: it makes the file and its folder, and has the words for what can go wrong.
        var records = Databases.Open(database);
        if (!records.Ok)
        {
            return Result.Fail<OpenTables>(records.Problems);
        }

        var opened = OpenTables.Open(database, sets);
        if (opened.Ok && opened.Value.Migrate() is { } problem)
        {
            opened.Value.Dispose();
            return Result.Fail<OpenTables>(problem);
        }

        return opened;
    }

    internal static bool IsEmpty(OpenTables tables) =>
        !tables.Contexts.Any(static c => TableRows.InOrder(c.Model).Any(t => TableRows.Read(c, t).Any()));
}
