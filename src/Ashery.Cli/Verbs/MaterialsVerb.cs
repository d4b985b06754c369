using System.CommandLine;
using System.CommandLine.Completions;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Catalogue;
using Ashery.Exchange.Json;
using Ashery.Exchange.Materials;
using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Cli.Verbs;

/// <summary>Shows the catalogue, or the data sheets of single materials.</summary>
internal sealed class MaterialsVerb : Verb
{
    private static readonly string[] Kinds =
        ["straight", "slowRelease", "calciumMagnesium", "liming", "traceElement", "acid", "organicMeal", "bulkyOrganic", "filler"];

    private readonly Argument<string[]> ids = new("ids")
    {
        HelpName = "[ID]...",
        Description = "Materials to show with all that is known of them",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly ValueOption search;
    private readonly ValueOption kind;
    private readonly ValueOption export;

    public MaterialsVerb()
        : base("materials", "List the materials of the catalogue, or show all that is known of some of them")
    {
        ids.CompletionSources.Add(static _ => MaterialCatalogue.Default.All.Select(static m => new CompletionItem(m.Id)));
        Command.Arguments.Add(ids);
        search = Add(new ValueOption("--search", "TEXT", "Only materials with this in their names"));
        kind = Add(new ValueOption("--kind", "KIND", "Only this kind: " + string.Join(", ", Kinds)) { Words = static () => Kinds });
        export = Add(new ValueOption("--export", "FILE.csv", "Also write the materials shown as CSV, a start for bags of your own"));
    }

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("All materials:", "ashery materials"),
        ("What goes by the name of potash:", "ashery materials --search potash"),
        ("Trace-element salts as JSON:", "ashery materials --kind traceElement --json"),
        ("The data sheet of one, with the source of each figure:", "ashery materials potassium-nitrate"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var named = MaterialWords.Named(given, given.Texts(ids), "material", MaterialCatalogue.Default);
        var text = given.Text(search);
        var ofKind = given.Word(kind, Kinds);
        var file = given.Text(export);
        if (given.Wrong)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var found = named.Count > 0 ? named : [.. MaterialCatalogue.Default.All.Where(m => IsOf(m, ofKind) && Matches(m, text))];
        if (file is not null && !Export(given, found, file))
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (named.Count > 0)
        {
            return Sheets(given, terminal, named);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(AsheryJson.Write(new MaterialsJson([.. found.Select(MaterialsOut.Line)]), CatalogueJson.Shared.MaterialsJson));
            return ExitCode.Done;
        }

        terminal.Output.WriteLine(found.Count switch
        {
            0 => "No material of the catalogue is like that.",
            1 => "1 material. Percent by weight as a label prints it.",
            _ => $"{Figures.Whole(found.Count)} materials. Percent by weight as a label prints it.",
        });
        if (found.Count > 0)
        {
            terminal.Output.WriteLine();
            List(found).Write(terminal.Output, terminal.Width);
        }

        return ExitCode.Done;
    }

    private static bool Export(Given given, IReadOnlyList<Material> materials, string file)
    {
        using var text = new StringWriter();
        BagCsv.WriteMaterials(text, materials);
        return given.Take(TextFile.Write(file, text.ToString(), "export")) is not null;
    }

    private int Sheets(Given given, Terminal terminal, IReadOnlyList<Material> named)
    {
        if (given.Has(Json))
        {
            terminal.Output.Write(AsheryJson.Write(new MaterialsJson([.. named.Select(MaterialsOut.WithSheet)]), CatalogueJson.Shared.MaterialsJson));
            return ExitCode.Done;
        }

        foreach (var material in named)
        {
            if (material != named[0])
            {
                terminal.Output.WriteLine();
            }

            MaterialSheet.Write(terminal, MaterialsOut.WithSheet(material));
        }

        return ExitCode.Done;
    }

    private static Table List(IReadOnlyList<Material> materials)
    {
        var table = new Table("material", ">N", ">P2O5", ">K2O", "also", "name");
        foreach (var m in materials)
        {
            var also = string.Join(' ', m.Label.Present.Where(static n => n > Nutrient.K && n < Nutrient.Cl).Select(n => $"{n} {Figures.Short(m.Label.Percent(n))}"));
            table.Add(m.Id, Content(m, Nutrient.N), Content(m, Nutrient.P), Content(m, Nutrient.K), also, SafeText.Of(m.Name));
        }

        return table;
    }

    private static string Content(Material m, Nutrient n) => m.Label[n] > 0 ? Figures.Short(m.Label.Percent(n)) : string.Empty;

    private static bool IsOf(Material m, string? kind) =>
        kind is null || string.Equals(m.Kind.ToString(), kind, StringComparison.OrdinalIgnoreCase);

    private static bool Matches(Material m, string? text) => text is null || Holds(m.Id, text) || Holds(m.Name, text) || m.OtherNames.Any(n => Holds(n, text));

    private static bool Holds(string name, string text) => name.Contains(text, StringComparison.OrdinalIgnoreCase);
}
