using System.CommandLine;
using Ashery.Clinic;
using Ashery.Cli.Frame;
using Ashery.Exchange.Clinic;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>What is wrong with a plant, how sure that is, what to look at next, what to do.</summary>
internal sealed class ClinicVerb : Verb
{
    private const int Usual = 5, Most = 50;

    private readonly ValueOption file;
    private readonly ValueOption best;
    private readonly Option<bool> demo;
    private readonly Option<bool> fields;

    public ClinicVerb()
        : base("clinic", "What ails a plant: causes with odds, the next look, what to do")
    {
        file = Add(new ValueOption("--case", "FILE.json", "What was seen, measured and done"));
        best = Add(new ValueOption("--best", "N", "How many causes to show (5)"));
        demo = Flag("--demo", "The sample case, data/demo/pale-lantana.case.json");
        fields = Flag("--fields", "List what can be asked, with the keys of the answers");
    }

    public override string Details =>
        """
        A case holds crop, symptoms and context; each field takes plain words, a figure, or null for "not known", and any may be left out. The file is told in docs/clinic-file.md. Odds are those of Bayes' rule over published signs; what a sign is worth in figures is our own estimate.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("The sample case:", "ashery clinic --demo"),
        ("Its three likeliest causes as JSON:", "ashery clinic --demo --best 3 --json"),
        ("What can be asked:", "ashery clinic --fields"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var path = given.Text(file);
        if (given.Has(fields) && !given.Has(Json) && path is null && !given.Has(demo))
        {
            if (given.Wrong)
            {
                return Faults.WrongUse(terminal, this, given);
            }

            ClinicText.Fields(terminal);
            return ExitCode.Done;
        }

        if ((path is null) != given.Has(demo) || given.Has(fields))
        {
            given.Add(given.Has(fields)
                ? new Problem("fields", "The list of fields goes with no case, and is text only.", "Ask for it alone: ashery clinic --fields.")
                : new Problem("case", path is null ? "No case is named." : "A case and the sample are both named.", "Name one, as ashery clinic --case my-plant.json, or --demo."));
        }

        var count = given.Whole(best, Usual, 1, Most);
        if (given.Wrong || Visit(given, path) is not { } visit || given.Take(PlantClinic.Diagnose(visit)) is not { } report)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (report.Read.Count == 0)
        {
            foreach (var note in report.Notes)
            {
                given.Add(note with { Severity = Severity.Error });
            }

            given.Add(new("case", "Nothing in the case was understood: there is nothing to go by.", "ashery clinic --fields lists what can be said."));
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(ClinicJsonFrom.Write(report, count));
        }
        else
        {
            ClinicText.Write(terminal, report, count);
        }

        return ExitCode.Done;
    }

    private static ClinicCase? Visit(Given given, string? path) =>
        (path is null ? ClinicFile.Sample() : given.Take(TextFile.Read(path, "case"))) is { } text ? given.Take(ClinicFile.Read(text)) : null;
}
