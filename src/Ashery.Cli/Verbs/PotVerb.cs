using System.CommandLine;
using Ashery.Cli.Frame;
using Ashery.Climate;
using Ashery.Exchange.RootZone;
using Ashery.Exchange.Weather;
using Ashery.Problems;
using Ashery.RootZone.Calibration;
using Ashery.RootZone.Draws;

namespace Ashery.Cli.Verbs;

/// <summary>A pot's likely year in its root zone.</summary>
internal sealed class PotVerb : Verb
{
    private readonly Argument<string[]> file = new("scenario")
    {
        HelpName = "SCENARIO.json",
        Description = "A pot file: pot, plant, medium, watering, place, feeds with their dates, readings",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly ValueOption days;
    private readonly ValueOption draws;
    private readonly ValueOption seed;
    private readonly Option<bool> demo;

    public PotVerb()
        : base("pot", "A pot's likely year: salts, nitrogen, pH, leaching, with odds")
    {
        Command.Arguments.Add(file);
        days = Add(new ValueOption("--days", "N", "How many days from the first (the file's, or 365)"));
        draws = Add(new ValueOption("--draws", "N", "How many likely years (500)"));
        seed = Add(new ValueOption("--seed", "N", "Another seed draws other years (1)"));
        demo = Flag("--demo", "The sample pot, data/demo/bellflower.pot.json, with made readings");
    }

    public override string Details =>
        """
        Everything uncertain is drawn within its published range, the weather from the normals of the place. Odds are the model's own. Readings in the file (EC and pH of what runs out below, weights) pull the forecast to that pot. The file is told in docs/pot-file.md.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("The sample pot, quickly:", "ashery pot --demo --draws 100"),
        ("Its first four months as JSON:", "ashery pot --demo --days 120 --draws 60 --json"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var named = given.Texts(file);
        var sample = given.Has(demo);
        if (named.Count != (sample ? 0 : 1))
        {
            given.Add(new Problem("scenario", named.Count == 0 ? "No pot file is named." : "More than one pot is named.", "Name one file, as ashery pot my-pot.json, or --demo."));
        }

        var count = given.Whole(draws, 500, 1, PotForecastRequest.MostDraws);
        var number = given.Whole(seed, 1, 0, int.MaxValue);
        var length = given.Has(days) ? given.Whole(days, 365, 1, PotForecastRequest.MostDays) : 0;
        if (given.Wrong || Request(given, sample ? null : named[0], number) is not var (request, readings) || given.Wrong)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        request = request with { Draws = count, Days = length > 0 ? length : request.Days };
        if (given.Take(PotOutlook.Run(request, readings, Math.Clamp(count / 2, 20, VarianceShares.UsualRows))) is not { } outlook)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(PotJson.Write(outlook));
        }
        else
        {
            PotText.Write(terminal, outlook);
        }

        return ExitCode.Done;
    }

    private static (PotForecastRequest Request, IReadOnlyList<PotReading> Readings)? Request(Given given, string? path, int seed)
    {
        if ((path is null ? PotFile.Sample() : given.Take(TextFile.Read(path, "scenario"))) is not { } text || given.Take(PotFile.Read(text)) is not { } pot)
        {
            return null;
        }

        WeatherSeries? measured = null;
        if (pot.WeatherFile is { } weather)
        {
            // A relative name starts at the folder of the pot file.
            var full = Path.Combine(Path.GetDirectoryName(path) ?? string.Empty, weather);
            measured = given.Take(LongFile.Read(full, "weatherFile", stream => WeatherFile.Read(stream, Path.GetFileName(full), pot.Place)));
            if (measured is null)
            {
                return null;
            }
        }

        return given.Take(PotBuild.Forecast(pot, measured, seed)) is { } request ? (request, pot.Readings) : null;
    }
}
