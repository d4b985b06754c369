using Ashery.Accounts.Audit;
using Ashery.Accounts.Databases;
using Ashery.Accounts.Keys;
using Ashery.Accounts.Model;
using Ashery.Accounts.People;
using Ashery.Accounts.SignIn;
using Ashery.Accounts.Tokens;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;

namespace Ashery.Accounts;

/// <summary>Switches accounts on.</summary>
public static class AccountsSetup
{
    /// <summary>Rounds of PBKDF2 with HMAC-SHA512 (Identity's hash, version 3): two and a half times its own default.</summary>
    public const int HashRounds = 250_000;

    /// <summary>Chooses between cookie and token.</summary>
    public const string Scheme = "CookieOrToken";

    /// <param name="services">The application's services.</param>
    /// <param name="database">Where the accounts are kept; migrated already.</param>
    /// <param name="signInPath">Page that asks who it is.</param>
    /// <param name="secureOnly">True where everybody comes over HTTPS: cookies then never travel otherwise.</param>
    /// <param name="hashRounds">Rounds of the password hash; fewer in tests alone.</param>
    public static IServiceCollection AddAccounts(
        this IServiceCollection services, AccountsDatabase database, string signInPath, bool secureOnly, int hashRounds = HashRounds)
    {
        services.AddSingleton(database);
        services.AddScoped(_ => database.Open());
        services.AddSingleton<AuditLog>();
        services.AddScoped<Codes>().AddScoped<Memberships>().AddScoped<Roster>();
        services.AddScoped<Sessions>().AddScoped<SignInDesk>().AddScoped<AccessTokens>();
        services.AddDatabaseKeys(database);

        services.AddIdentityCore<AsheryUser>(identity =>
        {
            identity.Stores.SchemaVersion = IdentitySchemaVersions.Version3;
            identity.Lockout.MaxFailedAccessAttempts = 5;
            identity.Lockout.DefaultLockoutTimeSpan = TimeSpan.FromMinutes(5);

            // Our own rules judge passwords: length, and none that is guessed first.
            identity.Password.RequiredLength = Passwords.Least;
            identity.Password.RequireDigit = identity.Password.RequireLowercase = identity.Password.RequireUppercase = identity.Password.RequireNonAlphanumeric = false;
        }).AddEntityFrameworkStores<AccountsDb>().AddSignInManager().AddDefaultTokenProviders();
        services.Configure<PasswordHasherOptions>(hash => hash.IterationCount = hashRounds);

        services.AddAuthentication(Scheme)
            .AddPolicyScheme(Scheme, Scheme, choice => choice.ForwardDefaultSelector =
                static http => TokenHandler.Brings(http.Request) ? TokenHandler.SchemeName : IdentityConstants.ApplicationScheme)
            .AddScheme<AuthenticationSchemeOptions, TokenHandler>(TokenHandler.SchemeName, null)
            .AddIdentityCookies();
        services.Configure<CookieAuthenticationOptions>(IdentityConstants.ApplicationScheme, cookie =>
        {
            Shape(cookie, "ashery", secureOnly);
            cookie.LoginPath = signInPath;
            cookie.ReturnUrlParameter = "back";
            cookie.SlidingExpiration = false;
            cookie.ExpireTimeSpan = Sessions.PairedLongest;
            cookie.Events.OnValidatePrincipal = SessionGate.Check;
            cookie.Events.OnRedirectToLogin = context => Answer(context, StatusCodes.Status401Unauthorized);
            cookie.Events.OnRedirectToAccessDenied = context => Answer(context, StatusCodes.Status403Forbidden);
        });

        // Holds the challenge of a passkey between two requests.
        services.Configure<CookieAuthenticationOptions>(IdentityConstants.TwoFactorUserIdScheme, cookie => Shape(cookie, "ashery-passkey", secureOnly));
        return services;
    }

    /// <summary>Keeps the keys of cookies and forms in the database.</summary>
    public static IServiceCollection AddDatabaseKeys(this IServiceCollection services, AccountsDatabase database)
    {
        services.AddDataProtection().SetApplicationName("Ashery");
        services.AddSingleton<IConfigureOptions<KeyManagementOptions>>(new ConfigureOptions<KeyManagementOptions>(keys => keys.XmlRepository = new DatabaseKeys(database)));
        return services;
    }

    private static void Shape(CookieAuthenticationOptions options, string name, bool secureOnly)
    {
        // __Host- binds the cookie to this very host and to HTTPS (RFC 6265bis, cookie name prefixes).
        options.Cookie.Name = secureOnly ? "__Host-" + name : name;
        options.Cookie.HttpOnly = true;
        options.Cookie.SameSite = SameSiteMode.Lax;
        options.Cookie.SecurePolicy = secureOnly ? CookieSecurePolicy.Always : CookieSecurePolicy.SameAsRequest;
        options.Cookie.Path = "/";
        options.Cookie.IsEssential = true;
    }

    // A page is sent to the sign-in, a program is told.
    private static Task Answer(RedirectContext<CookieAuthenticationOptions> context, int status)
    {
        var request = context.Request;
        var forPeople = HttpMethods.IsGet(request.Method) && !request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase);
        if (status == StatusCodes.Status401Unauthorized && forPeople)
        {
            context.Response.Redirect(context.RedirectUri);
        }
        else
        {
            context.Response.StatusCode = status;
        }

        return Task.CompletedTask;
    }
}
