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
    private readonly ValueOption exportGarden;

    public ShelfVerb()
        : base("shelf", "Show the bags on the shelf with label, stock and price; bring bags in from a file or write them out")
    {
        garden = new GardenSource(Command);
        import = Add(new ValueOption("--import", "FILE", "Bring in bags from a .csv, a shelf .json or the shelf of a garden .json; a bag of the same id is replaced, all others stay"));
        export = Add(new ValueOption("--export", "FILE", "Write the bags as .csv or as a shelf .json"));
        exportGarden = Add(new ValueOption("--export-garden", "FILE.json", "Write the whole garden as a garden file"));
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
        var whole = given.Text(exportGarden);
        var shown = from is null ? garden.Load(given, terminal) : given.Wrong ? null : Import(given, terminal, from);
        if (shown is not null && to is not null)
        {
            Export(given, shown, to);
        }

        if (shown is not null && whole is not null)
        {
            given.Take(TextFile.Write(whole, GardenFile.Write(shown), "export-garden"));
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
            ShelfText.Write(terminal, shelf, [.. new[] { to, whole }.OfType<string>()]);
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

        Garden? whole = null;
        var bags = Path.GetExtension(from) switch
        {
            ".csv" => given.Take(BagCsv.ReadFile(from)),
            ".json" => FromJson(given, from, out whole),
            _ => null,
        };
        if (bags is null && !given.Wrong)
        {
            given.Add(new Problem("import", $"{SafeText.Quoted(from)} ends neither in .csv nor in .json.", "Name a .csv of bags, a shelf .json or a garden .json."));
        }

        return given.Wrong || bags is null
            ? null
            : garden.Change(given, terminal, g => g with { Shelf = Merge(g.Shelf, bags) }, otherwise: whole, $"Bags from {Path.GetFileName(from)}");
    }

    // Shelf files and garden files say at the top which they are.
    private static IReadOnlyList<Bag>? FromJson(Given given, string from, out Garden? whole)
    {
        whole = null;
        if (given.Take(TextFile.Read(from, "import")) is not { } text)
        {
            return null;
        }

        if (text.Contains($"\"{ShelfFile.Format}\"", StringComparison.Ordinal))
        {
            return given.Take(ShelfFile.Read(text));
        }

        whole = given.Take(GardenFile.Read(text));
        return whole?.Shelf;
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
                given.Take(TextFile.Write(to, ShelfFile.Write(garden.Shelf), "export"));
                break;
            default:
                given.Add(new Problem("export", $"{SafeText.Quoted(to)} ends neither in .csv nor in .json.", "The end of the name says what is written, as in --export shelf.csv."));
                break;
        }
    }
}
