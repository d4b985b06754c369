using System.CommandLine;
using System.CommandLine.Completions;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Crops;
using Ashery.Exchange.Catalogue;
using Ashery.Exchange.Json;

namespace Ashery.Cli.Verbs;

/// <summary>Shows the crops, or all that is known of some of them.</summary>
internal sealed class CropsVerb : Verb
{
    private readonly Argument<string[]> ids = new("ids")
    {
        HelpName = "[ID]...",
        Description = "Crops to show with all that is known of them",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly ValueOption search;

    public CropsVerb()
        : base("crops", "List the crops of the catalogue with the ratio they want, or show some in full")
    {
        ids.CompletionSources.Add(static _ => CropCatalogue.Default.All.Select(static c => new CompletionItem(c.Id)));
        Command.Arguments.Add(ids);
        search = Add(new ValueOption("--search", "TEXT", "Only crops with this in their names"));
    }

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("All crops:", "ashery crops"),
        ("Whatever is a rose or called one:", "ashery crops --search rose"),
        ("What a fuchsia needs and bears:", "ashery crops fuchsia"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var named = given.Texts(ids).Select(id => MaterialWords.Crop(given, "crop", id)).OfType<Crop>().Distinct().ToList();
        var text = given.Text(search);
        if (given.Wrong)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var full = named.Count > 0;
        var found = full ? named : [.. CropCatalogue.Default.All.Where(c => text is null || Holds(c.Id, text) || Holds(c.Name, text) || Holds(c.Latin ?? string.Empty, text))];
        if (given.Has(Json))
        {
            terminal.Output.Write(AsheryJson.Write(new CropsJson([.. found.Select(c => full ? CropsOut.WithSheet(c) : CropsOut.Line(c))]), CatalogueJson.Shared.CropsJson));
            return ExitCode.Done;
        }

        if (full)
        {
            foreach (var crop in found)
            {
                if (crop != found[0])
                {
                    terminal.Output.WriteLine();
                }

                CropSheet.Write(terminal, CropsOut.WithSheet(crop));
            }

            return ExitCode.Done;
        }

        terminal.Output.WriteLine(found.Count switch
        {
            0 => "No crop of the catalogue is like that.",
            1 => "1 crop. The ratio is N : P2O5 : K2O.",
            _ => $"{Figures.Whole(found.Count)} crops. The ratio is N : P2O5 : K2O.",
        });
        if (found.Count > 0)
        {
            terminal.Output.WriteLine();
            var table = new Table("crop", "name", "feeder", "ratio", "how known");
            foreach (var c in found.Select(CropsOut.Line))
            {
                table.Add(c.Id, c.Name, c.Feeder.ToString().ToLowerInvariant(), CropSheet.Ratio(c.Ratio), MaterialSheet.How(c.Ratio.Provenance));
            }

            table.Write(terminal.Output, terminal.Width);
        }

        return ExitCode.Done;
    }

    private static bool Holds(string name, string text) => name.Contains(text, StringComparison.OrdinalIgnoreCase);
}
