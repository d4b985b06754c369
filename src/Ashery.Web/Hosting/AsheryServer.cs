using System.Net;
using System.Net.Sockets;
using System.Runtime.CompilerServices;
using Ashery.Accounts;
using Ashery.Accounts.Databases;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Records.Moving;
using Ashery.Records.Photos;
using Ashery.Web.Access;
using Ashery.Web.Api;
using Ashery.Web.Components;
using Ashery.Web.Downloads;
using Ashery.Web.Gardens;
using Ashery.Web.Photos;
using Ashery.Web.Home;
using Ashery.Web.Reminders;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.HostFiltering;

namespace Ashery.Web.Hosting;

/// <summary>Builds and runs the web application.</summary>
public static class AsheryServer
{
    /// <summary>Exit code for a garden or an address that cannot be used.</summary>
    private const int WrongUse = 2;

    /// <summary>Serves until told to stop.</summary>
    public static async Task<int> RunAsync(string[] args, TextWriter output, TextWriter errors)
    {
        var options = ServerOptions.Read(args, Environment.GetEnvironmentVariable);
        if (!options.Ok)
        {
            return await Say(errors, options.Problems);
        }

        // Another program may take the port between the look and the listening: then the next one is tried.
        for (var tries = 0; ; tries++)
        {
            var built = Build(options.Value);
            if (!built.Ok)
            {
                return await Say(errors, built.Problems);
            }

            await using var app = built.Value;
            try
            {
                await app.StartAsync();
            }
            catch (Exception e) when (e is IOException or SocketException or FormatException or InvalidOperationException)
            {
                if (options.Value is { Port: null, Urls: null } && tries < 5)
                {
                    continue;
                }

                return await Say(errors, [new Problem("address", e.Message, "Name another port with --port, or none to take a free one.")]);
            }

            await output.WriteLineAsync($"Ashery is at {Address(app)}  (stop with Ctrl+C)");
            if (options.Value.Access is not null)
            {
                await Welcome.SayAsync(app, output);
            }

            await output.FlushAsync();
            await app.WaitForShutdownAsync();
            return 0;
        }
    }

    /// <summary>The application, not yet started.</summary>
    public static Result<WebApplication> Build(ServerOptions options)
    {
        var records = options.Records is { } given ? Result.Of(given) : Databases.Open(options.Database ?? options.GardenFile, options.Clock);
        if (!records.Ok)
        {
            return Result.Fail<WebApplication>(records.Problems);
        }

        // The program's own folder, wherever it is started from.
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(AsheryServer).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
        });
        builder.WebHost.UseStaticWebAssets();
        var folder = Path.GetDirectoryName(Path.GetFullPath(options.GardenFile))!;
        var home = options.Access is { Home: true }
            ? HomeHost.Add(builder, Path.Combine(folder, "home"), options.Clock, options.Port ?? FreePort.From(ServerOptions.DefaultPort), options.Port == 0 ? 0 : FreePort.From(HomeHost.DefaultSecurePort))
            : null;
        if (home is null)
        {
            builder.WebHost.UseUrls(options.Urls ?? FormattableString.Invariant($"http://127.0.0.1:{options.Port ?? FreePort.From(ServerOptions.DefaultPort)}"));
        }

        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = UploadLimit.Most;
        });
        builder.Logging.ClearProviders().AddSimpleConsole(console => console.SingleLine = true).SetMinimumLevel(LogLevel.Warning);

        // Keys only sign the forms of this machine's own pages; they lie beside the garden, readable by its owner.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Services.AddDataProtection().SetApplicationName("Ashery")
            .PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(folder, "keys")));
        if (options.Urls is null && home is null)
        {
            // Only this machine's names: a page elsewhere cannot reach the garden by pointing its own name here.
            builder.Services.Configure<HostFilteringOptions>(hosts => hosts.AllowedHosts = ["127.0.0.1", "localhost", "[::1]"]);
        }

        builder.Services.AddResponseCompression();
        builder.Services.AddRazorComponents();
        builder.Services.AddHttpContextAccessor();
        builder.Services.AddSingleton(options.Clock);
        builder.Services.AddGardens(records.Value);
        builder.Services.AddSingleton(options.PhotoFolder is { } photos ? new PhotoFiles(photos) : PhotoFiles.Beside(options.GardenFile));
        builder.Services.AddBackups(options.Database ?? options.GardenFile, options.GardenFile);
        FirstGarden.Plant(records.Value.Garden(IRecords.Home), options.Clock);
        builder.Services.AddApi();
        if (options.Access is { } access)
        {
            AddAccounts(builder, access, options.Database ?? options.GardenFile);
        }
        else if (options.Database is { } shared)
        {
            // Several instances on one database sign and read each other's forms.
            AddSharedKeys(builder, shared);
        }

        if (options.Telemetry is { } collector)
        {
            builder.Services.AddTelemetry(collector);
        }

        return Result.Of(Pipeline(builder.Build(), options.Access, home));
    }

    /// <summary>Where a started application listens for this machine.</summary>
    public static string Address(WebApplication app) =>
        app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First().TrimEnd('/').Replace("0.0.0.0", "127.0.0.1", StringComparison.Ordinal) + "/";

    // A method of its own: where there are no accounts nothing of them is loaded.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void AddAccounts(WebApplicationBuilder builder, AccessOptions access, string database)
    {
        builder.Logging.AddFilter("Ashery.Accounts", LogLevel.Information);
        builder.AddAccess(access, AccountsDatabase.Of(database));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void AddSharedKeys(WebApplicationBuilder builder, string database)
    {
        var keys = AccountsDatabase.Of(database);
        keys.Migrate();
        builder.Services.AddDatabaseKeys(keys);
    }

    private static WebApplication Pipeline(WebApplication app, AccessOptions? access, HomeHost? home)
    {
        if (access is not null)
        {
            app.UseCallers(access);
        }

        app.UseHostFiltering();
        app.UseResponseCompression();
        app.UseSecurityHeaders();
        app.UseExceptionHandler("/error", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseApiProblems();
        if (home is not null)
        {
            app.Use(next => http => home.Guard(http, next));
        }

        if (access is not null)
        {
            app.UseAccess(access);
        }

        app.UseUploadLimit();
        app.UseAntiforgery();
        app.MapStaticAssets().AllowAnonymous();
        app.MapHealth();
        app.MapGet(LookSheet.Path, LookSheet.Send).AllowAnonymous();
        app.MapGet(WorkerScript.Path, WorkerScript.Send).AllowAnonymous();
        app.MapJournal();
        app.MapReminders();
        app.MapPost("/light", ColourScheme.Choose).AllowAnonymous().WithMetadata(new ReadersMayAttribute());
        app.MapDownloads();
        app.MapPhotos();
        app.MapApi();
        app.MapRazorComponents<App>().Finally(endpoint => AccountPages.Close(endpoint, access, home));
        if (access is not null)
        {
            app.MapPasskeys();
        }

        if (home is not null)
        {
            app.MapGet("/trust/ashery-home.crt", () => Results.File(home.Certificates.Authority, "application/x-x509-ca-cert", "ashery-home.crt")).AllowAnonymous();
        }

        return app;
    }

    private static async Task<int> Say(TextWriter errors, IReadOnlyList<Problem> problems)
    {
        foreach (var problem in problems)
        {
            await errors.WriteLineAsync(problem.ToString());
        }

        return WrongUse;
    }
}
