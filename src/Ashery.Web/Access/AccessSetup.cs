using Ashery.Accounts;
using Ashery.Accounts.Databases;
using Ashery.Accounts.People;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.HttpOverrides;

namespace Ashery.Web.Access;

/// <summary>Puts accounts into the application. Nothing of this is called where there are none.</summary>
internal static class AccessSetup
{
    public const string SignInPath = "/sign-in";

    public static void AddAccess(this WebApplicationBuilder builder, AccessOptions access, AccountsDatabase database)
    {
        database.Migrate();
        var services = builder.Services;
        services.AddSingleton(access);
        services.AddAccounts(database, SignInPath, access.SecureOnly, access.HashRounds ?? AccountsSetup.HashRounds);
        services.AddSingleton<IAuthorizationHandler, BelongsHandler>();
        services.AddAuthorizationBuilder()
            .SetDefaultPolicy(new AuthorizationPolicyBuilder().AddRequirements(new Belongs()).Build())
            .SetFallbackPolicy(new AuthorizationPolicyBuilder().AddRequirements(new Belongs()).Build());
        services.AddCascadingAuthenticationState();
        services.AddLimits(access);
        services.Configure<AntiforgeryOptions>(forms =>
        {
            forms.Cookie.Name = access.SecureOnly ? "__Host-ashery-forms" : "ashery-forms";
            forms.Cookie.SecurePolicy = access.SecureOnly ? CookieSecurePolicy.Always : CookieSecurePolicy.SameAsRequest;
            forms.Cookie.Path = "/";
            forms.Cookie.HttpOnly = true;
        });
        services.Configure<ForwardedHeadersOptions>(proxy =>
        {
            // The host's name is never taken from a header: the address that people use is said at the start.
            proxy.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto;
            foreach (var address in access.Proxies)
            {
                proxy.KnownProxies.Add(address);
            }
        });
        if (access.Address is { } address)
        {
            services.Configure<HostFilteringOptions>(hosts => hosts.AllowedHosts = [address.Host, "127.0.0.1", "localhost", "[::1]"]);
        }
    }

    /// <summary>Before anything else looks at the caller.</summary>
    public static void UseCallers(this WebApplication app, AccessOptions access)
    {
        if (access.Address is not null)
        {
            app.UseForwardedHeaders();
        }
    }

    /// <summary>After the pages for errors, so that these too know who is asking.</summary>
    public static void UseAccess(this WebApplication app, AccessOptions access)
    {
        if (access.SecureOnly)
        {
            app.Use(static (http, next) =>
            {
                if (http.Request.IsHttps)
                {
                    http.Response.OnStarting(static state =>
                    {
                        ((HttpContext)state).Response.Headers.StrictTransportSecurity = "max-age=31536000; includeSubDomains";
                        return Task.CompletedTask;
                    }, http);
                }

                return next(http);
            });
        }

        app.UseAuthentication();
        app.UseRateLimiter();
        app.Use(static next => http => WhoseGarden.Fill(http, next));
        app.UseAuthorization();
        app.Use(static next => http => RoleGate.Guard(http, next));
        app.Use(static next => http => ExportLog.Note(http, next));
    }

    /// <summary>The code for the first account; null when there is an account.</summary>
    public static async Task<string?> FirstCode(IServiceProvider services)
    {
        await using var scope = services.CreateAsyncScope();
        return await scope.ServiceProvider.GetRequiredService<Roster>().FirstCodeAsync();
    }
}
