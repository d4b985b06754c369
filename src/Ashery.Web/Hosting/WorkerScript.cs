using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Components;

namespace Ashery.Web.Hosting;

/// <summary>
/// <c>/sw.js</c>: names the version and the files of this build and hands over to <c>worker.js</c>. It changes whenever a file does, and that is
/// how a browser learns of a new version.
/// </summary>
internal static class WorkerScript
{
    public const string Path = "/sw.js";

    private static readonly string[] Names = ["ashery.css", "ashery.js", "diary.css", "diary.js", "queue.js", "offline.js", "mark.svg", "_framework/blazor.web.js"];

    public static IResult Send(HttpContext context, EndpointDataSource endpoints)
    {
        var assets = endpoints.Endpoints.Select(static e => e.Metadata.GetMetadata<ResourceAssetCollection>()).FirstOrDefault(static a => a is not null) ?? ResourceAssetCollection.Empty;
        List<string> files = [LookSheet.Address, .. Names.Select(name => "/" + assets[name]), "/manifest.webmanifest", "/icon-192.png"];
        var (queue, worker) = ("/" + assets["queue.js"], "/" + assets["worker.js"]);
        var version = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', [.. files, worker]))))[..12];
        context.Response.Headers.CacheControl = "no-cache";
        return Results.Text(
            $"self.Ashery = {{ version: \"{version}\", files: [{string.Join(", ", files.Select(static f => $"\"{JsonEncodedText.Encode(f)}\""))}] }};\nimportScripts(\"{queue}\", \"{worker}\");\n",
            "text/javascript",
            Encoding.UTF8);
    }
}
