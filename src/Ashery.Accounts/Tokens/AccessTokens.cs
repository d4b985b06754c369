using Ashery.Accounts.Audit;
using Ashery.Accounts.Keys;
using Ashery.Accounts.Model;
using Ashery.Problems;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Accounts.Tokens;

/// <summary>Personal access tokens for programs: told once, kept as a hash, scoped, and never without an end.</summary>
public sealed class AccessTokens(AccountsDb db, AuditLog audit, TimeProvider clock)
{
    /// <summary>What every token begins with, so that a leaked one is recognised.</summary>
    public const string Prefix = "ashery_";

    public const int LongestDays = 400;
    private const int Signs = 40;
    private static readonly TimeSpan SeenStep = TimeSpan.FromMinutes(5);

    /// <summary>Makes a token; the secret is in the answer and nowhere else.</summary>
    public async Task<Result<(TokenRow Row, string Secret)>> MakeAsync(string userId, string name, string scope, string? garden, int days, string from)
    {
        if (string.IsNullOrWhiteSpace(name) || name.Length > 100)
        {
            return Result.Fail<(TokenRow, string)>("name", "A token needs a name of 1 to 100 signs.", "Say what will use it, as in weather script.");
        }

        if (!TokenScope.All.Contains(scope))
        {
            return Result.Fail<(TokenRow, string)>("scope", "A token reads, writes or shows the calendar.", "Choose one of them.");
        }

        if (days is < 1 or > LongestDays)
        {
            return Result.Fail<(TokenRow, string)>("days", FormattableString.Invariant($"A token works for 1 to {LongestDays} days."), "Make a new one when it ends.");
        }

        if (garden is not null && !await db.Memberships.AnyAsync(m => m.UserId == userId && m.Garden == garden))
        {
            return Result.Fail<(TokenRow, string)>("garden", "This is not one of your gardens.", "Choose from the list.");
        }

        var secret = Prefix + Secrets.Code(Signs);
        var now = clock.GetUtcNow();
        var row = new TokenRow
        {
            Id = Guid.CreateVersion7(now), UserId = userId, Name = name.Trim(), Scope = scope, Garden = garden, Hash = Secrets.Hash(secret),
            Start = secret[..(Prefix.Length + 4)], MadeAtTicks = now.UtcTicks, EndsAtTicks = now.AddDays(days).UtcTicks,
        };
        db.Tokens.Add(row);
        await db.SaveChangesAsync();
        audit.Write(AuditKind.TokenMade, userId, from, $"{row.Name} ({scope})", garden);
        return Result.Of((row, secret));
    }

    /// <summary>The token of a secret, while it works.</summary>
    public async Task<(TokenRow Row, string UserName)?> FindAsync(string secret)
    {
        var hash = Secrets.Hash(secret);
        var now = clock.GetUtcNow();
        var found = await db.Tokens.Where(t => t.Hash == hash && t.EndsAtTicks > now.UtcTicks)
            .Join(db.Users, t => t.UserId, u => u.Id, (t, u) => new { Token = t, u.UserName }).AsNoTracking().FirstOrDefaultAsync();
        if (found is null)
        {
            return null;
        }

        if ((found.Token.SeenAtTicks ?? 0) < (now - SeenStep).UtcTicks)
        {
            await db.Tokens.Where(t => t.Id == found.Token.Id).ExecuteUpdateAsync(set => set.SetProperty(t => t.SeenAtTicks, now.UtcTicks));
        }

        return (found.Token, found.UserName!);
    }

    public async Task<IReadOnlyList<TokenRow>> OfAsync(string userId) =>
        await db.Tokens.AsNoTracking().Where(t => t.UserId == userId).OrderByDescending(t => t.MadeAtTicks).ToListAsync();

    public async Task<bool> RemoveAsync(string userId, Guid id, string from)
    {
        var gone = await db.Tokens.Where(t => t.Id == id && t.UserId == userId).ExecuteDeleteAsync() == 1;
        if (gone)
        {
            audit.Write(AuditKind.TokenRemoved, userId, from);
        }

        return gone;
    }
}
