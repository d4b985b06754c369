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

    public YearVerb()
        : base("year", "Plan a year of feeds by the seasons of the place, with reasons, totals and a shopping list")
    {
        garden = new GardenSource(Command);
        from = Add(new ValueOption("--from", "DATE", "First day, as 2026-03-01 (today)"));
        ics = Add(new ValueOption("--ics", "FILE", "Also write the dates as an iCalendar file"));
        full = Flag("--full", "Print what shaped the dose of each pot too, as the JSON does");
    }

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("The demo garden's year:", "ashery year --demo"),
        ("From the first of February, with a file for your calendar:", "ashery year --demo --from 2027-02-01 --ics feeds.ics"),
        ("Your own garden file, as JSON:", "ashery year --garden my-garden.json --json"),
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

        var plan = YearPlanner.Plan(new YearRequest(loaded, day));
        if (file is not null && given.Take(TextFile.Write(file, YearCalendar.Write(plan, loaded, terminal.Now()), "ics")) is null)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(YearJson.Write(plan));
        }
        else
        {
            YearText.Write(terminal, YearJson.Of(plan), loaded, file, given.Has(full));
        }

        return plan.Feeds.Count > 0 ? ExitCode.Done : ExitCode.OutOfReach;
    }
}
