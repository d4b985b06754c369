using Ashery.Cautions;
using Ashery.Clinic;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Sources;

namespace Ashery.Cli.Verbs;

/// <summary>A visit to the clinic as a grower reads it.</summary>
internal static class ClinicText
{
    // Reasons shown of each cause, and causes of which what to do is shown.
    private const int Reasons = 4, Treated = 2, Looks = 4;

    public static void Write(Terminal terminal, ClinicReport report, int best)
    {
        var page = new Page(terminal);
        var causes = report.Causes.Where(static c => c.Kind != CauseKind.Unknown).Take(best).ToList();
        var first = causes[0];
        var whose = report.Case.CropWords is { Length: > 0 } crop ? $" ({SafeText.Of(crop)})" : string.Empty;
        page.Heading(report.Settled
            ? $"Most likely {first.Name}: {Percent(first.Probability)}{whose}."
            : $"Not settled. First of all {first.Name}: {Percent(first.Probability)}{(causes.Count > 1 ? $"; next {causes[1].Name}: {Percent(causes[1].Probability)}" : string.Empty)}{whose}.");
        if (report.NextLook is { } next)
        {
            page.Text($"Next look: {next.Question.Words} {next.Words}");
        }

        page.Title("Causes");
        var table = new Table("cause", ">odds", ">before", "kind");
        foreach (var cause in causes)
        {
            table.Add(cause.Name, Percent(cause.Probability), Percent(cause.Before), Figures.Words(cause.Kind.ToString()));
        }

        table.Add("something else", Percent(report.SomethingElse), string.Empty, string.Empty);
        table.Write(terminal.Output, terminal.Width);
        Understood(page, report);
        Moved(page, causes);
        LookNext(page, report);
        Do(page, report, causes);
        page.Bullets("Noticed", [.. report.Notes.Select(static n => $"{n.Field}: {n.Message} {n.WayOut}")]);
    }

    /// <summary>What can be asked.</summary>
    public static void Fields(Terminal terminal)
    {
        var page = new Page(terminal);
        page.Heading("Fields of a case. Each takes one of these keys, or plain words.");
        ClinicPart? part = null;
        foreach (var question in PlantClinic.Questions)
        {
            if (part != question.Part)
            {
                part = question.Part;
                page.Title(question.Part switch { ClinicPart.Leaves => "Leaves", ClinicPart.Plant => "The plant and its neighbours", ClinicPart.Pot => "Pot and roots", ClinicPart.Before => "What came before", ClinicPart.Meters => "Meters and kits", _ => "A laboratory's figures" });
            }

            var figure = question.Unit is { } unit ? unit.Length > 0 ? $", or a figure in {unit}" : ", or a figure" : string.Empty;
            page.Fact(question.Id, $"{question.Words.TrimEnd('?')}: {string.Join(", ", question.Choices.Select(static c => c.Id))}{figure}");
        }
    }

    private static void Understood(Page page, ClinicReport report)
    {
        page.Bullets("Understood", [.. report.Read.Select(static r => r.Words)]);
        page.Bullets("Measured", [.. report.Tests.Select(static t => $"{t.Words} ({SourceIndex.Default.Cite(t.SourceId)}; {How(t.Provenance)})")]);
        page.Bullets("Ratios in the leaf (N = 100)", [.. report.Balance.Select(static b => $"{b.Element} {Figures.Short(b.PerHundredN)}, {Figures.Words(b.Level.ToString())}: short below {Figures.Short(b.Low)}, best {Figures.Short(b.Optimum.Low)} to {Figures.Short(b.Optimum.High)} ({SourceIndex.Default.Cite(b.SourceId)}; {How(b.Provenance)})")]);
    }

    private static void Moved(Page page, List<ClinicCause> causes)
    {
        foreach (var cause in causes.Take(3))
        {
            var lines = new List<string>();
            lines.AddRange(cause.Because.Take(Reasons).Select(static r => $"for: {r.Words} ({Times(r.Times)} times likelier)"));
            lines.AddRange(cause.Against.Take(Reasons / 2).Select(static r => $"against: {r.Words} ({Times(1 / r.Times)} times less likely)"));
            page.Bullets($"What moved {cause.Name}", lines);
        }
    }

    private static void LookNext(Page page, ClinicReport report)
    {
        if (report.NextLooks.Count == 0)
        {
            return;
        }

        page.Title("Look next");
        foreach (var look in report.NextLooks.Take(Looks))
        {
            page.Bullet($"{look.Question.Words} {look.Question.How} {look.Words} ({Figures.Fixed(look.Gain, 2)} bits of {Figures.Fixed(report.Doubt, 1)})".Replace("  ", " ", StringComparison.Ordinal));
            foreach (var answer in look.Answers.Where(static a => a.Probability >= 0.05))
            {
                var choice = look.Question.Choices.First(c => c.Id == answer.ChoiceId);
                page.Text($"{choice.Words}: then {PlantClinic.NameOf(answer.LeadingCauseId)} {Percent(answer.LeadingProbability)}", 6, 8);
            }
        }
    }

    private static void Do(Page page, ClinicReport report, List<ClinicCause> causes)
    {
        page.Bullets("Before any remedy", report.First);
        var cautions = new List<string>();
        foreach (var cause in causes.Take(Treated))
        {
            page.Bullets(
                $"If it is {cause.Name}",
                [.. cause.Remedies.Select(static r => $"{r.Words}{(r.Rate.Length > 0 ? $" {char.ToUpperInvariant(r.Rate[0])}{r.Rate[1..]}." : string.Empty)}{(r.Mind is { } mind ? " " + mind : string.Empty)} ({SourceIndex.Default.Cite(r.SourceId)}; {How(r.Provenance)})")]);
            page.Bullets($"What tells {cause.Name} apart", cause.Separates);
            cautions.AddRange(cause.Remedies.SelectMany(static r => r.CautionIds).Where(id => !cautions.Contains(id)));
        }

        page.Bullets("Mind", [.. cautions.Distinct(StringComparer.Ordinal).Select(static id => CautionIndex.Default.Find(id)!.Words)]);
    }

    private static string Times(double times) => times >= 10 ? Figures.Fixed(times, 0) : Figures.Short(Math.Round(times, 1));

    private static string Percent(double share) => share is > 0 and < 0.01 ? "<1 %" : Figures.Percent(share, 0);

    private static string How(Provenance provenance) => provenance switch
    {
        Provenance.Seen => "seen",
        Provenance.Computed => "computed",
        Provenance.CommonPractice => "common practice, no source",
        _ => "from memory",
    };
}
