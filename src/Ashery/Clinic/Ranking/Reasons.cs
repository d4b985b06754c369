using Ashery.Clinic.Knowledge;
using Ashery.Sources;

namespace Ashery.Clinic.Ranking;

/// <summary>
/// What moved a cause: the odds of the cause with all answers against those without one of them. So a second sign that says what a first one said gets
/// only what it adds.
/// </summary>
internal sealed class Reasons
{
    // An answer that changes the odds by less than this, up or down, is no reason.
    private const double Least = 1.15;

    private readonly ClinicKnowledge knowledge;
    private readonly IReadOnlyList<Evidence> evidence;
    private readonly IReadOnlyList<string> words;
    private readonly Posterior all;
    private readonly Posterior[] without;

    public Reasons(ClinicKnowledge knowledge, double[] logPrior, IReadOnlyList<Evidence> evidence, IReadOnlyList<string> words, Posterior all)
    {
        (this.knowledge, this.evidence, this.words, this.all) = (knowledge, evidence, words, all);
        without = new Posterior[evidence.Count];
        for (var i = 0; i < evidence.Count; i++)
        {
            without[i] = Posterior.Of(knowledge, logPrior, evidence, i);
        }
    }

    /// <summary>For and against, strongest first; the crop among them.</summary>
    public (IReadOnlyList<ClinicReason> For, IReadOnlyList<ClinicReason> Against) Of(int cause, ClinicReason? crop)
    {
        var (speaksFor, against) = (new List<ClinicReason>(), new List<ClinicReason>());
        if (crop is not null)
        {
            Put(crop);
        }

        for (var i = 0; i < evidence.Count; i++)
        {
            var times = Ratio(all.Odds[cause]) / Ratio(without[i].Odds[cause]);
            var known = knowledge.KnownOf(evidence[i].Question, cause);
            Put(new(
                knowledge.Questions[evidence[i].Question].Id, words[i], times,
                known is null ? [] : [.. known.Voices.Select(static v => v.SourceId).Distinct(StringComparer.Ordinal)],
                known is null ? Provenance.CommonPractice : known.Voices.Max(static v => v.Provenance)));
        }

        speaksFor.Sort(static (a, b) => b.Times.CompareTo(a.Times));
        against.Sort(static (a, b) => a.Times.CompareTo(b.Times));
        return (speaksFor, against);

        void Put(ClinicReason reason)
        {
            if (reason.Times >= Least)
            {
                speaksFor.Add(reason);
            }
            else if (reason.Times <= 1 / Least)
            {
                against.Add(reason);
            }
        }
    }

    private static double Ratio(double p)
    {
        // Kept off 0 and 1, where odds have no end.
        var safe = Math.Clamp(p, 1e-12, 1 - 1e-12);
        return safe / (1 - safe);
    }
}
