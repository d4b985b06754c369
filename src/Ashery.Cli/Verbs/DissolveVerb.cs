using Ashery.Cli.Frame;
using Ashery.Exchange.Solutions;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Solutions;
using Ashery.Solutions.Can;

namespace Ashery.Cli.Verbs;

/// <summary>What a feed becomes in a water.</summary>
internal sealed class DissolveVerb : Verb
{
    private static readonly string[] Airs = ["closed", "open"];

    private readonly WaterSource water;
    private readonly ValueOption add;
    private readonly ValueOption strength;
    private readonly ValueOption celsius;
    private readonly ValueOption air;
    private readonly GardenSource garden;

    public DissolveVerb()
        : base("dissolve", "Say what a feed becomes in water: EC, pH, nutrients, what comes out of solution")
    {
        water = new WaterSource(Command);
        add = Add(new ValueOption("--add", "WHAT=GRAMS", "Grams of a material in a litre of water; may be repeated") { Repeatable = true, Words = MixVerb.MaterialIds });
        strength = Add(new ValueOption("--strength", "STRENGTH", "Make the feed so strong instead: 1.5g/L, \"150mg/L N\", or 1:100 when --add is a stock"));
        celsius = Add(new ValueOption("--celsius", "DEGREES", "Temperature of the can, 0 to 40 (20)"));
        air = Add(new ValueOption("--air", "open|closed", "Fresh and closed, or left standing open to the air (closed)") { Words = static () => Airs });
        garden = new GardenSource(Command);
    }

    public override string Details =>
        """
        WHAT is a material of the catalogue, reckoned as the pure salt; a material with its label, as urea=46-0-0=1; a bag or a kept feed of --garden or --demo by its id; or a salt or pure acid by its formula, as K2SO4=1 or MgSO4.7H2O=2.
        A solid with an index above 0 may come out of solution. Quick ones (gypsum, brushite, struvite, syngenite) do within hours; slow ones often never.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("Two salts in hard water:", "ashery dissolve --water hard --add potassium-nitrate=0.6 --add mkp=0.2"),
        ("The same parts at a strength, as JSON:", "ashery dissolve --water soft --add potassium-nitrate=3 --add mkp=1 --strength \"120mg/L N\" --json"),
        ("A stock of 150 g in a litre, after an injector of 1:150:", "ashery dissolve --water moderate --add potassium-nitrate=150 --strength 1:150"),
        ("A kept feed of the demo garden, 1.2 g in a litre:", "ashery dissolve --demo --water moderate --add terrace-blend=1.2"),
        ("An acid by its formula, left open to the air on a cool day:", "ashery dissolve --water hard --add HNO3=0.2 --celsius 12 --air open"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        if (Request(given, terminal) is not { } request || given.Wrong)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Take(CanMaker.Make(request)) is not { } report)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(CanJsonText.Write(report));
        }
        else
        {
            CanText.Write(terminal, report);
        }

        return ExitCode.Done;
    }

    private CanRequest? Request(Given given, Terminal terminal)
    {
        var source = water.Load(given);
        var degrees = Degrees(given);
        var open = given.Word(air, Airs) == "open";
        var home = garden.IsNamed(given) ? garden.Load(given, terminal) : null;
        IReadOnlyList<CanAddition> additions = Additions(given, home);
        if (source is null || given.Wrong)
        {
            return null;
        }

        if (given.Text(strength) is { } text && Stronger(given, text, additions) is { } scaled)
        {
            additions = scaled;
        }

        return given.Wrong ? null : CanRequest.In(source, additions, degrees, open ? Air.Open : Air.Closed);
    }

    private double Degrees(Given given)
    {
        const double Usual = 20;
        if (given.Text(celsius) is not { } text)
        {
            return Usual;
        }

        var read = NumberReader.Read(text, Given.Field(celsius), Speciation.Coldest, Speciation.Warmest, "15");
        given.AddRange(read.Problems);
        return read.Ok ? read.Value : Usual;
    }

    private List<CanAddition> Additions(Given given, Garden? home)
    {
        var additions = new List<CanAddition>();
        foreach (var text in given.Texts(add))
        {
            if (Feed(home, text) is { } feed)
            {
                given.AddRange(GardenCan.Add(additions, home!, feed, text[(text.LastIndexOf('=') + 1)..]));
            }
            else if (given.Take(CanWords.Addition(text, id => GardenCan.Bag(home, id))) is { } addition)
            {
                additions.Add(addition);
            }
        }

        if (additions.Count == 0 && !given.Wrong)
        {
            given.Add(new Problem("add", "Nothing is added.", "Name at least one material with its grams in a litre, such as --add epsom-salt=1.5."));
        }

        return additions;
    }

    private static Feed? Feed(Garden? home, string text)
    {
        var equals = text.LastIndexOf('=');
        return equals > 0 && home is not null ? home.Feeds.FirstOrDefault(f => f.Id == text[..equals].Trim()) : null;
    }

    private static IReadOnlyList<CanAddition>? Stronger(Given given, string text, IReadOnlyList<CanAddition> additions)
    {
        var grams = 0.0;
        foreach (var addition in additions)
        {
            grams += addition.Grams;
        }

        return given.Take(CanWords.Strength(text, grams)) is { } wanted ? given.Take(wanted.Apply(additions)) : null;
    }
}
