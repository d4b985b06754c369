using System.CommandLine;
using Ashery.Cli.Frame;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Solutions;
using Ashery.Solutions.Acids;
using Ashery.Solutions.Can;
using Ashery.Solutions.Targets;

namespace Ashery.Cli.Verbs;

/// <summary>The words of a solution target.</summary>
internal sealed class SolutionWords
{
    private static readonly string[] Airs = ["closed", "open"];
    private static readonly string[] Acids = ["nitric", "phosphoric", "sulfuric", "citric"];
    private static readonly string[] Starts = ["N=", "NO3-N=", "NH4-N<=", "urea-N<=", "P=", "K=", "Ca=", "Mg=", "S>=", "Cl<=", "Na<=", "Fe=", "Mn=", "Zn=", "Cu=", "B=", "Mo="];

    private readonly Argument<string[]> wishes = new("wishes")
    {
        HelpName = "WISH...",
        Description = "What the solution is to hold, mg/L: see above",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly ValueOption from, price, most, ec, ph, acid, strength, with, litres, step, atMost, best, celsius, air;
    private readonly Option<bool> oneStock;
    private readonly WaterSource water;
    private readonly GardenSource garden;
    private readonly List<Problem> notes = [];

    public SolutionWords(Verb verb)
    {
        var command = verb.Command;
        wishes.CompletionSources.Add(static _ => Starts.Select(static s => new System.CommandLine.Completions.CompletionItem(s)));
        command.Arguments.Add(wishes);
        water = new WaterSource(command);
        from = Add(new ValueOption("--from", "A,B,...", "Materials by their ids, with a label as in urea=46-0-0, or salts by formula") { Repeatable = true, Words = MixVerb.MaterialIds });
        price = Add(new ValueOption("--price", "ID=NUMBER", "Price a kg of a material of --from; may be repeated") { Repeatable = true });
        most = Add(new ValueOption("--most", "ID=GRAMS", "At most so many grams of a material in a litre; may be repeated") { Repeatable = true });
        ec = Add(new ValueOption("--ec", "NUMBER", "EC to be had, mS/cm at 25 °C"));
        ph = Add(new ValueOption("--ph", "NUMBER", "pH to be had, with --acid or --with"));
        acid = Add(new ValueOption("--acid", "NAME", "The acid that brings the pH: nitric, phosphoric, sulfuric, citric") { Words = static () => Acids });
        strength = Add(new ValueOption("--strength", "PERCENT", "Strength of the acid by weight, as on its label; what it is usually sold at when left out"));
        with = Add(new ValueOption("--with", "ID", "A material that brings the pH instead, such as potassium-bicarbonate") { Words = MixVerb.MaterialIds });
        litres = Add(new ValueOption("--litres", "NUMBER", "Litres to be made (10)"));
        step = Add(new ValueOption("--step", "MASS", "Weigh in whole steps of a scale, such as 0.1g"));
        atMost = Add(new ValueOption("--at-most", "NUMBER", "Most materials (6)"));
        best = Add(new ValueOption("--best", "NUMBER", "How many recipes (3)"));
        oneStock = new Option<bool>("--one-stock") { Description = "Everything is to stand together in one concentrate" };
        command.Options.Add(oneStock);
        celsius = Add(new ValueOption("--celsius", "DEGREES", "Temperature of the can, 0 to 40 (20)"));
        air = Add(new ValueOption("--air", "open|closed", "Fresh and closed, or left standing open to the air (closed)") { Words = static () => Airs });
        garden = new GardenSource(command);

        ValueOption Add(ValueOption option)
        {
            command.Options.Add(option);
            return option;
        }
    }

    /// <summary>What was left out or taken for granted.</summary>
    public IReadOnlyList<Problem> Notes => notes;

    public TargetRequest? Read(Given given, Terminal terminal)
    {
        var read = given.Take(TargetReader.ReadAll(given.Texts(wishes)));
        var source = water.Load(given);
        var offers = Offers(given, terminal);
        var degrees = Number(given, celsius, Speciation.Coldest, Speciation.Warmest, "15") ?? 20;
        var open = given.Word(air, Airs) == "open";
        var request = new TargetRequest
        {
            Target = new(read ?? [], Number(given, ec, 0.02, 50, "1.5"), Number(given, ph, 3, 10, "6")),
            Offers = offers,
            Agent = Agent(given),
            AtMost = given.Whole(atMost, usual: 6, least: 1, most: 12),
            Best = given.Whole(best, usual: 3, least: 1, most: 20),
            OneStock = given.Has(oneStock),
            Celsius = degrees,
            Air = open ? Air.Open : Air.Closed,
            Litres = Number(given, litres, 0.01, 1e6, "10") ?? 10,
            StepGrams = Step(given),
        };
        return given.Wrong || source is null ? null : request with { Water = source.ToInput(degrees), WaterName = source.Name };
    }

    private IReadOnlyList<TargetOffer> Offers(Given given, Terminal terminal)
    {
        var loaded = !given.Has(from) || garden.IsNamed(given) ? garden.Load(given, terminal) : null;
        if (!given.Has(from))
        {
            var (shelf, leftOut) = TargetShelf.Of([.. (loaded?.Shelf ?? []).Select(static bag => bag.ToOffer())]);
            notes.AddRange(leftOut);
            return shelf;
        }

        var prices = Figures(given, price, "1.2");
        var limits = Figures(given, most, "0.5");
        var offers = new List<TargetOffer>();
        foreach (var word in given.Texts(from).SelectMany(static t => t.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)))
        {
            if (Made(given, "from", word, loaded) is { } made)
            {
                prices.Remove(made.Id, out var kg);
                limits.Remove(made.Id, out var grams);
                offers.Add(new(made, kg, null, grams));
            }
        }

        foreach (var (id, option) in prices.Keys.Select(static id => (id, "price")).Concat(limits.Keys.Select(static id => (id, "most"))))
        {
            given.Add(new Problem(option, $"{SafeText.Quoted(id)} is not among the materials of --from.", "Name it there too, or take it out."));
        }

        return offers;
    }

    private static MaterialInWater? Made(Given given, string field, string word, Garden? garden)
    {
        var made = CanWords.Material(word, id => garden?.Shelf.FirstOrDefault(b => b.Id == id || b.Material.Id == id)?.Material);
        if (!made.Ok)
        {
            given.AddRange(made.Problems.Select(p => p with { Field = p.Field.StartsWith("add", StringComparison.Ordinal) ? field : p.Field }));
        }

        return made.Value;
    }

    private PhAgent? Agent(Given given)
    {
        var name = given.Word(acid, Acids);
        if (given.Has(acid) && given.Has(with))
        {
            given.Add(new Problem("with", "--acid and --with are given together.", "Give one of them."));
            return null;
        }

        if (given.Text(with) is { } word)
        {
            return Made(given, "with", word, null) is { } made ? new(made) : null;
        }

        if (given.Has(strength) && !given.Has(acid))
        {
            given.Add(new Problem("strength", "A strength is given and no acid.", "Name it too, as in --acid nitric."));
        }

        if (name is null)
        {
            return null;
        }

        var which = Acid.Find(name)!;
        var percent = given.Text(strength) is { } text
            ? NumberReader.Read(text.TrimEnd('%', ' '), "strength", 0, 100, "60%")
            : Result.Of(which.UsualStrength * 100);
        given.AddRange(percent.Problems);
        return percent.Ok && given.Take(AcidBottle.OfStrength(which, percent.Value / 100)) is { } bottle ? PhAgent.Of(bottle) : null;
    }

    private double? Step(Given given)
    {
        if (given.Text(step) is not { } text)
        {
            return null;
        }

        var read = QuantityReader.Mass(text, "step", "0.1g");
        given.AddRange(read.Problems);
        return read.Ok ? read.Value.Grams : null;
    }

    private static double? Number(Given given, ValueOption option, double least, double most, string example)
    {
        if (given.Text(option) is not { } text)
        {
            return null;
        }

        var read = NumberReader.Read(text, Given.Field(option), least, most, example);
        given.AddRange(read.Problems);
        return read.Ok ? read.Value : null;
    }

    private static Dictionary<string, double?> Figures(Given given, ValueOption option, string example)
    {
        var figures = new Dictionary<string, double?>(StringComparer.Ordinal);
        foreach (var text in given.Texts(option))
        {
            var parts = text.Split('=', 2);
            var figure = NumberReader.NotNegative(parts[^1], Given.Field(option), example: example);
            if (parts.Length < 2 || !figure.Ok || !figures.TryAdd(parts[0].Trim(), figure.Value))
            {
                given.Add(figure.Ok
                    ? new Problem(Given.Field(option), $"{SafeText.Quoted(text)} is not a material with a figure.", $"Write its id, = and a number, each material once, as in {option.Name} mkp={example}.")
                    : figure.Problems[0]);
            }
        }

        return figures;
    }
}
