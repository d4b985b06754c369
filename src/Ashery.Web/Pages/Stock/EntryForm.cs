using System.Globalization;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Web.Components.Parts;
using Ashery.Web.Forms;
using Ashery.Web.Gardens;
using Microsoft.AspNetCore.Components;

namespace Ashery.Web.Pages.Stock;

/// <summary>A page with a form about one entry of the journal: it sends back the revision it was filled in on, and shows both when another was first.</summary>
public abstract class EntryForm : GardenPage
{
    [Inject]
    protected IJournal Journal { get; set; } = null!;

    [Inject]
    protected StockDesk Stock { get; set; } = null!;

    /// <summary>What stands now, where it was changed elsewhere meanwhile.</summary>
    protected StoredEntry? Theirs { get; private set; }

    /// <summary>Hour of the garden's clock, to the minute.</summary>
    protected TimeOnly Now => new(Clock.GetLocalNow().Hour, Clock.GetLocalNow().Minute);

    /// <summary>Fields every such form sends: the key of the entry, so that the same form sent twice is one entry, and its revision.</summary>
    protected static IEnumerable<(string Name, string? Value)> Keys(Guid id, int revision) =>
        [("id", id.ToString("D")), ("revision", revision.ToString(CultureInfo.InvariantCulture))];

    protected static Guid Id(Draft typed) => Guid.TryParseExact(typed["id"], "D", out var id) ? id : Guid.NewGuid();

    /// <summary>Writes what is to stand (null: takes it out) and goes on, or shows the form again.</summary>
    protected void Write(Draft typed, Guid id, Entry? entry, string goTo)
    {
        if (entry is not null && EntryRules.Check(entry) is { Count: > 0 } wrong)
        {
            AskAgain(typed, wrong);
            return;
        }

        _ = int.TryParse(typed["revision"], NumberStyles.None, CultureInfo.InvariantCulture, out var basedOn);
        switch (Journal.Write([new EntryChange(id, basedOn, entry)]))
        {
            case JournalOutcome.Written written:
                Go(goTo, written.Entries);
                break;
            case JournalOutcome.Overtaken overtaken:
                Theirs = overtaken.Theirs;
                AskAgain(
                    typed.Set("revision", overtaken.Theirs.Revision.ToString(CultureInfo.InvariantCulture)),
                    [new("revision", "This was changed in another window meanwhile.", "Both are below. Save again to let yours stand, or leave it.")]);
                break;
            default:
                AskAgain(typed, [new("id", "There is no such entry any more.", "Go back and begin anew.")]);
                break;
        }
    }
}
