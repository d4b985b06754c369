using System.Globalization;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Records.Stores;
using Ashery.Web.Access;

namespace Ashery.Web.Hosting;

/// <summary>How the web application is started.</summary>
public sealed record ServerOptions
{
    /// <summary>Tried first when no port is asked for; the next free one is taken when it is in use.</summary>
    public const int DefaultPort = 8741;

    /// <summary>Port on this machine; null takes the next free one from <see cref="DefaultPort"/> on, 0 any.</summary>
    public int? Port { get; init; }

    /// <summary>Addresses to listen on instead, as ASP.NET Core writes them; null keeps to this machine.</summary>
    public string? Urls { get; init; }

    /// <summary>File of the garden.</summary>
    public required string GardenFile { get; init; }

    /// <summary>Address of a PostgreSQL database to use in place of the file; null: the file.</summary>
    public string? Database { get; init; }

    /// <summary>Folder of the photographs; null for the one beside the garden.</summary>
    public string? PhotoFolder { get; init; }

    /// <summary>Records that are open already, in place of either; for tests.</summary>
    internal DbRecords? Records { get; init; }

    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Accounts, and who else may reach the application; null: this machine alone, without accounts.</summary>
    public AccessOptions? Access { get; init; }

    /// <summary>Collector of OpenTelemetry (OTLP over HTTP); null: nothing is measured.</summary>
    public Uri? Telemetry { get; init; }

    /// <summary>Reads <c>--port N</c>, <c>--garden FILE</c>, <c>--database ADDRESS</c>, <c>--photos FOLDER</c>, <c>--urls ADDRESSES</c>, and what <see cref="AccessWords"/> takes.</summary>
    public static Result<ServerOptions> Read(IReadOnlyList<string> args, Func<string, string?> environment)
    {
        var words = AccessWords.Take(args);
        if (!words.Ok)
        {
            return Result.Fail<ServerOptions>(words.Problems);
        }

        args = words.Value.Rest;
        var options = new ServerOptions
        {
            GardenFile = GardenPath.Default(environment), Urls = NotEmpty(environment("ASPNETCORE_URLS")), Access = words.Value.Access,
            Database = GardenPath.Server(environment), Telemetry = words.Value.Telemetry,
        };
        for (var i = 0; i < args.Count; i += 2)
        {
            var value = i + 1 < args.Count ? args[i + 1] : null;
            switch (args[i])
            {
                case "--port" when int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var port) && port <= 65535:
                    options = options with { Port = port };
                    break;
                case "--port":
                    return Result.Fail<ServerOptions>("--port", $"'{value}' is not a port.", "Write a number from 1 to 65535, as in --port 8741.");
                case "--garden" when NotEmpty(value) is { } file:
                    options = options with { GardenFile = file };
                    break;
                case "--database" when NotEmpty(value) is { } database:
                    options = options with { Database = database };
                    break;
                case "--photos" when NotEmpty(value) is { } photos:
                    options = options with { PhotoFolder = photos };
                    break;
                case "--urls" when NotEmpty(value) is { } urls:
                    options = options with { Urls = urls };
                    break;
                default:
                    return Result.Fail<ServerOptions>(
                        args[i], "This is not understood here.", "Use --port NUMBER, --garden FILE.db, --database postgres://USER@HOST/NAME, --photos FOLDER, --urls http://ADDRESS:PORT, --home, --accounts or --address https://NAME.");
            }
        }

        return AccessWords.Check(options.Access, options.Urls) is { } wrong ? Result.Fail<ServerOptions>(wrong) : Result.Of(options);
    }

    private static string? NotEmpty(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
