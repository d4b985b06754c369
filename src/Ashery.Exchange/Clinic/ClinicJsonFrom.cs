using System.Text.Json;
using Ashery.Cautions;
using Ashery.Clinic;
using Ashery.Exchange.Json;
using Ashery.Sources;

namespace Ashery.Exchange.Clinic;

/// <summary>Makes the JSON shape of a report.</summary>
public static class ClinicJsonFrom
{
    /// <summary>How many looks are listed.</summary>
    private const int MostLooks = 8;

    public static ClinicJson Of(ClinicReport report, int best)
    {
        var known = report.Causes.Where(static c => c.Kind != CauseKind.Unknown).ToList();
        var shown = known.Take(best).ToList();
        var looks = report.NextLooks.Take(MostLooks).Select(Look).ToList();
        return new(
            report.Case.CropId ?? report.Case.CropWords,
            [.. shown.Select(Cause)],
            Tidy(report.SomethingElse, 4),
            Tidy(Math.Max(0, 1 - report.SomethingElse - shown.Sum(static c => c.Probability)), 4),
            report.Settled,
            Tidy(report.Doubt, 2),
            looks.Count > 0 ? looks[0] : null,
            looks,
            [.. report.Read.Select(static r => new ClinicReadJson(r.QuestionId, r.Given, r.Words, [.. r.Choices.Where(static c => c.Weight >= 0.05).OrderByDescending(static c => c.Weight).Select(static c => c.ChoiceId)]))],
            [.. report.Tests.Select(static t => new ClinicTestJson(
                t.QuestionId, t.Value, t.AsExtract is { } e ? Tidy(e, 3) : null, t.Unit, t.Low, t.High, Level(t.Level), t.OfCrop, t.Words, SourceIndex.Default.Cite(t.SourceId), How(t.Provenance)))],
            [.. report.Balance.Select(static b => new ClinicBalanceJson(
                b.Element, Tidy(b.PerHundredN, 1), b.Low, b.Optimum.Low, b.Optimum.High, Level(b.Level), SourceIndex.Default.Cite(b.SourceId), How(b.Provenance)))],
            report.First,
            ProblemJson.From(report.Notes));
    }

    /// <summary>The JSON text.</summary>
    public static string Write(ClinicReport report, int best) => JsonSerializer.Serialize(Of(report, best), ClinicJsonContext.Shared.ClinicJson) + "\n";

    private static ClinicCauseJson Cause(ClinicCause cause) => new(
        cause.Id, cause.Name, Word(cause.Kind.ToString()), Tidy(cause.Probability, 4), Tidy(cause.Before, 4), [.. cause.Because.Select(Reason)], [.. cause.Against.Select(Reason)], cause.Separates, cause.Brings,
        [.. cause.Remedies.Select(static r => new ClinicRemedyJson(
            r.Id, r.Words, r.Rate, r.Route, r.Mind, [.. r.CautionIds.Select(static id => CautionIndex.Default.Find(id)!.Words)], SourceIndex.Default.Cite(r.SourceId), How(r.Provenance)))]);

    private static ClinicReasonJson Reason(ClinicReason reason) => new(
        reason.QuestionId, reason.Words, Tidy(reason.Times, reason.Times < 1 ? 3 : 1), [.. reason.SourceIds.Select(SourceIndex.Default.Cite)], How(reason.Provenance));

    private static ClinicLookJson Look(ClinicLook look) => new(
        look.Question.Id, look.Question.Words, look.Question.How, look.Question.Effort, Tidy(look.Gain, 3), look.Words,
        [.. look.Answers.Select((a, i) => new ClinicOutlookJson(
            a.ChoiceId, look.Question.Choices[i].Words, Tidy(a.Probability, 3), PlantClinic.NameOf(a.LeadingCauseId) ?? a.LeadingCauseId, Tidy(a.LeadingProbability, 3)))]);

    private static string Level(Ashery.Clinic.Tests.TestLevel level) => Word(level.ToString());

    private static string How(Provenance provenance) => provenance switch
    {
        Provenance.Seen => "seen",
        Provenance.Computed => "computed",
        Provenance.CommonPractice => "common practice, no source",
        _ => "from memory",
    };

    private static string Word(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    private static double Tidy(double value, int digits) => Math.Round(value, digits) + 0.0;
}
