using Ashery.Cli.Frame;
using Ashery.Exchange.Solutions;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Solutions;
using Ashery.Solutions.Can;
using Ashery.Solutions.Tanks;

namespace Ashery.Cli.Verbs;

/// <summary>A feed shared over stock tanks.</summary>
internal sealed class TanksVerb : Verb
{
    private readonly WaterSource water;
    private readonly ValueOption add;
    private readonly ValueOption ratio;
    private readonly ValueOption coldest;
    private readonly ValueOption tanks;
    private readonly GardenSource garden;
    private readonly System.CommandLine.Option<bool> whole;

    public TanksVerb()
        : base("tanks", "Share a feed over stock tanks so that each stays clear, as strong as can be")
    {
        water = new WaterSource(Command);
        add = Add(new ValueOption("--add", "WHAT=GRAMS", "Grams of a material in a litre of the feed that reaches the pots; may be repeated") { Repeatable = true, Words = MixVerb.MaterialIds });
        ratio = Add(new ValueOption("--ratio", "1:N", "Injector: one part of stock to N of feed (1:100)"));
        coldest = Add(new ValueOption("--coldest", "DEGREES", "Coldest the tanks get, 0 to 40 (5)"));
        tanks = Add(new ValueOption("--tanks", "COUNT", "How many tanks there are, 1 to 4 (2)"));
        whole = Flag("--whole", "Keep each material in one tank");
        garden = new GardenSource(Command);
    }

    public override string Details =>
        """
        The stock is N times as strong as the feed. Every split of the materials is looked through; then a material may go into two tanks where that allows a stronger stock. WHAT is as in ashery dissolve.
        Stocks are stronger than the model is good for, so a tenth of the computed strength is kept back. Make a litre first and let it stand a cold night.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("Four salts over two tanks in moderate water:", "ashery tanks --water moderate --add calcium-nitrate-double=0.6 --add potassium-nitrate=0.4 --add epsom-salt=0.4 --add mkp=0.15"),
        ("A frost-free shed, a smaller injector, three tanks:", "ashery tanks --add calcium-nitrate-double=0.6 --add potassium-sulfate=0.5 --add map-technical=0.1 --ratio 1:64 --coldest 2 --tanks 3"),
        ("As JSON:", "ashery tanks --water soft --add potassium-nitrate=0.5 --add epsom-salt=0.3 --json"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var source = water.Load(given);
        var degrees = given.Text(coldest) is { } text ? Degrees(given, text) : 5;
        var count = given.Whole(tanks, 2, 1, TankSplit.MostTanks);
        var parts = given.Text(ratio) is { } words ? RatioWords.Read(given, ratio, words) : 100;
        var feed = AddedWords.Read(given, terminal, add, garden);
        if (given.Wrong || source is null || parts is null)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var found = TankSplit.Find(new()
        {
            Water = source.ToInput(),
            WaterName = source.Name,
            Feed = [.. feed.Select(static a => new TankMaterial(a.Material, a.Grams))],
            Ratio = parts.Value,
            Tanks = count,
            Coldest = degrees,
            MayDivide = !given.Has(whole),
        });
        if (given.Take(found) is not { } report)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(TanksJson.Write(report));
        }
        else
        {
            TanksText.Write(terminal, report);
        }

        return report.MostRatio > 0 ? ExitCode.Done : ExitCode.OutOfReach;
    }

    private double Degrees(Given given, string text)
    {
        var read = NumberReader.Read(text, Given.Field(coldest), Speciation.Coldest, Speciation.Warmest, "5");
        given.AddRange(read.Problems);
        return read.Ok ? read.Value : 5;
    }
}
