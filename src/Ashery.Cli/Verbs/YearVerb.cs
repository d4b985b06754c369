using Ashery.Cli.Frame;
using Ashery.Exchange.Calendar;
using Ashery.Planning;

namespace Ashery.Cli.Verbs;

/// <summary>A dated year of feeds with reasons, totals and a shopping list, and the same as a calendar file.</summary>
internal sealed class YearVerb : Verb
{
    private readonly GardenSource garden;
    private readonly ValueOption from;
    private readonly ValueOption ics;
    private readonly System.CommandLine.Option<bool> full;
    private readonly System.CommandLine.Option<bool> fit;
    private readonly FitOptions fitting;

    public YearVerb()
        : base("year", "Plan a year of feeds by the seasons of the place, with reasons, totals and a shopping list")
    {
        garden = new GardenSource(Command);
        from = Add(new ValueOption("--from", "DATE", "First day, as 2026-03-01 (today)"));
        ics = Add(new ValueOption("--ics", "FILE", "Also write the dates as an iCalendar file"));
        full = Flag("--full", "Print what shaped the dose of each pot too, as the JSON does");
        fit = Flag("--fit", "Fit dates and doses to a model of each pot's root zone; takes some seconds");
        fitting = new FitOptions(Add);
    }

    public override string Details =>
        """
        --fit runs every pot through made years of weather from the monthly normals of the place, and moves and sizes feeds within the season rules, gates and caps. Days and odds it prints are those of the model.
        """;


    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("The demo garden's year:", "ashery year --demo"),
        ("From the first of February, with a file for your calendar:", "ashery year --demo --from 2027-02-01 --ics feeds.ics"),
        ("Your own garden file, as JSON:", "ashery year --garden my-garden.json --json"),
        ("Your own garden fitted to its pots, beside the rule of thumb:", "ashery year --garden my-garden.json --fit"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var day = Dates.Read(given, from) ?? terminal.Today();
        var file = given.Text(ics);
        var loaded = garden.Load(given, terminal);
        if (given.Wrong || loaded is null)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (!given.Has(fit) && fitting.Stray(given))
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var fitted = given.Has(fit) ? fitting.Run(given, terminal, loaded, day) : null;
        if (given.Wrong)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var plan = fitted?.Plan ?? YearPlanner.Plan(new YearRequest(loaded, day));
        if (file is not null && given.Take(TextFile.Write(file, YearCalendar.Write(plan, loaded, terminal.Now()), "ics")) is null)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(fitted is not null ? FittedYearJson.Write(fitted) : YearJson.Write(plan));
        }
        else if (fitted is not null)
        {
            FittedYearText.Write(terminal, FittedYearJson.Of(fitted), loaded, file, given.Has(full), fitting.IsReplan(given));
        }
        else
        {
            YearText.Write(terminal, YearJson.Of(plan), loaded, file, given.Has(full));
        }

        return plan.Feeds.Count > 0 ? ExitCode.Done : ExitCode.OutOfReach;
    }
}
