using Ashery.Accounts.Audit;
using Ashery.Accounts.Model;
using Ashery.Problems;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Accounts.People;

/// <summary>Somebody in a garden.</summary>
public sealed record Member(string UserId, string Name, MemberRole Role);

/// <summary>Who belongs to which garden. Every change asks here whether whoever wishes it may.</summary>
public sealed class Memberships(AccountsDb db, AuditLog audit)
{
    private static readonly Problem NotYours = new("role", "Only an owner of the garden may do this.", "Ask one of its owners.");

    public async Task<MemberRole?> RoleAsync(string userId, string garden) =>
        await db.Memberships.Where(m => m.UserId == userId && m.Garden == garden).Select(m => (MemberRole?)m.Role).FirstOrDefaultAsync();

    /// <summary>Gardens of a person, by key.</summary>
    public async Task<IReadOnlyList<MembershipRow>> OfAsync(string userId) =>
        await db.Memberships.AsNoTracking().Where(m => m.UserId == userId).OrderBy(m => m.Garden).ToListAsync();

    public async Task<IReadOnlyList<Member>> InAsync(string garden) => await db.Memberships.Where(m => m.Garden == garden)
        .Join(db.Users, m => m.UserId, u => u.Id, (m, u) => new { u.Id, u.UserName, m.Role })
        .OrderBy(m => m.UserName).Select(m => new Member(m.Id, m.UserName!, m.Role)).ToListAsync();

    /// <summary>Puts somebody into a garden, or gives them another role there.</summary>
    public async Task AddAsync(string garden, string userId, MemberRole role, string from)
    {
        var row = await db.Memberships.FirstOrDefaultAsync(m => m.Garden == garden && m.UserId == userId);
        if (row is null)
        {
            db.Memberships.Add(new MembershipRow { Garden = garden, UserId = userId, Role = role });
        }
        else if (row.Role < role)
        {
            // An invitation never takes away.
            row.Role = role;
        }

        await db.SaveChangesAsync();
        audit.Write(AuditKind.Joined, userId, from, role.ToString(), garden);
    }

    /// <summary>Changes a role, or removes somebody (null).</summary>
    public async Task<Problem?> ChangeAsync(string by, string garden, string userId, MemberRole? role, string from)
    {
        var problem = await ChangeWholeAsync(by, garden, userId, role);

        // The log has a connection of its own, which on SQLite would wait for the transaction.
        if (problem is null)
        {
            audit.Write(role is null ? AuditKind.Removed : AuditKind.RoleChanged, userId, from, role?.ToString() ?? "", garden);
        }
        else if (problem == NotYours)
        {
            audit.Write(AuditKind.Refused, by, from, "change of a role", garden);
        }

        return problem;
    }

    private async Task<Problem?> ChangeWholeAsync(string by, string garden, string userId, MemberRole? role)
    {
        await using var whole = await db.Database.BeginTransactionAsync();
        if (await RoleAsync(by, garden) != MemberRole.Owner && !(by == userId && role is null))
        {
            return NotYours;
        }

        var row = await db.Memberships.FirstOrDefaultAsync(m => m.Garden == garden && m.UserId == userId);
        if (row is null)
        {
            return new("person", "This person does not belong to the garden.", "Invite them.");
        }

        if (row.Role == MemberRole.Owner && role != MemberRole.Owner && await db.Memberships.CountAsync(m => m.Garden == garden && m.Role == MemberRole.Owner) == 1)
        {
            return new("role", "This is the garden's only owner.", "Make somebody else an owner first.");
        }

        if (role is { } given)
        {
            row.Role = given;
        }
        else
        {
            db.Memberships.Remove(row);
        }

        await db.SaveChangesAsync();
        await whole.CommitAsync();
        return null;
    }
}
