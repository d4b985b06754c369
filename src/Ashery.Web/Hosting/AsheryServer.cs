using System.Net;
using System.Net.Sockets;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Records.Moving;
using Ashery.Records.Photos;
using Ashery.Web.Api;
using Ashery.Web.Components;
using Ashery.Web.Downloads;
using Ashery.Web.Gardens;
using Ashery.Web.Photos;
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
            await output.FlushAsync();
            await app.WaitForShutdownAsync();
            return 0;
        }
    }

    /// <summary>The application, not yet started.</summary>
    public static Result<WebApplication> Build(ServerOptions options)
    {
        var records = Databases.Open(options.Database ?? options.GardenFile, options.Clock);
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
        builder.WebHost.UseUrls(options.Urls ?? FormattableString.Invariant($"http://127.0.0.1:{options.Port ?? FreePort.From(ServerOptions.DefaultPort)}"));
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = UploadLimit.Most;
        });
        builder.Logging.ClearProviders().AddSimpleConsole(console => console.SingleLine = true).SetMinimumLevel(LogLevel.Warning);

        // Keys only sign the forms of this machine's own pages; they lie beside the garden, readable by its owner.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Services.AddDataProtection().SetApplicationName("Ashery")
            .PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(options.GardenFile))!, "keys")));
        if (options.Urls is null)
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
        FirstGarden.Plant(records.Value.Garden(IRecords.Home), options.Clock);
        return Result.Of(Pipeline(builder.Build()));
    }

    /// <summary>Where a started application listens.</summary>
    public static string Address(WebApplication app) =>
        app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First().TrimEnd('/') + "/";

    private static WebApplication Pipeline(WebApplication app)
    {
        app.UseHostFiltering();
        app.UseResponseCompression();
        app.UseSecurityHeaders();
        app.UseExceptionHandler("/error", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseUploadLimit();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapGet("/health", () => "ok");
        app.MapGet(LookSheet.Path, LookSheet.Send);
        app.MapGet(WorkerScript.Path, WorkerScript.Send);
        app.MapJournal();
        app.MapPost("/light", ColourScheme.Choose);
        app.MapDownloads();
        app.MapPhotos();
        app.MapRazorComponents<App>();
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
