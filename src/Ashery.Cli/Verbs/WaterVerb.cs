using System.CommandLine;
using System.CommandLine.Completions;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Crops;
using Ashery.Exchange.Waters;
using Ashery.Problems;
using Ashery.Solutions.Waters;

namespace Ashery.Cli.Verbs;

/// <summary>Reads a water report and judges it, or lists the waters that ship.</summary>
internal sealed class WaterVerb : Verb
{
    private readonly Argument<string[]> water = new("water")
    {
        HelpName = "[FILE|NAME]",
        Description = $"A water file, or a water that ships: {WaterSource.Names}",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly ValueOption crop;

    public WaterVerb()
        : base("water", "Read a water report: balance, what is missing, what plants bear")
    {
        water.CompletionSources.Add(static _ => SourceWaters.Default.All.Select(static w => new CompletionItem(w.Report.Id)));
        Command.Arguments.Add(water);
        crop = Add(new ValueOption("--crop", "ID", "Judge it for this crop; else for most plants in pots")
        {
            Words = static () => CropCatalogue.Default.All.Select(static c => c.Id),
        });
    }

    public override string Details =>
        "A water file is JSON: ions in mg/L by symbol, alkalinity as mg/L CaCO3, pH, ec in mS/cm; another unit as { \"value\": 9, \"unit\": \"°dH\" }. Without a name the waters that ship are listed.";

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("The waters that ship:", "ashery water"),
        ("A hard tap water:", "ashery water hard"),
        ("Whether camellias bear it:", "ashery water moderate --crop camellia"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var named = given.Texts(water);
        var needs = given.Text(crop) is { } id && MaterialWords.Crop(given, "crop", id) is { } found ? WaterNeeds.Of(found) : WaterNeeds.Usual;
        if (named.Count > 1)
        {
            given.Add(new Problem("water", "More than one water is named.", "Name one file or one water that ships."));
        }

        if (given.Wrong)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (named.Count == 0)
        {
            return List(given, terminal);
        }

        if (WaterSource.Named(given, named[0], "water") is not var (_, reading, _))
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (reading is null)
        {
            given.Add(new Problem("water", "Pure water holds nothing, so that there is nothing to judge.", $"Name a water file, or one of {WaterSource.Names}."));
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(WaterJson.Write(reading, needs));
        }
        else
        {
            WaterText.Write(terminal, WaterJson.Of(reading, needs), reading.PhWords);
        }

        return ExitCode.Done;
    }

    private int List(Given given, Terminal terminal)
    {
        if (given.Has(Json))
        {
            terminal.Output.Write(WaterListJson.Write());
            return ExitCode.Done;
        }

        var page = new Page(terminal);
        page.Text("Waters that ship. EC in mS/cm at 25 °C; hardness and alkalinity in mg/L CaCO3.");
        page.Blank();
        var table = new Table("water", ">EC", ">hardness", ">alkalinity", ">pH", "what it is");
        foreach (var item in WaterListJson.Of().Waters)
        {
            table.Add(item.Id, Figures.Fixed(item.Ec, 2), Figures.Fixed(item.Hardness, 0), Figures.Fixed(item.Alkalinity, 0), Figures.Fixed(item.PH, 1), item.About);
        }

        table.Add("pure", "0.00", "0", "0", "7.0", "nothing in it, not even carbon dioxide");
        table.Write(terminal.Output, terminal.Width);
        page.Blank();
        page.Text("Your own: write the laboratory's report to a file and name it, as in ashery water my-water.json.");
        return ExitCode.Done;
    }
}
