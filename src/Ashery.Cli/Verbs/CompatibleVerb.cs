using System.CommandLine;
using System.CommandLine.Completions;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Compatibility;
using Ashery.Exchange.Mix;
using Ashery.Materials;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>Judges every pair of some materials: dry today, dry and stored, in concentrated solution.</summary>
internal sealed class CompatibleVerb : Verb
{
    private const int Most = 20;

    private readonly Argument<string[]> ids = new("materials")
    {
        HelpName = "A B...",
        Description = "Two or more materials of the catalogue",
        Arity = ArgumentArity.ZeroOrMore,
    };

    public CompatibleVerb()
        : base("compatible", "Say whether materials may be mixed dry, stored together or dissolved together")
    {
        ids.CompletionSources.Add(static _ => MaterialCatalogue.Default.All.Select(static m => new CompletionItem(m.Id)));
        Command.Arguments.Add(ids);
    }

    public override string Details =>
        """
        Three questions are judged apart: mixed dry and used today, mixed dry and kept, in a concentrated (stock) solution.
          fine     nothing published speaks against it
          limited  with the limit that is printed
          stop     never
          unknown  nothing published says so; that is not a yes
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("Two for the same can:", "ashery compatible calcium-nitrate-tetrahydrate mkp"),
        ("Every pair of four:", "ashery compatible urea mkp potassium-chloride gypsum"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var words = given.Texts(ids).SelectMany(static w => w.Split(',', StringSplitOptions.RemoveEmptyEntries)).ToList();
        var materials = MaterialWords.Named(given, words, "material", MaterialCatalogue.Default);
        if (!given.Wrong && words.Count != materials.Count)
        {
            var twice = words.GroupBy(static w => w).First(static g => g.Count() > 1).Key;
            given.Add(new Problem("material", $"{SafeText.Quoted(twice)} is named twice.", "Name each material once; a material always goes with itself."));
        }

        if (!given.Wrong && materials.Count is < 2 or > Most)
        {
            given.Add(new Problem(
                "material",
                materials.Count < 2 ? "Fewer than two materials are named." : $"More than {Figures.Whole(Most)} materials are named.",
                "Name two or more, for example: ashery compatible urea gypsum."));
        }

        if (given.Wrong)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var pairs = new List<PairVerdict>();
        for (var i = 0; i < materials.Count; i++)
        {
            for (var j = i + 1; j < materials.Count; j++)
            {
                pairs.Add(CompatibilityChart.Default.Judge(materials[i], materials[j]));
            }
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(CompatibleJson.Write(pairs));
        }
        else
        {
            PairTable.Write(terminal, pairs);
        }

        return ExitCode.Done;
    }
}
