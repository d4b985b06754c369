using System.Globalization;
using Ashery.Clinic.Outcomes;
using Ashery.Clinic;
using Ashery.Exchange.Clinic;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Records;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Clinic;

/// <summary>Visits to the clinic in the journal.</summary>
internal static class VisitDesk
{
    private const double WorthKeeping = 0.01;
    private const int MostRead = 500;

    /// <summary>An entry for a visit just made.</summary>
    public static Entry New(ClinicReport report, string potId, DateOnly today, Garden garden)
    {
        var pot = garden.Pots.FirstOrDefault(p => p.Id == potId);
        var ranked = report.Causes.Where(static c => c.Probability >= WorthKeeping).Select(static c => new RankedCause(c.Id, c.Probability)).ToList();
        var visit = new ClinicVisit(pot?.Id, report.Case, new ClinicOutcome(today, ranked, []));
        return new()
        {
            Id = Guid.NewGuid(),
            Day = today,
            Pots = pot is null ? [] : [pot.Id],
            Facts = new KeptDocument(VisitJson.Stage, Title(visit, pot?.Name), VisitJson.Write(visit)),
        };
    }

    /// <summary>The visit of an entry; null when it holds none.</summary>
    public static ClinicVisit? Of(StoredEntry? entry) =>
        entry is { IsRemoved: false, Entry.Facts: KeptDocument { Stage: VisitJson.Stage } kept } && VisitJson.Read(kept.Json) is { Ok: true } read ? read.Value : null;

    /// <summary>All visits, newest first.</summary>
    public static IReadOnlyList<(StoredEntry Entry, ClinicVisit Visit)> All(IJournal journal) =>
        [.. journal.Query(new() { Kinds = [EntryKind.KeptDocument], AtMost = MostRead }).Select(static e => (e, Of(e))).Where(static v => v.Item2 is not null).Select(static v => (v.e, v.Item2!))];

    /// <summary>The entry with another outcome.</summary>
    public static EntryChange Change(StoredEntry stored, ClinicVisit visit, int basedOn) => new(stored.Entry.Id, basedOn, stored.Entry with
    {
        Facts = ((KeptDocument)stored.Entry.Facts) with { Json = VisitJson.Write(visit) },
    });

    public static string Name(string causeId) => Say.Capital(PlantClinic.NameOf(causeId) ?? causeId);

    private static string Title(ClinicVisit visit, string? pot)
    {
        var first = visit.Outcome.Ranked.FirstOrDefault(static r => !IsUnknown(r.CauseId));
        var what = first is null ? "nothing certain" : string.Create(CultureInfo.InvariantCulture, $"{PlantClinic.NameOf(first.CauseId)} ({Math.Round(first.Probability * 100)} %)");
        return pot is null ? $"Clinic: {what}" : $"Clinic, {pot}: {what}";
    }

    private static bool IsUnknown(string causeId) => causeId is "something-else";
}
