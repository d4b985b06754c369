using System.CommandLine;
using Ashery.Cards;
using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Cli.Frame;
using Ashery.Exchange.Trials;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Trials;
using Ashery.Trials.Chances;
using Ashery.Trials.Designs;
using Ashery.Trials.Results;

namespace Ashery.Cli.Verbs;

/// <summary>Designs a trial of feeds and judges what it showed.</summary>
internal sealed class TrialVerb : Verb
{
    private static readonly string[] Parts = ["design", "analyse"];
    private static readonly string[] Endings = [".pdf", ".html", ".svg", ".txt"];
    private static readonly string[] Spendings = ["oBrienFleming", "pocock"];
    private static readonly string[] Kinds = ["count", "measurement"];

    private readonly Argument<string[]> words = new("words")
    {
        HelpName = "design|analyse [FILE]...",
        Description = "design [TRIAL.json], or analyse TRIAL.json [RESULTS.csv]",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly ValueOption feeds;
    private readonly ValueOption control;
    private readonly ValueOption measure;
    private readonly ValueOption kind;
    private readonly ValueOption unit;
    private readonly ValueOption mean;
    private readonly ValueOption difference;
    private readonly ValueOption spread;
    private readonly ValueOption power;
    private readonly ValueOption pots;
    private readonly ValueOption name;
    private readonly ValueOption seed;
    private readonly ValueOption draws;
    private readonly Option<bool> blind;
    private readonly ValueOption looks;
    private readonly ValueOption spending;
    private readonly ValueOption look;
    private readonly ValueOption to;
    private readonly ValueOption plan;
    private readonly ValueOption tags;
    private readonly ValueOption sheet;
    private readonly ValueOption key;
    private readonly ValueOption picture;
    private readonly GardenSource garden;

    public TrialVerb()
        : base("trial", "Try feeds against each other on your own pots: how many pots, which gets what, what it showed")
    {
        words.CompletionSources.Add(static context => ValueOption.CompleteList(context, Parts));
        Command.Arguments.Add(words);
        feeds = Add(new ValueOption("--feeds", "NAME,NAME", "Feeds to compare, two or more"));
        control = Add(new ValueOption("--control", "NAME", "The one the others are compared with"));
        measure = Add(new ValueOption("--measure", "TEXT", "What is counted or measured (open flowers)"));
        kind = Add(new ValueOption("--kind", "KIND", "count (usual) or measurement") { Words = static () => Kinds });
        unit = Add(new ValueOption("--unit", "UNIT", "Of a measurement, as cm"));
        mean = Add(new ValueOption("--mean", "COUNT", "Of counts: what the control bears, a pot (20)"));
        difference = Add(new ValueOption("--difference", "PERCENT", "What is to be seen: more, or with a minus less (30)"));
        spread = Add(new ValueOption("--spread", "PERCENT", "How much pots fed alike differ, part of their mean (25)"));
        power = Add(new ValueOption("--power", "PERCENT", "Chance to see it (80)"));
        pots = Add(new ValueOption("--pots", "COUNT|IDS", "How many pots, or the ids of pots of the garden, or all of them"));
        name = Add(new ValueOption("--name", "TEXT", "What to call the trial"));
        seed = Add(new ValueOption("--seed", "N", "Another seed draws another layout (1)"));
        draws = Add(new ValueOption("--draws", "N", "Simulated trials of counts for each number of pots (10000)"));
        blind = Flag("--blind", "Codes on tags and record sheet in place of feeds");
        looks = Add(new ValueOption("--looks", "N", "How often you mean to judge it, the end included (1)"));
        spending = Add(new ValueOption("--spending", "RULE", "How looks share the chance of a false alarm: oBrienFleming (usual) or pocock") { Words = static () => Spendings });
        look = Add(new ValueOption("--look", "N", "analyse: which look this is (the last)"));
        to = Add(new ValueOption("--to", "FILE.json", "design: where to keep the trial"));
        plan = Add(new ValueOption("--plan", "FILE", "design: the plan to print, .pdf, .html, .svg or .txt"));
        tags = Add(new ValueOption("--tags", "FILE", "design: tags to cut out, the same endings"));
        sheet = Add(new ValueOption("--sheet", "FILE", "design: the record sheet, the same endings or .csv to type into"));
        key = Add(new ValueOption("--key", "FILE", "design: which code is which feed, the same endings"));
        picture = Add(new ValueOption("--picture", "FILE.svg", "analyse: the estimates as a picture"));
        garden = new GardenSource(Command);
    }

    public override string Details =>
        """
        design says how many pots are needed, and draws by lot which pot gets what, within blocks of pots alike in place and size. analyse takes the kept trial and the record sheet typed as CSV (pot,date,value or pot,value), or a trial that holds its results. Both files are told in docs/trial-file.md.
        One pot a feed proves nothing. A trial that shows no difference has not shown that there is none.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("How many pots to see 40 % more flowers than about 15:", "ashery trial design --feeds \"plain water,spring mix\" --control \"plain water\" --mean 15 --difference 40 --spread 20 --draws 1000"),
        ("Twelve pots laid out, blind, with all papers:", "ashery trial design --feeds \"old mix,new mix\" --kind measurement --measure height --unit cm --spread 12 --difference 20 --pots 12 --blind --to heights.json --plan plan.pdf --tags tags.html --sheet heights.csv"),
        ("On pots of the demo garden:", "ashery trial design --feeds \"old mix,new mix\" --demo --pots all --draws 500"),
        ("What the sample trial showed, data/demo/railing.trial.json, figures made:", "ashery trial analyse --demo --picture estimates.svg"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var said = given.Texts(words);
        if (said.Count == 0 || !Parts.Contains(said[0]))
        {
            var nearest = said.Count == 0 ? null : WrongWords.Meant(said[0], Parts);
            given.Add(new Problem("words", said.Count == 0 ? "Neither design nor analyse is asked for." : $"{SafeText.Quoted(said[0])} is neither design nor analyse.", nearest is null ? "Write ashery trial design or ashery trial analyse." : $"Did you mean {nearest}?"));
            return Faults.WrongUse(terminal, this, given);
        }

        return said[0] == "design" ? Design(given, terminal, [.. said.Skip(1)]) : Analyse(given, terminal, [.. said.Skip(1)]);
    }

    private int Design(Given given, Terminal terminal, IReadOnlyList<string> files)
    {
        var trial = files.Count switch
        {
            0 => FromWords(given, terminal),
            1 => given.Take(TextFile.Read(files[0], "trial")) is { } text && given.Take(TrialFile.Read(text)) is { } read ? Changed(given, terminal, read.Trial) : null,
            _ => null,
        };
        if (files.Count > 1)
        {
            given.Add(new Problem("words", "More than one trial is named.", "Name one file, or none and say the feeds with --feeds."));
        }

        var simulated = given.Whole(draws, TrialDesign.UsualDraws, 100, 100_000);
        CheckEndings(given);
        if (given.Wrong || trial is null || given.Take(TrialDesign.Plan(trial, simulated)) is not { } made || Print(given, terminal, made) is not { } written)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(TrialPlanJson.Write(made));
        }
        else
        {
            TrialText.Write(terminal, made, written);
        }

        return ExitCode.Done;
    }

    private int Analyse(Given given, Terminal terminal, IReadOnlyList<string> files)
    {
        var sample = garden.IsDemo(given);
        if (sample ? files.Count != 0 : files.Count is not (1 or 2))
        {
            given.Add(new Problem("words", "A trial and its results are needed.", "Write ashery trial analyse my-trial.json my-results.csv, or --demo."));
            return Faults.WrongUse(terminal, this, given);
        }

        var asked = (sample ? TrialFile.Sample() : given.Take(TextFile.Read(files[0], "trial"))) is { } text ? given.Take(TrialFile.Read(text)) : null;
        if (files.Count == 2)
        {
            var readings = given.Take(TextFile.Read(files[1], "results")) is { } lines ? given.Take(ResultsCsv.Read(lines)) : null;
            asked = readings is null ? null : asked is null ? null : asked with { Readings = readings };
        }

        var at = given.Has(look) ? given.Whole(look, 1, 1, 10) : (int?)null;
        var image = given.Text(picture);
        if (image is not null && !image.EndsWith(".svg", StringComparison.Ordinal))
        {
            given.Add(new Problem("picture", $"{SafeText.Quoted(image)} does not end in .svg.", "Name it so, as in --picture estimates.svg."));
        }

        if (given.Wrong || asked is null || given.Take(TrialAnalysis.Of(asked with { Look = at })) is not { } report)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (image is not null && given.Take(TextFile.Write(image, EstimatePicture.Svg(report, SvgFor.File), "picture")) is null)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(TrialReportJson.Write(report));
        }
        else
        {
            TrialText.Write(terminal, report, image is null ? [] : [image]);
        }

        return report.CannotAnswer ? ExitCode.OutOfReach : ExitCode.Done;
    }

    private Trial? FromWords(Given given, Terminal terminal)
    {
        if (given.Text(feeds) is not { } list)
        {
            if (!given.Wrong)
            {
                given.Add(new Problem("feeds", "No feeds are named.", "Write --feeds \"plain water,spring mix\", or name a trial file."));
            }

            return null;
        }

        var reference = given.Text(control)?.Trim();
        var treatments = list.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(n => new Treatment(TrialFile.Key(n), n, n == reference)).ToList();
        if (reference is not null && !treatments.Exists(static t => t.IsControl))
        {
            given.Add(new Problem("control", $"{SafeText.Quoted(reference)} is not one of the feeds.", "Name it among --feeds too."));
        }

        var sort = given.Word(kind, Kinds) == "measurement" ? MeasureKind.Measurement : MeasureKind.Count;
        return Changed(given, terminal, new()
        {
            Name = "Trial of " + string.Join(", ", treatments.Select(static t => t.Name)),
            Measure = new(sort, sort == MeasureKind.Count ? "open flowers" : "growth"),
            Treatments = treatments,
        });
    }

    // What is said beside a file, or beside the feeds.
    private Trial Changed(Given given, Terminal terminal, Trial trial)
    {
        var wish = trial.Wish;
        return trial with
        {
            Name = given.Text(name) ?? trial.Name,
            Measure = trial.Measure with { Name = given.Text(measure) ?? trial.Measure.Name, Unit = given.Text(unit) ?? trial.Measure.Unit },
            Wish = wish with
            {
                Mean = Number(given, mean, 0.1, 10_000, "15") ?? wish.Mean,
                Difference = Number(given, difference, -99, 900, "30") / 100 ?? wish.Difference,
                Spread = Number(given, spread, 0, 300, "25") / 100 ?? wish.Spread,
                Power = Number(given, power, 50, 99.9, "80") / 100 ?? wish.Power,
            },
            Seed = given.Whole(seed, trial.Seed, 0, int.MaxValue),
            Blind = trial.Blind || given.Has(blind),
            Looks = given.Whole(looks, trial.Looks, 1, 10),
            Spending = given.Word(spending, Spendings) switch { "pocock" => SpendingRule.Pocock, "oBrienFleming" => SpendingRule.OBrienFleming, _ => trial.Spending },
            Pots = Pots(given, terminal) ?? trial.Pots,
        };
    }

    private IReadOnlyList<TrialPot>? Pots(Given given, Terminal terminal)
    {
        if (given.Text(pots) is not { } text)
        {
            return null;
        }

        if (int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out _))
        {
            return TrialPots.Numbered(given.Whole(pots, 12, 1, Trial.MostPots));
        }

        if (garden.Load(given, terminal) is not { } own)
        {
            return null;
        }

        var wanted = text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        foreach (var id in wanted.Where(id => id != "all" && !own.Pots.Any(p => p.Id == id)).Take(5))
        {
            given.Add(new Problem("pots", $"There is no pot {SafeText.Quoted(id)} in this garden.", "Use ids of its pots, all, or a number of pots."));
        }

        return TrialPots.Of(own.Pots.Where(p => wanted.Contains("all") || wanted.Contains(p.Id)));
    }

    private void CheckEndings(Given given)
    {
        foreach (var option in new[] { plan, tags, sheet, key })
        {
            if (given.Text(option) is { } file && !Endings.Contains(Path.GetExtension(file)) && !(option == sheet && file.EndsWith(".csv", StringComparison.Ordinal)))
            {
                given.Add(new Problem(Given.Field(option), $"{SafeText.Quoted(file)} does not end in .pdf, .html, .svg or .txt{(option == sheet ? ", nor in .csv" : string.Empty)}.", "The end of the name says what is made."));
            }
        }

        if (given.Text(to) is { } kept && !kept.EndsWith(".json", StringComparison.Ordinal))
        {
            given.Add(new Problem("to", $"{SafeText.Quoted(kept)} does not end in .json.", "Name it so, as in --to my-trial.json."));
        }
    }

    private List<string>? Print(Given given, Terminal terminal, TrialPlan made)
    {
        var (trial, day) = (made.Trial, terminal.Today());
        var written = new List<string>();
        if (given.Has(key) && !trial.Blind)
        {
            given.Add(new Problem("key", "The trial is not blind, so there is no key.", "Add --blind, or leave --key out."));
            return null;
        }

        Put(to, _ => TrialFile.Write(trial), null);
        Put(sheet, file => file.EndsWith(".csv", StringComparison.Ordinal) ? ResultsCsv.Sheet(trial) : null, () => TrialSheets.Record(trial, day));
        Put(plan, null, () => TrialSheets.Plan(made, day));
        Put(tags, null, () => TrialSheets.Tags(trial, day));
        Put(key, null, () => TrialSheets.Key(trial, day));
        return given.Wrong ? null : written;

        void Put(ValueOption option, Func<string, string?>? text, Func<CardDocument>? card)
        {
            if (given.Text(option) is not { } file || given.Wrong)
            {
                return;
            }

            var done = text?.Invoke(file) is { } whole ? TextFile.Write(file, whole, Given.Field(option)) : CardFile.Write(file, card!());
            if (given.Take(done) is not null)
            {
                written.Add(file);
            }
        }
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
