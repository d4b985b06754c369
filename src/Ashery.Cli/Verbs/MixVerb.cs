using Ashery.Cli.Frame;
using Ashery.Crops;
using Ashery.Exchange.Mix;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Recipes;

namespace Ashery.Cli.Verbs;

/// <summary>From a wish and what there is to the best blends, proved best, with what they trade.</summary>
internal sealed class MixVerb : Verb
{
    private readonly MixWords words;
    private readonly GardenSource garden;
    private readonly System.CommandLine.Option<bool> full;

    public MixVerb()
        : base("mix", "Find the best blends for a crop, a ratio or a grade from the materials at hand")
    {
        words = new MixWords(this);
        garden = new GardenSource(Command);
        full = Flag("--full", "Print every blend in full, as the JSON does");
    }

    public override string Details =>
        """
        Give one wish: --ratio for N : P2O5 : K2O, --grade for contents to reach at least, or --crop. Further nutrients may follow: --ratio "3:1:4 Mg 0.5". The materials are those of --from, else the shelf of the garden with its stock and prices.
        Blends are ordered by error (the mean relative deviation of the nutrient shares), then cost a kg of nutrient, number of materials and names.
        A limit is one of, for example:
          urea<=30% | ammoniacal<=50% | chloride<=2% | Mg>=1% | strength>=20%
          salt-index<=80 | acidity<=0.2 | cost<=1.5 | material neem-cake<=40%
          without urea,gypsum | organic-only | soluble-only | use=dissolved
        Quote it, since a shell reads < and >. The whole grammar is in docs/limits.md.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("The best blends for a ratio, each with the grams of a kilogram:", "ashery mix --ratio 3:1:2 --from urea,mkp,potassium-nitrate"),
        ("By your own labels, weighed to the gram:", "ashery mix --ratio 3:1:2 --from urea=46-0-0,mkp=0-52-34,potassium-nitrate=13-0-46 --batch 120g --step 1g"),
        ("By level 5 mL scoops, between 40 and 60 g:", "ashery mix --ratio 2:1:2 --from neem-cake,bone-meal-steamed,kelp-meal --batch 40g..60g --scoop 5mL"),
        ("For a crop from the demo garden's shelf, little chloride:", "ashery mix --crop fuchsia --demo --limit \"chloride<=2%\" --best 5"),
        ("A grade to reach at least, as JSON:", "ashery mix --grade 10-5-10 --from urea,mkp,potassium-sulfate --json"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var request = words.Read(given, terminal, garden);
        if (request is null || given.Wrong)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var answer = Mixing.Find(request);
        if (!answer.Ok)
        {
            given.AddRange(answer.Problems);
            return Faults.WrongUse(terminal, this, given);
        }

        var all = answer.Value with { Problems = [.. words.Notes, .. answer.Value.Problems] };
        if (given.Has(Json))
        {
            terminal.Output.Write(MixJson.Write(all));
        }
        else
        {
            MixText.Write(terminal, MixJson.From(all), given.Has(full));
        }

        return all.OutOfReach is null ? ExitCode.Done : ExitCode.OutOfReach;
    }

    internal static IEnumerable<string> CropIds() => CropCatalogue.Default.All.Select(static c => c.Id);

    internal static IEnumerable<string> MaterialIds() => MaterialCatalogue.Default.All.Select(static m => m.Id);
}
