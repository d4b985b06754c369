using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Ashery.Records.Sqlite;

/// <summary>
/// Sets write-ahead logging and full synchronisation on every connection and reads both back: a power cut after a save
/// must not take the save with it. <c>journal_mode</c> stays with the file, <c>synchronous</c> only with the connection
/// (SQLite manual, PRAGMA statements).
/// </summary>
internal sealed class DurableConnection : DbConnectionInterceptor
{
    private const long Full = 2;

    public static readonly DurableConnection Instance = new();

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Assure(connection);

    public override Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        Assure(connection);
        return Task.CompletedTask;
    }

    private static void Assure(DbConnection connection)
    {
        // EF looks by a connection that only reads whether the file is there; a file that is not in WAL mode yet (out of a backup) would refuse to become so.
        if (new SqliteConnectionStringBuilder(connection.ConnectionString).Mode == SqliteOpenMode.ReadOnly)
        {
            return;
        }

        var journal = Ask(connection, "PRAGMA journal_mode = WAL;");
        Ask(connection, "PRAGMA synchronous = FULL;");
        var synchronous = Ask(connection, "PRAGMA synchronous;");
        if (journal is not "wal" || synchronous is not Full)
        {
            throw new InvalidOperationException(
                FormattableString.Invariant($"The garden file is not durable here: journal {journal}, synchronous {synchronous}."));
        }
    }

    private static object? Ask(DbConnection connection, string pragma)
    {
        using var command = connection.CreateCommand();
        command.CommandText = pragma;
        return command.ExecuteScalar();
    }
}
