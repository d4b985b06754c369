using Ashery.Journal;
using Ashery.Records;
using Ashery.Records.Photos;
using Ashery.Records.Stores;

namespace Ashery.Web.Photos;

/// <summary>Photographs by their hash, only while an entry of the current garden names them: the address alone opens nothing.</summary>
internal static class PhotoEndpoints
{
    public static void MapPhotos(this IEndpointRouteBuilder app)
    {
        app.MapGet("/photos/{hash}", (string hash, HttpContext context, IJournal journal, PhotoFiles files) => Send(hash, small: false, context, journal, files));
        app.MapGet("/photos/{hash}/small", (string hash, HttpContext context, IJournal journal, PhotoFiles files) => Send(hash, small: true, context, journal, files));
    }

    private static IResult Send(string hash, bool small, HttpContext context, IJournal journal, PhotoFiles files)
    {
        if (!PhotoFiles.IsHash(hash) || !IsNamed(hash, journal) || files.Open(hash, small) is not { } picture)
        {
            return Results.NotFound();
        }

        // Kept by this browser alone, and asked for anew before it is shown again: what was removed or signed out is not shown from a store.
        var headers = context.Response.Headers;
        headers.CacheControl = "private, no-cache";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        return Results.File(picture, "image/jpeg", entityTag: new($"\"{hash[..16]}{(small ? "s" : "")}\""));
    }

    private static bool IsNamed(string hash, IJournal journal) => journal
        .Query(new JournalQuery { Kinds = [EntryKind.Photograph], Words = SearchWords.OfPhoto(hash), AtMost = 50 })
        .Any(e => e.Entry.Facts is Photograph p && p.Hash == hash);
}
