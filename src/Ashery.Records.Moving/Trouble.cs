using Ashery.Problems;
using Ashery.Records.Postgres;
using Ashery.Records.Sqlite;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Ashery.Records.Moving;

/// <summary>Turns what a disk or a database refuses into words.</summary>
internal static class Trouble
{
    public static Result<T> Told<T>(Func<Result<T>> work)
        where T : class
    {
        try
        {
            return work();
        }
        catch (StorageTrouble trouble)
        {
            return Result.Fail<T>(trouble.Problem);
        }
        catch (Exception e) when (Root(e) is SqliteException or NpgsqlException)
        {
            return Result.Fail<T>("database", $"The database refused: {Root(e).Message}", "Nothing was changed. Check that there is room on its disk and that it may be written to.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Result.Fail<T>("file", e.Message, "Nothing was changed. Check the name, the rights of its folder and the room on the disk.");
        }
    }

    private static Exception Root(Exception e) => e.InnerException is { } inner && e is not (SqliteException or NpgsqlException) ? Root(inner) : e;
}
