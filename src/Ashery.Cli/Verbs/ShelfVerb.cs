using Ashery.Cli.Frame;
using Ashery.Exchange.Catalogue;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Json;
using Ashery.Exchange.Materials;
using Ashery.Gardens;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>Shows what is on the shelf of a garden, brings bags in from a file and writes them out.</summary>
internal sealed class ShelfVerb : Verb
{
    private readonly GardenSource garden;
    private readonly ValueOption import;
    private readonly ValueOption export;

    public ShelfVerb()
        : base("shelf", "Show the bags on the shelf with label, stock and price; bring bags in from a file or write them out")
    {
        garden = new GardenSource(Command);
        import = Add(new ValueOption("--import", "FILE", "Bring in the bags of a .csv, or of the shelf of a garden .json; a bag of the same id is replaced, all others stay"));
        export = Add(new ValueOption("--export", "FILE", "Write the bags as .csv, or the whole garden as .json"));
    }

    public override string Details =>
        """
        Bags are brought into the stored garden, or into the file of --garden. A file with a mistake in it changes nothing. Where no garden is stored yet, a garden .json becomes the stored one.
        The columns of the CSV are those that --export writes; a header and the columns material, left, size and price are enough for bags of the catalogue.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("The demo garden's shelf:", "ashery shelf --demo"),
        ("The same bags for a spreadsheet:", "ashery shelf --demo --export shelf.csv"),
        ("Your own price list into the stored garden:", "ashery shelf --import bags.csv"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var from = given.Text(import);
        var to = given.Text(export);
        var shown = from is null ? garden.Load(given, terminal) : given.Wrong ? null : Import(given, terminal, from);
        if (shown is not null && to is not null)
        {
            Export(given, shown, to);
        }

        if (given.Wrong || shown is null)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var shelf = ShelfOut.Of(shown);
        if (given.Has(Json))
        {
            terminal.Output.Write(AsheryJson.Write(shelf, CatalogueJson.Shared.ShelfJson));
        }
        else
        {
            ShelfText.Write(terminal, shelf, to);
        }

        return ExitCode.Done;
    }

    private Garden? Import(Given given, Terminal terminal, string from)
    {
        if (garden.IsDemo(given))
        {
            given.Add(new Problem("import", "The demo garden is not kept, so nothing can be brought into it.", "Leave --demo out, or name a file with --garden."));
            return null;
        }

        var isCsv = Path.GetExtension(from) == ".csv";
        var whole = isCsv ? null : ReadGarden(given, from);
        var bags = isCsv ? given.Take(BagCsv.ReadFile(from)) : whole?.Shelf;
        return given.Wrong || bags is null
            ? null
            : garden.Change(given, terminal, g => g with { Shelf = Merge(g.Shelf, bags) }, otherwise: whole, $"Bags from {Path.GetFileName(from)}");
    }

    private static Garden? ReadGarden(Given given, string from)
    {
        if (Path.GetExtension(from) != ".json")
        {
            given.Add(new Problem("import", $"{SafeText.Quoted(from)} ends neither in .csv nor in .json.", "Name a .csv of bags or a garden .json."));
            return null;
        }

        return given.Take(TextFile.Read(from, "import")) is { } text ? given.Take(GardenFile.Read(text)) : null;
    }

    private static List<Bag> Merge(IReadOnlyList<Bag> shelf, IReadOnlyList<Bag> bags)
    {
        var merged = shelf.Select(old => bags.FirstOrDefault(b => b.Id == old.Id) ?? old).ToList();
        merged.AddRange(bags.Where(b => !shelf.Any(old => old.Id == b.Id)));
        return merged;
    }

    private static void Export(Given given, Garden garden, string to)
    {
        switch (Path.GetExtension(to))
        {
            case ".csv":
                using (var text = new StringWriter())
                {
                    BagCsv.Write(text, garden.Shelf);
                    given.Take(TextFile.Write(to, text.ToString(), "export"));
                }

                break;
            case ".json":
                given.Take(TextFile.Write(to, GardenFile.Write(garden), "export"));
                break;
            default:
                given.Add(new Problem("export", $"{SafeText.Quoted(to)} ends neither in .csv nor in .json.", "The end of the name says what is written, as in --export shelf.csv."));
                break;
        }
    }
}
