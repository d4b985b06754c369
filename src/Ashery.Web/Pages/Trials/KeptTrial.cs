using Ashery.Exchange.Trials;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Trials;
using Ashery.Trials.Results;

namespace Ashery.Web.Pages.Trials;

/// <summary>A trial kept in the journal, with what was written down so far.</summary>
internal sealed record KeptTrial(Guid Id, int Revision, DateOnly Day, AnalysisRequest Asked)
{
    public const string Stage = "trial";

    public Trial Trial => Asked.Trial;

    public static KeptTrial? Find(IJournal journal, Guid id) => journal.Find(id) is { IsRemoved: false } stored ? Of(stored) : null;

    /// <summary>Newest first.</summary>
    public static IReadOnlyList<KeptTrial> All(IJournal journal) =>
        [.. journal.Query(new() { Kinds = [EntryKind.KeptDocument], AtMost = 200 }).Select(Of).OfType<KeptTrial>()];

    /// <summary>What a new or changed trial is as an entry.</summary>
    public static Entry Entry(Guid id, DateOnly day, Trial trial, IReadOnlyList<TrialReading> readings) => new()
    {
        Id = id,
        Day = day,
        Facts = new KeptDocument(Stage, trial.Name, TrialFile.Write(trial, readings)),
    };

    /// <summary>Readings of one day put in place of those of that day.</summary>
    public static IReadOnlyList<TrialReading> With(IReadOnlyList<TrialReading> old, IReadOnlyList<TrialReading> more)
    {
        var now = more.Select(static r => (r.Pot, r.Date)).ToHashSet();
        return [.. old.Where(r => !now.Contains((r.Pot, r.Date))).Concat(more).OrderBy(static r => r.Date)];
    }

    private static KeptTrial? Of(StoredEntry stored) =>
        stored.Entry.Facts is KeptDocument { Stage: Stage } document && TrialFile.Read(document.Json) is { Ok: true } read
            ? new(stored.Entry.Id, stored.Revision, stored.Entry.Day, read.Value)
            : null;

    /// <summary>Everything that is wrong with it before it is written.</summary>
    public static IReadOnlyList<Problem> Check(Entry entry) => EntryRules.Check(entry);
}
