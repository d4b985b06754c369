using Ashery.Accounts.Audit;
using Ashery.Accounts.Model;
using Ashery.Problems;
using Ashery.Records;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Accounts.People;

/// <summary>Makes accounts: the first with the code that the computer printed, later ones with an invitation.</summary>
public sealed class Roster(AccountsDb db, UserManager<AsheryUser> users, Codes codes, Memberships memberships, AuditLog audit, TimeProvider clock)
{
    private static readonly Problem NoCode = new("code", "This code is not known, was used or has ended.", "Ask for a new one.");

    public Task<bool> IsEmptyAsync() => db.Users.AllAsync(static _ => false);

    /// <summary>A code for the first account; null when there is an account.</summary>
    public async Task<string?> FirstCodeAsync() =>
        await IsEmptyAsync() ? await codes.MakeAsync(CodePurpose.FirstAccount, Codes.FirstAccountLasts) : null;

    /// <summary>The first account: owner of the garden that was here before there were accounts.</summary>
    public async Task<Result<AsheryUser>> MakeFirstAsync(string? code, string name, string password, string from)
    {
        if (!await IsEmptyAsync() || await codes.LookAsync(CodePurpose.FirstAccount, code) is null)
        {
            audit.Write(AuditKind.CodeRefused, null, from, CodePurpose.FirstAccount);
            return Result.Fail<AsheryUser>(NoCode);
        }

        var made = await MakeAsync(name, password, isKeeper: true, from, () => codes.UseAsync(CodePurpose.FirstAccount, code));
        if (made.Ok)
        {
            await memberships.AddAsync(IRecords.Home, made.Value.Id, MemberRole.Owner, from);
            await codes.DropAsync(CodePurpose.FirstAccount);
        }

        return made;
    }

    /// <summary>An account for somebody who was invited.</summary>
    public async Task<Result<AsheryUser>> MakeInvitedAsync(string? code, string name, string password, string from)
    {
        if (await codes.LookAsync(CodePurpose.Invitation, code) is not { } invitation)
        {
            audit.Write(AuditKind.CodeRefused, null, from, CodePurpose.Invitation);
            return Result.Fail<AsheryUser>(NoCode);
        }

        var made = await MakeAsync(name, password, isKeeper: false, from, () => codes.UseAsync(CodePurpose.Invitation, code));
        if (made.Ok)
        {
            await memberships.AddAsync(invitation.Garden!, made.Value.Id, invitation.Role!.Value, from);
        }

        return made;
    }

    /// <summary>Takes an invitation with an account that is there.</summary>
    public async Task<Result<string>> JoinAsync(string? code, string userId, string from)
    {
        if (await codes.UseAsync(CodePurpose.Invitation, code) is not { } invitation)
        {
            audit.Write(AuditKind.CodeRefused, userId, from, CodePurpose.Invitation);
            return Result.Fail<string>(NoCode);
        }

        await memberships.AddAsync(invitation.Garden!, userId, invitation.Role!.Value, from);
        return Result.Of(invitation.Garden!);
    }

    /// <summary>An invitation to a garden, by one of its owners.</summary>
    public async Task<Result<string>> InviteAsync(string by, string garden, MemberRole role, string from)
    {
        if (await memberships.RoleAsync(by, garden) != MemberRole.Owner)
        {
            audit.Write(AuditKind.Refused, by, from, "invitation", garden);
            return Result.Fail<string>("role", "Only an owner of the garden may invite.", "Ask one of its owners.");
        }

        var code = await codes.MakeAsync(CodePurpose.Invitation, Codes.InvitationLasts, by, garden, role);
        audit.Write(AuditKind.Invited, by, from, role.ToString(), garden);
        return Result.Of(code);
    }

    /// <summary>Another password, for who knows the one before. Every other session ends.</summary>
    public async Task<Problem?> ChangePasswordAsync(AsheryUser user, string current, string fresh, string from)
    {
        if (Passwords.Check(fresh, user.UserName!) is { } weak)
        {
            return weak;
        }

        var changed = await users.ChangePasswordAsync(user, current, fresh);
        if (!changed.Succeeded)
        {
            audit.Write(AuditKind.Refused, user.Id, from, "change of the password");
            return new("current", "This is not your password.", "Type the password you signed in with.");
        }

        audit.Write(AuditKind.PasswordChanged, user.Id, from);
        return null;
    }

    private async Task<Result<AsheryUser>> MakeAsync(string name, string password, bool isKeeper, string from, Func<Task<CodeRow?>> useCode)
    {
        if (Passwords.Check(password, name) is { } weak)
        {
            return Result.Fail<AsheryUser>(weak);
        }

        // The account and the use of the code are one step: neither stands without the other.
        await using var whole = await db.Database.BeginTransactionAsync();
        var user = new AsheryUser { UserName = name.Trim(), IsKeeper = isKeeper, MadeAtTicks = clock.GetUtcNow().UtcTicks };
        var made = await users.CreateAsync(user, password);
        if (!made.Succeeded)
        {
            return Result.Fail<AsheryUser>([.. made.Errors.Select(Say)]);
        }

        if (await useCode() is null)
        {
            return Result.Fail<AsheryUser>(NoCode);
        }

        await whole.CommitAsync();
        audit.Write(AuditKind.AccountMade, user.Id, from, user.UserName);
        return Result.Of(user);
    }

    private static Problem Say(IdentityError error) => error.Code switch
    {
        "DuplicateUserName" => new("name", "Somebody here has this name already.", "Take another."),
        "InvalidUserName" => new("name", "A name has letters, digits, and - . _ between them.", "Write it without spaces, as in fern-hill."),
        _ => new("name", error.Description, "Try another."),
    };
}
