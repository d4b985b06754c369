using System.Security.Claims;
using Ashery.Accounts.Audit;
using Ashery.Accounts.Model;
using Ashery.Accounts.People;
using Ashery.Problems;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Identity;

namespace Ashery.Accounts.SignIn;

/// <summary>The ways in: password, passkey, paired phone.</summary>
public sealed class SignInDesk(
    SignInManager<AsheryUser> manager, UserManager<AsheryUser> users, IPasswordHasher<AsheryUser> hasher, Sessions sessions, Codes codes, AuditLog audit)
{
    /// <summary>Said alike for a name that is not known and for a wrong password: nobody learns which names there are.</summary>
    private static readonly Problem Wrong = new("name", "Name and password do not go together.", "Check both. After five wrong tries the account waits five minutes.");

    public async Task<Result<AsheryUser>> PasswordAsync(string? name, string? password, string from)
    {
        var typed = (password ?? "").Length > Passwords.Most ? "" : password ?? "";
        if (await users.FindByNameAsync((name ?? "").Trim()) is not { } user)
        {
            // As slow as a name that is known.
            hasher.HashPassword(new AsheryUser(), typed);
            audit.Write(AuditKind.SignInFailed, null, from, "unknown name");
            return Result.Fail<AsheryUser>(Wrong);
        }

        var checkedPassword = await manager.CheckPasswordSignInAsync(user, typed, lockoutOnFailure: true);
        if (checkedPassword.Succeeded)
        {
            return Result.Of(user);
        }

        audit.Write(checkedPassword.IsLockedOut ? AuditKind.LockedOut : AuditKind.SignInFailed, user.Id, from);
        return Result.Fail<AsheryUser>(Wrong);
    }

    /// <summary>The phone that shows a pairing code.</summary>
    public async Task<Result<AsheryUser>> PairAsync(string? code, string from)
    {
        var used = await codes.UseAsync(CodePurpose.Pairing, code);
        if (used?.UserId is { } id && await users.FindByIdAsync(id) is { } user)
        {
            audit.Write(AuditKind.Paired, user.Id, from);
            return Result.Of(user);
        }

        audit.Write(AuditKind.CodeRefused, null, from, CodePurpose.Pairing);
        return Result.Fail<AsheryUser>("code", "This code is not known, was used or has ended.", "Show a new one on the computer: each works once, for five minutes.");
    }

    /// <summary>Begins a session in this browser; whatever session it had before is left behind.</summary>
    public async Task EnterAsync(HttpContext http, AsheryUser user, bool paired, bool stay = false)
    {
        var session = await sessions.BeginAsync(user, Devices.Name(http.Request.Headers.UserAgent), paired);
        var principal = await manager.CreateUserPrincipalAsync(user);
        ((ClaimsIdentity)principal.Identity!).AddClaim(new Claim(Sessions.Claim, session.Id.ToString("N")));
        await http.SignInAsync(IdentityConstants.ApplicationScheme, principal, new AuthenticationProperties
        {
            IsPersistent = paired || stay,
            ExpiresUtc = new DateTimeOffset(session.EndsAtTicks, TimeSpan.Zero),
            AllowRefresh = false,
        });
        audit.Write(AuditKind.SignedIn, user.Id, From(http), session.Device);
    }

    public async Task LeaveAsync(HttpContext http)
    {
        if (http.User.FindFirstValue(ClaimTypes.NameIdentifier) is { } user && Guid.TryParse(http.User.FindFirstValue(Sessions.Claim), out var session))
        {
            await sessions.EndAsync(user, session, From(http));
            audit.Write(AuditKind.SignedOut, user, From(http));
        }

        await http.SignOutAsync(IdentityConstants.ApplicationScheme);
    }

    /// <summary>Where a request comes from, for the log.</summary>
    public static string From(HttpContext http) => http.Connection.RemoteIpAddress?.ToString() ?? "";
}
