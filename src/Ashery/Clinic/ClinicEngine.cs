using Ashery.Clinic.Cases;
using Ashery.Clinic.Knowledge;
using Ashery.Clinic.Ranking;
using Ashery.Clinic.Tests;
using Ashery.Crops;
using Ashery.Problems;
using Ashery.Sources;

namespace Ashery.Clinic;

/// <summary>A visit from the case to the report, over given knowledge.</summary>
internal sealed class ClinicEngine(ClinicKnowledge knowledge)
{
    private static readonly Lazy<ClinicEngine> Shared = new(static () => new(ClinicKnowledge.Default));

    private readonly Lazy<Looks> looks = new(() => Looks.Of(knowledge));

    public static ClinicEngine Default => Shared.Value;

    public Result<ClinicReport> Diagnose(ClinicCase visit)
    {
        var crop = visit.CropId is { } id ? CropCatalogue.Default.Find(id) : CropGroups.Find(visit.CropWords);
        var reader = new CaseReader(knowledge, visit, crop);
        var answers = reader.Read();
        if (visit.CropId is { } wanted && crop is null)
        {
            reader.Wrong.Add(new("crop", $"There is no crop \"{CaseReader.Short(wanted)}\" in the catalogue.", "Take a key of ashery crops, or say it in words."));
        }

        if (reader.Wrong.Count > 0)
        {
            return Result.Fail<ClinicReport>(reader.Wrong);
        }

        var groups = knowledge.Data.Crops.Of(crop?.Id, visit.CropWords);
        var cropKnown = crop is not null || groups.Count > 0;
        var prior = PriorFor(groups, cropKnown);
        var odds = knowledge.OddsFor(groups);
        var evidence = answers.Select(a => Evidence.Of(knowledge, odds[a.Question], a.Question, a.Weights, a.Trust)).ToList();
        var words = answers.Select(a => AnswerWords.Of(knowledge.Questions[a.Question], a.Weights)).ToList();
        var logPrior = Array.ConvertAll(prior, Math.Log);
        var posterior = Posterior.Of(knowledge, logPrior, evidence);
        var closed = Closed(answers, reader.NotKnown);
        var reasons = new Reasons(knowledge, logPrior, evidence, words, posterior);
        var causes = Causes(posterior, prior, reasons, groups);
        var report = new ClinicReport
        {
            Case = visit,
            Causes = causes,
            SomethingElse = posterior.Odds[^1],
            NextLooks = looks.Value.Rank(posterior, odds, closed),
            Read = [.. answers.Select((a, i) => new ClinicReading(
                knowledge.Questions[a.Question].Id, a.Given, [.. knowledge.Questions[a.Question].Public.Choices.Select((c, k) => (c.Id, a.Weights[k])).Where(static c => c.Item2 > 0)], words[i]))],
            Tests = reader.Tests,
            Balance = groups.Contains("woody") ? LeafBalance.Of(reader.Tests.Where(static t => t.QuestionId.StartsWith("leaf_", StringComparison.Ordinal)).ToDictionary(static t => t.QuestionId["leaf_".Length..], static t => t.Value, StringComparer.Ordinal)) : [],
            Doubt = posterior.Doubt,
            Settled = causes[0].Probability >= PlantClinic.Settled && causes[0].Kind != CauseKind.Unknown,
            Notes = reader.Notes,
            First = Remedies.First,
        };
        return Result.Of(report, reader.Notes);
    }

    /// <summary>P(cause) for plants of these groups.</summary>
    public double[] PriorFor(IReadOnlyList<string> groups, bool cropKnown)
    {
        var prior = new double[knowledge.Causes.Length];
        for (var c = 0; c < prior.Length; c++)
        {
            prior[c] = knowledge.Prior[c];
            if (knowledge.Causes[c].Pair is var (a, b))
            {
                prior[c] *= Times(a) * Times(b);
            }
            else if (knowledge.Causes[c].Kind != CauseKind.Unknown)
            {
                prior[c] *= Times(c);
            }
        }

        var sum = prior.Sum();
        return Array.ConvertAll(prior, p => p / sum);

        double Times(int cause) => knowledge.Data.Crops.Times(knowledge.Causes[cause].Id, groups, cropKnown);
    }

    private bool[] Closed(IReadOnlyList<CaseAnswer> answers, HashSet<int> notKnown)
    {
        var closed = new bool[knowledge.Questions.Length];
        foreach (var answer in answers)
        {
            // What a model says may still be looked at.
            closed[answer.Question] = answer.Trust >= 1;
        }

        foreach (var q in notKnown)
        {
            closed[q] = true;
        }

        return closed;
    }

    private List<ClinicCause> Causes(Posterior posterior, double[] prior, Reasons reasons, IReadOnlyList<string> groups)
    {
        var list = new List<ClinicCause>(prior.Length);
        for (var c = 0; c < prior.Length; c++)
        {
            var cause = knowledge.Causes[c];
            var single = cause.Row is { } row ? [row] : cause.Pair is var (a, b) ? [knowledge.Causes[a].Row!, knowledge.Causes[b].Row!] : Array.Empty<CauseRow>();
            var (speaksFor, against) = reasons.Of(c, CropReason(c, prior, groups));
            list.Add(new()
            {
                Id = cause.Id,
                Name = cause.Name,
                Kind = cause.Kind,
                Probability = posterior.Odds[c],
                Before = prior[c],
                Because = speaksFor,
                Against = against,
                Separates = [.. single.SelectMany(static r => r.Separates)],
                Brings = cause.Named is { } named ? [named.Reason, .. single.SelectMany(static r => r.Brings)] : [.. single.SelectMany(static r => r.Brings)],
                Remedies = [.. single.SelectMany(static r => Remedies.For(r.Id))],
                PictureId = single.Length > 0 ? single[0].Picture : null,
            });
        }

        list.Sort(static (x, y) => y.Probability.CompareTo(x.Probability) is var order and not 0 ? order : string.CompareOrdinal(x.Id, y.Id));
        return list;
    }

    private ClinicReason? CropReason(int cause, double[] prior, IReadOnlyList<string> groups)
    {
        if (knowledge.Causes[cause].Row is not { } row || knowledge.Data.Crops.VoiceOf(row.Id, groups) is not { } voice)
        {
            return null;
        }

        var times = prior[cause] / (1 - prior[cause]) / (knowledge.Prior[cause] / (1 - knowledge.Prior[cause]));
        return new("crop", times > 1 ? "Crop: prone to it" : "Crop: seldom has it", times, [voice.SourceId], voice.Provenance);
    }
}
