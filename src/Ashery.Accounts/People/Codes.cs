using Ashery.Accounts.Keys;
using Ashery.Accounts.Model;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Accounts.People;

/// <summary>Codes that may be used once, before they end.</summary>
public sealed class Codes(AccountsDb db, TimeProvider clock)
{
    public static readonly TimeSpan PairingLasts = TimeSpan.FromMinutes(5);
    public static readonly TimeSpan InvitationLasts = TimeSpan.FromDays(7);
    public static readonly TimeSpan FirstAccountLasts = TimeSpan.FromHours(24);

    /// <summary>Signs of a code; 60 bits.</summary>
    private const int Signs = 12;

    /// <summary>Makes a code. It is told once; the database keeps its hash.</summary>
    public async Task<string> MakeAsync(string purpose, TimeSpan lasts, string? userId = null, string? garden = null, MemberRole? role = null)
    {
        var now = clock.GetUtcNow();
        var code = Secrets.Code(Signs);
        db.Codes.Add(new CodeRow
        {
            Id = Guid.CreateVersion7(now), Purpose = purpose, Hash = Secrets.Hash(code), UserId = userId, Garden = garden, Role = role,
            MadeAtTicks = now.UtcTicks, EndsAtTicks = (now + lasts).UtcTicks,
        });
        await db.SaveChangesAsync();
        return code;
    }

    /// <summary>The code, when it may still be used.</summary>
    public async Task<CodeRow?> LookAsync(string purpose, string? typed)
    {
        var hash = Secrets.Hash(Secrets.Tidy(typed));
        var now = clock.GetUtcNow().UtcTicks;
        return await db.Codes.AsNoTracking().FirstOrDefaultAsync(c => c.Hash == hash && c.Purpose == purpose && c.UsedAtTicks == null && c.EndsAtTicks > now);
    }

    /// <summary>Uses a code up. Of two who try at once the database lets one through.</summary>
    public async Task<CodeRow?> UseAsync(string purpose, string? typed)
    {
        if (await LookAsync(purpose, typed) is not { } code)
        {
            return null;
        }

        var now = clock.GetUtcNow().UtcTicks;
        var taken = await db.Codes.Where(c => c.Id == code.Id && c.UsedAtTicks == null && c.EndsAtTicks > now)
            .ExecuteUpdateAsync(set => set.SetProperty(c => c.UsedAtTicks, now));
        return taken == 1 ? code : null;
    }

    /// <summary>Makes the codes of a purpose that nobody used useless: of one person, or all.</summary>
    public Task DropAsync(string purpose, string? userId = null) =>
        db.Codes.Where(c => c.Purpose == purpose && c.UsedAtTicks == null && (userId == null || c.UserId == userId)).ExecuteDeleteAsync();

    /// <summary>Invitations to a garden that still stand.</summary>
    public async Task<IReadOnlyList<CodeRow>> OpenInvitationsAsync(string garden)
    {
        var now = clock.GetUtcNow().UtcTicks;
        return await db.Codes.AsNoTracking().Where(c => c.Purpose == CodePurpose.Invitation && c.Garden == garden && c.UsedAtTicks == null && c.EndsAtTicks > now)
            .OrderBy(c => c.MadeAtTicks).ToListAsync();
    }

    /// <summary>Takes an invitation back.</summary>
    public async Task<bool> WithdrawAsync(string garden, Guid id) =>
        await db.Codes.Where(c => c.Id == id && c.Garden == garden && c.Purpose == CodePurpose.Invitation && c.UsedAtTicks == null).ExecuteDeleteAsync() == 1;
}
