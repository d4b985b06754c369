using Ashery.Clinic.Knowledge;

namespace Ashery.Clinic.Ranking;

/// <summary>
/// Value of information: how much doubt each question still open would take away on average, H(c) - sum over a of P(a) H(c | a), bits (Lindley 1956),
/// set against the trouble of finding out. The odds of an answer are those under the causes as they stand.
/// </summary>
internal sealed class Looks
{
    // Below this a look is not worth naming.
    private const double LeastGain = 0.02;

    private readonly ClinicKnowledge knowledge;

    // ln of the odds and their spread for every choice of every question, made at first use.
    private readonly (double[] Log, double Spread)[][] choices;

    private Looks(ClinicKnowledge knowledge)
    {
        this.knowledge = knowledge;
        choices = new (double[] Log, double Spread)[knowledge.Questions.Length][];
        for (var q = 0; q < choices.Length; q++)
        {
            choices[q] = Logs(knowledge, knowledge.Odds(q), knowledge.Questions[q].Choices);
        }
    }

    public static Looks Of(ClinicKnowledge knowledge) => new(knowledge);

    /// <summary>Open questions, most worth their trouble first.</summary>
    public List<ClinicLook> Rank(Posterior now, double[][] odds, bool[] closed)
    {
        var looks = new List<ClinicLook>();
        var doubt = now.Doubt;
        var then = new double[now.Odds.Length];
        for (var q = 0; q < closed.Length; q++)
        {
            if (!closed[q] && Look(q, now, odds[q], doubt, then) is { } look)
            {
                looks.Add(look);
            }
        }

        looks.Sort(static (a, b) => b.PerEffort.CompareTo(a.PerEffort) is var order and not 0 ? order : string.CompareOrdinal(a.Question.Id, b.Question.Id));
        return looks;
    }

    private ClinicLook? Look(int q, Posterior now, double[] odds, double doubt, double[] then)
    {
        var question = knowledge.Questions[q];
        var n = question.Choices;
        var logs = ReferenceEquals(odds, knowledge.Odds(q)) ? choices[q] : Logs(knowledge, odds, n);
        var left = 0.0;
        var answers = new ClinicOutlook[n];
        for (var a = 0; a < n; a++)
        {
            var p = 0.0;
            for (var c = 0; c < then.Length; c++)
            {
                p += now.Odds[c] * odds[(c * n) + a];
            }

            now.With(knowledge.GroupOf[q], logs[a].Log, logs[a].Spread, then);
            Posterior.Scale(then);
            left += p * Posterior.Entropy(then);
            var best = Best(then);
            answers[a] = new(question.Public.Choices[a].Id, p, knowledge.Causes[best].Id, then[best]);
        }

        var gain = doubt - left;
        return gain < LeastGain ? null : new(question.Public, gain, gain / (knowledge.Data.Model.Asking + question.Public.Effort), Say(now, answers), answers);
    }

    private string Say(Posterior now, ClinicOutlook[] answers)
    {
        var names = new List<string>();
        foreach (var answer in answers)
        {
            var name = Name(answer.LeadingCauseId);
            if (answer.Probability >= 0.05 && !names.Contains(name))
            {
                names.Add(name);
            }
        }

        return names.Count > 1
            ? "Tells apart: " + string.Join("; ", names) + "."
            : $"Makes {(names.Count == 1 ? names[0] : Name(knowledge.Causes[Best(now.Odds)].Id))} surer or less sure.";
    }

    private string Name(string causeId)
    {
        foreach (var cause in knowledge.Causes)
        {
            if (cause.Id == causeId)
            {
                return cause.Name;
            }
        }

        return causeId;
    }

    private static int Best(double[] odds)
    {
        var best = 0;
        for (var c = 1; c < odds.Length; c++)
        {
            if (odds[c] > odds[best])
            {
                best = c;
            }
        }

        return best;
    }

    private static (double[] Log, double Spread)[] Logs(ClinicKnowledge knowledge, double[] odds, int n)
    {
        var logs = new (double[] Log, double Spread)[n];
        for (var a = 0; a < n; a++)
        {
            var log = new double[knowledge.Causes.Length];
            for (var c = 0; c < log.Length; c++)
            {
                log[c] = Math.Log(odds[(c * n) + a]);
            }

            logs[a] = (log, Evidence.SpreadOf(log, knowledge.Prior));
        }

        return logs;
    }
}
