using System.Security.Claims;
using Ashery.Accounts.Model;
using Ashery.Accounts.SignIn;
using Ashery.Problems;
using Ashery.Web.Forms;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Identity;

namespace Ashery.Web.Pages.Account;

/// <summary>A page about accounts. It is mapped only where there are any.</summary>
public abstract class AccountPage : ComponentBase
{
    [Inject]
    protected NavigationManager Nav { get; set; } = null!;

    [Inject]
    protected TimeProvider Clock { get; set; } = null!;

    [CascadingParameter]
    protected HttpContext? Context { get; set; }

    protected HttpContext Http => Context!;

    protected Draft Draft { get; set; } = Draft.Empty;

    protected IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>Network address of the caller, for the log.</summary>
    protected string From => SignInDesk.From(Http);

    protected string UserId => Http.User.FindFirstValue(ClaimTypes.NameIdentifier) ?? "";

    protected string UserName => Http.User.Identity?.Name ?? "";

    protected T The<T>()
        where T : notnull => Http.RequestServices.GetRequiredService<T>();

    /// <summary>The account of who is signed in, from the database.</summary>
    protected async Task<AsheryUser> UserAsync() =>
        await The<UserManager<AsheryUser>>().FindByIdAsync(UserId) ?? throw new InvalidOperationException("The account has gone.");

    protected Draft Sent() => Http.Request.HasFormContentType ? new Draft(Http.Request.Form) : Draft.Empty;

    /// <summary>A secret exactly as typed: not trimmed, not cut.</summary>
    protected string Secret(string name) => Http.Request.HasFormContentType ? Http.Request.Form[name].ToString() : "";

    protected string Asked(string name) => Http.Request.Query[name].ToString();

    /// <summary>Shows the form again with what is wrong; secrets that were typed are not sent back.</summary>
    protected void AskAgain(Draft sent, params IReadOnlyList<Problem> problems)
    {
        Draft = sent.Set("password", null).Set("current", null).Set("fresh", null);
        Problems = problems;
        if (!Http.Response.HasStarted)
        {
            Http.Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        }
    }

    /// <summary>A place on this site, whatever somebody wrote into the address.</summary>
    protected static string Local(string? path) =>
        path is { Length: > 0 } && path[0] == '/' && !path.StartsWith("//", StringComparison.Ordinal) && !path.Contains('\\', StringComparison.Ordinal) ? path : "/";

    protected string When(long ticks) => Show.Figures.Instant(TimeZoneInfo.ConvertTime(new DateTimeOffset(ticks, TimeSpan.Zero), Clock.LocalTimeZone));
}
