using Ashery.Accounts.Audit;
using Ashery.Accounts.Model;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Accounts.SignIn;

/// <summary>The browsers somebody is signed in with. They stand in the database, so that ending one works on every instance at once.</summary>
public sealed class Sessions(AccountsDb db, UserManager<AsheryUser> users, AuditLog audit, TimeProvider clock)
{
    /// <summary>The claim that names the session in the cookie.</summary>
    public const string Claim = "sid";

    // A browser on a desk, and a phone that was paired to stay: how long unused, how long at most.
    public static readonly TimeSpan Idle = TimeSpan.FromDays(1), Longest = TimeSpan.FromDays(14);
    public static readonly TimeSpan PairedIdle = TimeSpan.FromDays(60), PairedLongest = TimeSpan.FromDays(365);

    private static readonly TimeSpan SeenStep = TimeSpan.FromMinutes(5);

    public async Task<SessionRow> BeginAsync(AsheryUser user, string device, bool paired)
    {
        var now = clock.GetUtcNow();
        await db.Sessions.Where(s => s.EndsAtTicks < now.UtcTicks).ExecuteDeleteAsync();
        var row = new SessionRow
        {
            Id = Guid.NewGuid(), UserId = user.Id, Device = device, IsPaired = paired, BeganAtTicks = now.UtcTicks, SeenAtTicks = now.UtcTicks,
            EndsAtTicks = (now + (paired ? PairedLongest : Longest)).UtcTicks,
        };
        db.Sessions.Add(row);
        await db.SaveChangesAsync();
        return row;
    }

    /// <summary>True while the session stands and the account's stamp is the one the cookie was made with.</summary>
    public async Task<bool> StandsAsync(Guid id, string userId, string? stamp)
    {
        var now = clock.GetUtcNow();
        var found = await db.Sessions.Where(s => s.Id == id && s.UserId == userId)
            .Join(db.Users, s => s.UserId, u => u.Id, (s, u) => new { Session = s, u.SecurityStamp }).AsNoTracking().FirstOrDefaultAsync();
        if (found is null || found.SecurityStamp != stamp || found.Session.EndsAtTicks <= now.UtcTicks
            || found.Session.SeenAtTicks <= (now - (found.Session.IsPaired ? PairedIdle : Idle)).UtcTicks)
        {
            return false;
        }

        if (found.Session.SeenAtTicks < (now - SeenStep).UtcTicks)
        {
            await db.Sessions.Where(s => s.Id == id).ExecuteUpdateAsync(set => set.SetProperty(s => s.SeenAtTicks, now.UtcTicks));
        }

        return true;
    }

    public async Task<IReadOnlyList<SessionRow>> OfAsync(string userId)
    {
        var now = clock.GetUtcNow().UtcTicks;
        return await db.Sessions.AsNoTracking().Where(s => s.UserId == userId && s.EndsAtTicks > now).OrderByDescending(s => s.SeenAtTicks).ToListAsync();
    }

    public async Task<bool> EndAsync(string userId, Guid id, string from)
    {
        var ended = await db.Sessions.Where(s => s.Id == id && s.UserId == userId).ExecuteDeleteAsync() == 1;
        if (ended)
        {
            audit.Write(AuditKind.SessionEnded, userId, from);
        }

        return ended;
    }

    /// <summary>Signs out everywhere: every session goes, and a cookie that was copied is worth nothing since the stamp it carries is not the account's any more.</summary>
    public async Task EndAllAsync(AsheryUser user, string from)
    {
        await db.Sessions.Where(s => s.UserId == user.Id).ExecuteDeleteAsync();
        await users.UpdateSecurityStampAsync(user);
        audit.Write(AuditKind.SignedOutEverywhere, user.Id, from);
    }
}
