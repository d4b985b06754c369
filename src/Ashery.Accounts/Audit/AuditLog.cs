using Ashery.Accounts.Databases;
using Ashery.Accounts.Model;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;

namespace Ashery.Accounts.Audit;

/// <summary>Keeps who did what about access. Holds no password, code, token or cookie.</summary>
public sealed partial class AuditLog(AccountsDatabase database, TimeProvider clock, ILogger<AuditLog> logger)
{
    private const int LongestDetail = 300;

    /// <summary>Writes a line; it stands also when the request that caused it fails.</summary>
    public void Write(string kind, string? userId, string from, string detail = "", string? garden = null)
    {
        using var db = database.Open();
        var words = Clean(detail);
        db.Audit.Add(new AuditRow { AtTicks = clock.GetUtcNow().UtcTicks, Kind = kind, UserId = userId, Garden = garden, Detail = words, From = from });
        db.SaveChanges();
        Note(logger, kind, userId, garden, words, from);
    }

    /// <summary>Newest first: lines about a person.</summary>
    public IReadOnlyList<AuditRow> About(string userId, int atMost)
    {
        using var db = database.Open();
        return [.. db.Audit.AsNoTracking().Where(a => a.UserId == userId).OrderByDescending(a => a.AtTicks).ThenByDescending(a => a.Id).Take(atMost)];
    }

    /// <summary>Newest first: lines about a garden.</summary>
    public IReadOnlyList<AuditRow> OfGarden(string garden, int atMost)
    {
        using var db = database.Open();
        return [.. db.Audit.AsNoTracking().Where(a => a.Garden == garden).OrderByDescending(a => a.AtTicks).ThenByDescending(a => a.Id).Take(atMost)];
    }

    // One line stays one line, whatever somebody typed as a name.
    private static string Clean(string text)
    {
        var line = new string([.. text.Select(static c => char.IsControl(c) ? ' ' : c)]);
        return line.Length > LongestDetail ? line[..LongestDetail] : line;
    }

    [LoggerMessage(Level = LogLevel.Information, Message = "{Kind} user {User} garden {Garden} from {From}: {Detail}")]
    private static partial void Note(ILogger logger, string kind, string? user, string? garden, string detail, string from);
}
