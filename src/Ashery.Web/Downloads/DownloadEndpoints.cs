namespace Ashery.Web.Downloads;

/// <summary>Everything that is a file rather than a page.</summary>
internal static class DownloadEndpoints
{
    public static void MapDownloads(this IEndpointRouteBuilder app)
    {
        _ = app;
    }
}
