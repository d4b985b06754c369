using System.Globalization;
using System.Text.Json;
using Ashery.Exchange.Journal;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Records;

namespace Ashery.Web.Api;

/// <summary>The journal by HTTP.</summary>
internal static class JournalCalls
{
    private const int Most = 500, MostChanges = 200;

    public static void Map(IEndpointRouteBuilder garden)
    {
        garden.MapGet("/journal", Query).WithName("queryJournal").WithSummary("Entries, newest day first; filters narrow, 'after' goes on")
            .Produces<JournalPage>().Produces<ApiProblem>(422, "application/problem+json");
        garden.MapPost("/journal", Write).WithName("writeJournal").WithSummary("Writes changes together or not at all; the same change sent again is written once")
            .Accepts<JournalWrite>("application/json").Produces<JournalPage>().Produces<ApiProblem>(409, "application/problem+json").Produces<ApiProblem>(422, "application/problem+json");
        garden.MapGet("/journal/{id:guid}", Find).WithName("readEntry").WithSummary("An entry as it stands").Produces<EntryItem>().Produces<ApiProblem>(404, "application/problem+json");
        garden.MapGet("/journal/{id:guid}/revisions", Revisions).WithName("readRevisions").WithSummary("Every revision of an entry, newest first").Produces<IReadOnlyList<EntryItem>>();
    }

    private static IResult Query(IJournal journal, string? from, string? to, string[]? pot, string[]? kind, string? words, int? atMost, Guid? after)
    {
        List<Problem> problems = [];
        var query = new JournalQuery
        {
            From = Day("from", from, problems), To = Day("to", to, problems), Pots = pot ?? [], Kinds = kind ?? [], Words = words ?? "",
            AtMost = Math.Clamp(atMost ?? 100, 1, Most), After = after is { } id ? journal.Find(id) : null,
        };
        if (after is not null && query.After is null)
        {
            problems.Add(new("after", "There is no such entry.", "Send the 'next' of the part before."));
        }

        if (problems.Count > 0)
        {
            return ApiProblems.Wrong(problems);
        }

        var found = journal.Query(query);
        return Results.Json(new JournalPage([.. found.Select(Item)], found.Count == query.AtMost ? found[^1].Entry.Id : null));
    }

    private static IResult Find(IJournal journal, Guid id) => journal.Find(id) is { } entry ? Results.Json(Item(entry)) : Results.NotFound();

    private static IResult Revisions(IJournal journal, Guid id) => Results.Json(journal.Revisions(id).Select(Item).ToList());

    private static async Task<IResult> Write(HttpContext http, IJournal journal)
    {
        JournalWrite? sent;
        try
        {
            sent = await http.Request.ReadFromJsonAsync<JournalWrite>(http.RequestAborted);
        }
        catch (JsonException e)
        {
            return ApiProblems.Wrong("body", $"The JSON cannot be read: {e.Message}", "Send {\"changes\":[{\"id\":...,\"basedOn\":0,\"entry\":{...}}]}.");
        }

        if (sent?.Changes is not { Count: > 0 and <= MostChanges } wishes)
        {
            return ApiProblems.Wrong("changes", FormattableString.Invariant($"A call writes 1 to {MostChanges} changes."), "Send more in several calls.");
        }

        List<EntryChange> changes = [];
        List<Problem> problems = [];
        foreach (var (wish, i) in wishes.Select((w, i) => (w, i)))
        {
            Read(wish, i, changes, problems);
        }

        return problems.Count > 0 ? ApiProblems.Wrong(problems) : Answer(journal.Write(changes));
    }

    private static void Read(ChangeItem wish, int i, List<EntryChange> changes, List<Problem> problems)
    {
        if (wish.Entry is not { ValueKind: JsonValueKind.Object } body)
        {
            changes.Add(new EntryChange(wish.Id, wish.BasedOn, null));
            return;
        }

        var entry = JournalJson.Read(body.GetRawText());
        if (!entry.Ok)
        {
            problems.AddRange(entry.Problems.Select(p => p with { Field = FormattableString.Invariant($"changes[{i}].{p.Field}") }));
        }
        else if (entry.Value.Id != wish.Id)
        {
            problems.Add(new(FormattableString.Invariant($"changes[{i}].id"), "The change and its entry have different ids.", "Send the same id in both."));
        }
        else
        {
            changes.Add(new EntryChange(wish.Id, wish.BasedOn, entry.Value));
        }
    }

    private static IResult Answer(JournalOutcome outcome) => outcome switch
    {
        JournalOutcome.Written written => Results.Json(new JournalPage([.. written.Entries.Select(Item)], null)),
        JournalOutcome.Overtaken overtaken => ApiProblems.Wrong(
            "basedOn", FormattableString.Invariant($"Entry {overtaken.Theirs.Entry.Id} is at revision {overtaken.Theirs.Revision} by now, written by {Name(overtaken.Theirs.By)}."),
            "Read it again, bring your change into it, and send that.", StatusCodes.Status409Conflict),
        JournalOutcome.NotThere missing => ApiProblems.Wrong("id", $"There is no entry {missing.Id}.", "Send basedOn 0 for a new one.", StatusCodes.Status404NotFound),
        _ => throw new InvalidOperationException("An outcome of a write that nobody knows."),
    };

    private static EntryItem Item(StoredEntry stored) =>
        new(JsonSerializer.SerializeToElement(stored.Entry, JournalJson.TypeInfo), stored.Revision, stored.IsRemoved, stored.By, stored.At, stored.Sequence);

    private static DateOnly? Day(string field, string? text, List<Problem> problems)
    {
        if (string.IsNullOrEmpty(text))
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return day;
        }

        problems.Add(new(field, $"'{(text.Length > 40 ? text[..40] : text)}' is not a day.", "Write it as 2027-03-01."));
        return null;
    }

    private static string Name(string by) => by.Length > 0 ? by : "somebody";
}
