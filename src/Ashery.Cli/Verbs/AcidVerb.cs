using Ashery.Cli.Frame;
using Ashery.Exchange.Solutions;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Solutions;
using Ashery.Solutions.Acids;

namespace Ashery.Cli.Verbs;

/// <summary>How much acid brings a water to a pH or an alkalinity.</summary>
internal sealed class AcidVerb : Verb
{
    private static readonly string[] Airs = ["closed", "open"];

    private readonly WaterSource water;
    private readonly ValueOption acid;
    private readonly ValueOption strength;
    private readonly ValueOption density;
    private readonly ValueOption toPh;
    private readonly ValueOption toAlkalinity;
    private readonly ValueOption volume;
    private readonly ValueOption ratio;
    private readonly ValueOption celsius;
    private readonly ValueOption air;

    public AcidVerb()
        : base("acid", "Say how much acid a water takes, what it feeds, and what becomes of the pH")
    {
        water = new WaterSource(Command);
        acid = Add(new ValueOption("--acid", "ACID", "nitric, phosphoric, sulfuric or citric") { Words = static () => Acid.All.Select(static a => a.Id) });
        strength = Add(new ValueOption("--strength", "PERCENT", "Percent by mass on the label, as 60%; citric crystals when left out"));
        density = Add(new ValueOption("--density", "G/ML", "Density at 20 °C instead of the percent, as 1.37"));
        toPh = Add(new ValueOption("--to-ph", "PH", "Bring the water to this pH"));
        toAlkalinity = Add(new ValueOption("--to-alkalinity", "MG/L", "Bring the water to this alkalinity, mg/L as CaCO3"));
        volume = Add(new ValueOption("--volume", "VOLUME", "Water in the can or barrel (10 L)"));
        ratio = Add(new ValueOption("--ratio", "1:N", "Also say the stock for an injector of 1:N"));
        celsius = Add(new ValueOption("--celsius", "DEGREES", "Temperature of the water, 0 to 40 (20)"));
        air = Add(new ValueOption("--air", "open|closed", "When the pH of --to-ph is meant: just mixed (closed) or after standing open") { Words = static () => Airs });
    }

    public override string Details =>
        """
        Alkalinity limes a pot, not pH: choose an alkalinity where you can. Water that keeps alkalinity climbs in pH as carbon dioxide leaves it; both figures are given.
        Acids burn, and strong nitric and sulfuric acid are restricted by law. Label, law and a trained person come before this answer.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("Leave 50 mg/L of alkalinity in 25 L of hard water:", "ashery acid --water hard --acid phosphoric --strength 75% --to-alkalinity 50 --volume 25L"),
        ("To a pH, by the density of the bottle:", "ashery acid --water moderate --acid nitric --density 1.31 --to-ph 6.1"),
        ("Citric acid crystals, for the pH after standing:", "ashery acid --water moderate --acid citric --to-ph 6.5 --air open"),
        ("The stock for an injector, as JSON:", "ashery acid --water hard --acid sulfuric --strength 35% --to-alkalinity 70 --ratio 1:100 --json"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var source = water.Load(given);
        var bottle = Bottle(given);
        var target = Target(given);
        var request = source is null || bottle is null || target is null ? null : new AcidRequest(source.ToInput(Number(given, celsius, Speciation.Coldest, Speciation.Warmest, 20, "15")), bottle, target)
        {
            At = given.Word(air, Airs) == "open" ? Air.Open : Air.Closed,
            Litres = given.Text(volume) is { } text ? Litres(given, text) : 10,
            InjectorRatio = given.Text(ratio) is { } parts ? RatioWords.Read(given, ratio, parts) : null,
        };
        if (given.Wrong || request is null || given.Take(AcidTreatment.Find(request)) is not { } report)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(AcidJson.Write(report, source!.Name));
        }
        else
        {
            AcidText.Write(terminal, report, source!.Name);
        }

        return ExitCode.Done;
    }

    private AcidBottle? Bottle(Given given)
    {
        var known = Acid.All.Select(static a => a.Id).ToList();
        if (!given.Has(acid))
        {
            given.Add(new Problem("acid", "No acid is named.", $"Give one of {string.Join(", ", known)}, for example --acid phosphoric."));
            return null;
        }

        if (given.Word(acid, known) is not { } id)
        {
            return null;
        }

        var found = Acid.Find(id)!;
        var (percent, weight) = (given.Text(strength), given.Text(density));
        if (percent is not null && weight is not null)
        {
            given.Add(new Problem("strength", "A strength and a density are given together.", "Give one of them: the percent of the label where there is one."));
            return null;
        }

        if (weight is not null)
        {
            var read = NumberReader.Positive(weight, "density", 5, "1.37");
            given.AddRange(read.Problems);
            return read.Ok ? given.Take(AcidBottle.OfDensity(found, read.Value)) : null;
        }

        if (percent is null)
        {
            if (found.CrystalsAbove is not null)
            {
                return given.Take(AcidBottle.OfStrength(found, 1));
            }

            given.Add(new Problem("strength", $"How strong the {found.Name} is was not said.", FormattableString.Invariant($"Give the percent by mass of the label, for example --strength {found.UsualStrength * 100:0}%.")));
            return null;
        }

        var part = NumberReader.Positive(percent.EndsWith('%') ? percent[..^1] : percent, "strength", 1000, "60%");
        given.AddRange(part.Problems);
        return part.Ok ? given.Take(AcidBottle.OfStrength(found, part.Value / 100)) : null;
    }

    private AcidTarget? Target(Given given)
    {
        if (given.Has(toPh) && given.Has(toAlkalinity))
        {
            given.Add(new Problem("to-ph", "Both --to-ph and --to-alkalinity are given.", "Give one of the two; the other follows."));
            return null;
        }

        if (given.Has(toPh))
        {
            return given.Text(toPh) is { } pH && Read(given, toPh, pH, 0, 14, "5.8") is { } value ? AcidTarget.ToPh(value) : null;
        }

        if (given.Has(toAlkalinity))
        {
            return given.Text(toAlkalinity) is { } left && Read(given, toAlkalinity, left, 0, 10_000, "60") is { } value ? AcidTarget.ToAlkalinity(value) : null;
        }

        given.Add(new Problem("to-ph", "Neither a pH nor an alkalinity is asked for.", "Give --to-ph 5.8 or --to-alkalinity 60."));
        return null;
    }

    private static double Litres(Given given, string text)
    {
        var read = QuantityReader.Volume(text, "volume", "10L");
        given.AddRange(read.Problems);
        return read.Ok ? read.Value.Litres : 10;
    }

    private static double Number(Given given, ValueOption option, double least, double most, double usual, string example) =>
        given.Text(option) is { } text ? Read(given, option, text, least, most, example) ?? usual : usual;

    private static double? Read(Given given, ValueOption option, string text, double least, double most, string example)
    {
        var read = NumberReader.Read(text, Given.Field(option), least, most, example);
        given.AddRange(read.Problems);
        return read.Ok ? read.Value : null;
    }
}
