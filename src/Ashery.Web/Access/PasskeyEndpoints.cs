using System.Net;
using Ashery.Accounts.Audit;
using Ashery.Accounts.Model;
using Ashery.Accounts.SignIn;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Identity;

namespace Ashery.Web.Access;

/// <summary>What the script of passkeys asks for (Web Authentication, W3C). Identity makes and checks the challenges.</summary>
internal static class PasskeyEndpoints
{
    private const int LongestAnswer = 64 * 1024;

    public static void MapPasskeys(this IEndpointRouteBuilder app)
    {
        app.MapPost("/account/passkeys/options", OptionsToAdd).WithMetadata(new NoGardenNeededAttribute(), new ReadersMayAttribute());
        app.MapPost("/account/passkeys", Add).WithMetadata(new NoGardenNeededAttribute(), new ReadersMayAttribute());
        app.MapPost("/sign-in/passkey/options", OptionsToEnter).AllowAnonymous().WithMetadata(new ReadersMayAttribute());
        app.MapPost("/sign-in/passkey", Enter).AllowAnonymous().WithMetadata(new ReadersMayAttribute(), new TriesAreCountedAttribute());
    }

    /// <summary>A relying party's id is a domain, never an address of numbers, and a browser wants HTTPS or this machine.</summary>
    public static bool Work(HttpContext http) =>
        !IPAddress.TryParse(http.Request.Host.Host, out _) && (http.Request.IsHttps || http.Request.Host.Host == "localhost");

    private static async Task<IResult> OptionsToAdd(HttpContext http, IAntiforgery forms, SignInManager<AsheryUser> manager, UserManager<AsheryUser> users)
    {
        if (!await forms.IsRequestValidAsync(http) || await users.GetUserAsync(http.User) is not { } user)
        {
            return Results.BadRequest();
        }

        var options = await manager.MakePasskeyCreationOptionsAsync(new PasskeyUserEntity { Id = user.Id, Name = user.UserName!, DisplayName = user.UserName! });
        return Results.Content(options, "application/json");
    }

    private static async Task<IResult> Add(HttpContext http, IAntiforgery forms, SignInManager<AsheryUser> manager, UserManager<AsheryUser> users, AuditLog audit)
    {
        if (!await forms.IsRequestValidAsync(http) || await users.GetUserAsync(http.User) is not { } user || await Answer(http) is not { } answer)
        {
            return Results.BadRequest();
        }

        var checkedAnswer = await manager.PerformPasskeyAttestationAsync(answer);
        if (!checkedAnswer.Succeeded)
        {
            audit.Write(AuditKind.Refused, user.Id, SignInDesk.From(http), "passkey");
            return Results.BadRequest();
        }

        checkedAnswer.Passkey.Name = Devices.Name(http.Request.Headers.UserAgent);
        var kept = await users.AddOrUpdatePasskeyAsync(user, checkedAnswer.Passkey);
        if (!kept.Succeeded)
        {
            return Results.BadRequest();
        }

        audit.Write(AuditKind.PasskeyAdded, user.Id, SignInDesk.From(http), checkedAnswer.Passkey.Name);
        return Results.NoContent();
    }

    private static async Task<IResult> OptionsToEnter(HttpContext http, IAntiforgery forms, SignInManager<AsheryUser> manager) =>
        await forms.IsRequestValidAsync(http) ? Results.Content(await manager.MakePasskeyRequestOptionsAsync(null), "application/json") : Results.BadRequest();

    private static async Task<IResult> Enter(HttpContext http, IAntiforgery forms, SignInManager<AsheryUser> manager, UserManager<AsheryUser> users, SignInDesk desk, AuditLog audit)
    {
        if (!await forms.IsRequestValidAsync(http) || await Answer(http) is not { } answer)
        {
            return Results.BadRequest();
        }

        var shown = await manager.PerformPasskeyAssertionAsync(answer);
        if (!shown.Succeeded)
        {
            audit.Write(AuditKind.SignInFailed, null, SignInDesk.From(http), "passkey");
            return Results.BadRequest();
        }

        await users.AddOrUpdatePasskeyAsync(shown.User, shown.Passkey);
        await desk.EnterAsync(http, shown.User, paired: false);
        return Results.NoContent();
    }

    private static async Task<string?> Answer(HttpContext http)
    {
        if (http.Request.ContentLength is null or > LongestAnswer || !http.Request.HasJsonContentType())
        {
            return null;
        }

        using var reader = new StreamReader(http.Request.Body);
        return await reader.ReadToEndAsync(http.RequestAborted);
    }
}
