using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Ashery.Records.Sqlite;

/// <summary>Lets the file grow to so many pages and no further (SQLite manual, PRAGMA max_page_count): what a full disk does, without filling one.</summary>
internal sealed class PageLimit(int most) : DbConnectionInterceptor
{
    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = FormattableString.Invariant($"PRAGMA max_page_count = {most};");
        command.ExecuteScalar();
    }
}
