using Ashery.Cli.Frame;
using Ashery.Exchange.Solutions;
using Ashery.Planning;
using Ashery.Quantities;
using Ashery.Solutions;
using Ashery.Solutions.Foliar;

namespace Ashery.Cli.Verbs;

/// <summary>A leaf spray against printed strengths.</summary>
internal sealed class SprayVerb : Verb
{
    private readonly WaterSource water;
    private readonly ValueOption add;
    private readonly ValueOption crop;
    private readonly ValueOption pot;
    private readonly ValueOption width;
    private readonly ValueOption pots;
    private readonly ValueOption biuret;
    private readonly ValueOption celsius;
    private readonly ValueOption airNow;
    private readonly GardenSource garden;

    public SprayVerb()
        : base("spray", "Judge a leaf spray against printed strengths, by salt, by crop and as a whole")
    {
        water = new WaterSource(Command);
        add = Add(new ValueOption("--add", "WHAT=GRAMS", "Grams of a material in a litre of spray; may be repeated") { Repeatable = true, Words = MixVerb.MaterialIds });
        crop = Add(new ValueOption("--crop", "CROP", "Whose leaves; general limits when left out") { Words = MixVerb.CropIds });
        pot = Add(new ValueOption("--pot", "VOLUME", "Medium of one pot, as 3L, for the amount of spray"));
        width = Add(new ValueOption("--width", "CM", "Width of one plant instead, cm"));
        pots = Add(new ValueOption("--pots", "COUNT", "How many pots (1)"));
        biuret = Add(new ValueOption("--biuret", "PERCENT", "Biuret of the urea, from the bag"));
        celsius = Add(new ValueOption("--celsius", "DEGREES", "Temperature of the spray, 0 to 40 (20)"));
        airNow = Add(new ValueOption("--air-now", "DEGREES", "Temperature of the air now"));
        garden = new GardenSource(Command);
    }

    public override string Details =>
        """
        Limits that are growing rules follow the garden's own settings with --garden or --demo. WHAT is as in ashery dissolve.
          fine  within the printed limit
          mind  near it, or nothing printed to judge by
          over  past it
        Spray one leaf, wait two days, then the rest. The label of each product comes first.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("Two salts on fuchsias in moderate water, a dozen 3 L pots:", "ashery spray --water moderate --add epsom-salt=2.5 --add urea=1.5 --biuret 0.3 --crop fuchsia --pot 3L --pots 12"),
        ("Iron for azaleas on a warm day:", "ashery spray --water soft --add iron-edta=0.3 --crop azalea-rhododendron --width 35 --air-now 30"),
        ("As JSON:", "ashery spray --water hard --add calcium-chloride-dihydrate=1 --crop poinsettia --json"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var source = water.Load(given);
        var additions = AddedWords.Read(given, terminal, add, garden);
        var plant = given.Text(crop) is { } id ? MaterialWords.Crop(given, Given.Field(crop), id) : null;
        var request = new SprayRequest
        {
            Additions = additions,
            Water = source?.ToInput() ?? SolutionInput.Pure(),
            WaterName = source?.Name ?? "pure water",
            Crop = plant,
            Celsius = Number(given, celsius, Speciation.Coldest, Speciation.Warmest, "20") ?? 20,
            PotLitres = given.Text(pot) is { } size ? Litres(given, size) : null,
            PlantWidthCm = Number(given, width, 1, 500, "30"),
            Pots = given.Whole(pots, 1, 1, 100_000),
            BiuretPercent = Number(given, biuret, 0, 10, "0.3"),
            AirCelsius = Number(given, airNow, -30, 60, "18"),
        };
        if (!given.Wrong && garden.IsNamed(given) && garden.Load(given, terminal) is { } own)
        {
            request = request with { Rules = GardenRules.Of(own).Rules };
        }

        if (given.Wrong || given.Take(SprayCheck.Judge(request)) is not { } report)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(SprayJson.Write(report));
        }
        else
        {
            SprayText.Write(terminal, report);
        }

        return ExitCode.Done;
    }

    private static double? Litres(Given given, string text)
    {
        var read = QuantityReader.Volume(text, "pot", "3L");
        given.AddRange(read.Problems);
        return read.Ok ? read.Value.Litres : null;
    }

    private static double? Number(Given given, ValueOption option, double least, double most, string example)
    {
        if (given.Text(option) is not { } text)
        {
            return null;
        }

        var read = NumberReader.Read(text.EndsWith('%') ? text[..^1] : text, Given.Field(option), least, most, example);
        given.AddRange(read.Problems);
        return read.Ok ? read.Value : null;
    }
}
