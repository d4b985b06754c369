using System.Globalization;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Web.Forms;
using Ashery.Web.Gardens;

namespace Ashery.Web.Pages.Diary;

/// <summary>
/// Writes what a form of quick entry says: into the journal, and where it changes a pot, into the garden. Both are looked at first; the garden goes first,
/// for it can be overtaken, and then nothing is written at all.
/// </summary>
internal sealed class NoteWriter(IJournal journal, GardenDesk desk)
{
    public Result<JournalOutcome.Written> Write(Draft typed, FieldReader read, EntryFacts? facts, IReadOnlyList<string> pots, DateOnly today, TimeOnly now)
    {
        var day = read.Date("day") ?? today;
        if (day > today)
        {
            read.Add("day", "This day is still to come.", "Write the day on which it happened, or leave it empty for today.");
        }

        if (!read.Fine || facts is null)
        {
            return Result.Fail<JournalOutcome.Written>(read.Problems);
        }

        var entry = new Entry
        {
            Id = Guid.TryParseExact(typed["entry"], "D", out var id) && id != Guid.Empty ? id : Guid.NewGuid(),
            Day = day,
            Time = day == today ? now : null,
            Pots = pots,
            Note = typed["note"],
            Facts = facts,
        };
        if (EntryRules.Check(entry) is { Count: > 0 } problems)
        {
            return Result.Fail<JournalOutcome.Written>([.. problems.Select(static p => p.Field == "what" ? p with { Field = "seen" } : p)]);
        }

        // The same form sent again after its answer was lost: it is written, and the pot was changed with it.
        if (journal.Find(entry.Id) is { IsRemoved: false } there && there.Entry.Facts == facts)
        {
            return Result.Of(new JournalOutcome.Written([there]));
        }

        if (facts is PlantEvent happened && PotChange.Changes(happened) && Changed(typed, entry) is { Count: > 0 } trouble)
        {
            return Result.Fail<JournalOutcome.Written>(trouble);
        }

        return journal.Write([EntryChange.New(entry)]) switch
        {
            JournalOutcome.Written written => Result.Of(written),
            JournalOutcome.Overtaken => Result.Fail<JournalOutcome.Written>("entry", "This was written already, and changed since.", "Look into the diary."),
            _ => Result.Fail<JournalOutcome.Written>("entry", "It could not be written.", "Send it again."),
        };
    }

    private IReadOnlyList<Problem> Changed(Draft typed, Entry entry)
    {
        var after = PotChange.Apply(desk.Garden, entry);
        if (!after.Ok)
        {
            return after.Problems;
        }

        _ = long.TryParse(typed["version"], NumberStyles.None, CultureInfo.InvariantCulture, out var basedOn);
        return desk.Change(basedOn, PotChange.Words(entry, desk.Garden), _ => after.Value) is SaveOutcome.Overtaken
            ? [new Problem("garden", "The garden was changed in another window meanwhile.", "What you typed is still here. Look at it once more, then save again.")]
            : [];
    }
}
