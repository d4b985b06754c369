using System.Globalization;
using Ashery.Web.Gardens;
using Microsoft.AspNetCore.Http.Features;

namespace Ashery.Web.Hosting;

/// <summary>
/// Answers a file that is too large with words. The rest of the upload is read and thrown away first: a browser that is
/// still sending when the connection closes shows its own error and never our answer.
/// </summary>
internal static class UploadLimit
{
    public const long Most = 4 * 1024 * 1024;

    /// <summary>Photographs together.</summary>
    public const long MostPhotos = 120 * 1024 * 1024;

    private const long WorthDraining = 1024L * 1024 * 1024;

    public static IApplicationBuilder UseUploadLimit(this IApplicationBuilder app) => app.Use(static async (context, next) =>
    {
        var length = context.Request.ContentLength;
        var most = MostOf(context.Request.Path.Value ?? "");
        if (most > Most && context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } larger)
        {
            larger.MaxRequestBodySize = most;
        }

        if (!(length > most))
        {
            await next(context);
            return;
        }

        if (length <= WorthDraining && context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
        {
            size.MaxRequestBodySize = WorthDraining;
            await context.Request.Body.CopyToAsync(Stream.Null, context.RequestAborted);
        }

        var megabytes = (length.Value / 1048576.0).ToString("0.#", CultureInfo.InvariantCulture);
        context.Response.Redirect($"/too-large?size={megabytes}&from={Uri.EscapeDataString(context.Request.Path)}");
    });

    // A backup brings its photographs along.
    private static long MostOf(string path) => path switch
    {
        "/settings/backup" => BackupDesk.Most,
        _ when path.StartsWith("/pots/", StringComparison.Ordinal) && path.EndsWith("/photos", StringComparison.Ordinal) => MostPhotos,
        _ => Most,
    };
}
