using System.Text;
using System.Text.Json;
using Ashery.Exchange.Journal;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Web.Gardens;

namespace Ashery.Web.Api;

/// <summary>
/// <c>POST /api/journal</c>: one entry or a list, each written by its id, so that what is sent again counts once. The shape of body and answer:
/// docs/offline.md.
/// </summary>
internal static class JournalEndpoint
{
    public const string Path = "/api/journal";

    private const int MostEntries = 100;

    public static void MapJournal(this IEndpointRouteBuilder app) => app.MapPost(Path, WriteAsync).DisableAntiforgery();

    private static async Task<IResult> WriteAsync(HttpContext context, IJournal journal, CurrentGarden whose)
    {
        if (!OwnPage.Sent(context.Request))
        {
            return Refuse(StatusCodes.Status403Forbidden, new Problem("page", "This came from a page of another address.", "Write from a page of this address."));
        }

        if (!context.Request.HasJsonContentType())
        {
            return Refuse(StatusCodes.Status415UnsupportedMediaType, new Problem("entry", "The content type is not JSON.", "Send application/json."));
        }

        if (whose.Role == GardenRole.Reader)
        {
            return Refuse(StatusCodes.Status403Forbidden, new Problem("garden", "You may look at this garden, not write in it.", "Ask its owner."));
        }

        using var reader = new StreamReader(context.Request.Body, Encoding.UTF8);
        var body = await reader.ReadToEndAsync(context.RequestAborted);
        var texts = Entries(body);
        if (!texts.Ok)
        {
            return Refuse(StatusCodes.Status422UnprocessableEntity, [.. texts.Problems]);
        }

        List<StoredEntry> written = [];
        List<WriteResult> results = [.. texts.Value.Select(text => Write(text, journal, written))];
        var status = results.Exists(static r => r is WriteResult.Refused) ? StatusCodes.Status422UnprocessableEntity
            : results.Exists(static r => r is WriteResult.Overtaken) ? StatusCodes.Status409Conflict
            : StatusCodes.Status200OK;
        return Results.Text(JournalAnswer.Write(results, written), "application/json", Encoding.UTF8, status);
    }

    // With a body: an empty answer would be replaced by the page for missing addresses.
    private static IResult Refuse(int status, params IReadOnlyList<Problem> problems) =>
        Results.Text(JournalAnswer.Write([new WriteResult.Refused(null, problems)], []), "application/json", Encoding.UTF8, status);

    /// <summary>Each by itself: one that is wrong does not hold the others back.</summary>
    private static WriteResult Write(string text, IJournal journal, List<StoredEntry> written)
    {
        var read = JournalJson.Read(text);
        if (!read.Ok)
        {
            return new WriteResult.Refused(null, read.Problems);
        }

        switch (journal.Write([EntryChange.New(read.Value)]))
        {
            case JournalOutcome.Written { Entries: [var stored, ..] }:
                written.Add(stored);
                return new WriteResult.Done(stored);
            case JournalOutcome.Overtaken overtaken:
                return new WriteResult.Overtaken(overtaken.Theirs);
            default:
                return new WriteResult.Refused(read.Value.Id, [new Problem("id", "This entry cannot be written.", "Send it under a new id.")]);
        }
    }

    private static Result<IReadOnlyList<string>> Entries(string body)
    {
        try
        {
            using var document = JsonDocument.Parse(body);
            if (document.RootElement.ValueKind != JsonValueKind.Array)
            {
                return Result.Of<IReadOnlyList<string>>([document.RootElement.GetRawText()]);
            }

            return document.RootElement.GetArrayLength() <= MostEntries
                ? Result.Of<IReadOnlyList<string>>([.. document.RootElement.EnumerateArray().Select(static e => e.GetRawText())])
                : Result.Fail<IReadOnlyList<string>>("entry", FormattableString.Invariant($"At most {MostEntries} entries go at once."), "Send the rest after these.");
        }
        catch (JsonException e)
        {
            return Result.Fail<IReadOnlyList<string>>("entry", $"This is not JSON: {e.Message}", "Send one entry or a list of entries.");
        }
    }
}
