using Ashery.Exchange.Journal;
using Ashery.Journal;

namespace Ashery.Cli.Frame;

/// <summary>The journal that goes with the garden a verb works on: the demo's own, the stored one, or none for a garden file.</summary>
internal sealed class JournalSource(GardenSource garden)
{
    /// <summary>Entries of these kinds that stand; null, with a problem kept, when they cannot be read.</summary>
    public IReadOnlyList<Entry>? Load(Given given, Terminal terminal, IReadOnlyList<string> kinds)
    {
        if (garden.IsDemo(given))
        {
            return [.. DemoJournal.Create(terminal.Today()).Where(e => kinds.Contains(EntryKind.Of(e.Facts)))];
        }

        return garden.IsNamed(given) ? [] : given.Take(StoredGardens.Entries(GardenSource.Place(terminal), kinds));
    }

    /// <summary>Writes one new entry into the stored journal; false, with a problem kept, when it was not written.</summary>
    public bool Write(Given given, Terminal terminal, Entry entry)
    {
        if (garden.IsNamed(given))
        {
            given.Add(new("save", "Only the stored garden has a journal to write into.", "Leave --demo and --garden out, or leave --save out."));
            return false;
        }

        return given.Take(StoredGardens.Write(GardenSource.Place(terminal), entry)) is not null;
    }
}
