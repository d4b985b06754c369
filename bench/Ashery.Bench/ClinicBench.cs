using Ashery.Clinic;
using Ashery.Clinic.Knowledge;
using Ashery.Clinic.Ranking;

namespace Ashery.Bench;

/// <summary>A visit to the clinic: all causes ranked, with reasons and the worth of every open question, against a general network solver that is asked the same.</summary>
internal static class ClinicBench
{
    public static void Run()
    {
        var knowledge = ClinicKnowledge.Default;
        Table.Head(
            FormattableString.Invariant($"A visit: {knowledge.Causes.Length} causes, {knowledge.Questions.Length} questions, ms"),
            "answers", "whole visit: causes, reasons, next looks", "ranking and looks alone", "variable elimination", "ratio", "largest difference of odds", "of a gain, bits");
        foreach (var count in new[] { 1, 4, 8 })
        {
            Visit(knowledge, count);
        }
    }

    private static void Visit(ClinicKnowledge knowledge, int count)
    {
        // One answer a group, so that both count the same thing: answers of a group are weighed by the library, and taken for independent by the network.
        var picked = knowledge.Questions.Select((q, i) => (Question: i, Choice: (i * 7) % q.Choices)).DistinctBy(p => knowledge.GroupOf[p.Question]).Take(count).ToList();
        var visit = new ClinicCase { Answers = [.. picked.Select(p => ClinicAnswer.Pick(knowledge.Questions[p.Question].Id, knowledge.Questions[p.Question].Public.Choices[p.Choice].Id))] };
        var whole = Timing.Median(() => PlantClinic.Diagnose(visit), 1500);

        var prior = ClinicEngine.Default.PriorFor([], cropKnown: false);
        var logPrior = Array.ConvertAll(prior, Math.Log);
        var odds = knowledge.OddsFor([]);
        var looks = Looks.Of(knowledge);
        var closed = new bool[knowledge.Questions.Length];
        picked.ForEach(p => closed[p.Question] = true);
        (Posterior Posterior, List<ClinicLook> Looks) Ours()
        {
            var evidence = picked.ConvertAll(p => Evidence.Of(knowledge, odds[p.Question], p.Question, [.. Enumerable.Range(0, knowledge.Questions[p.Question].Choices).Select(a => a == p.Choice ? 1.0 : 0)]));
            var posterior = Posterior.Of(knowledge, logPrior, evidence);
            return (posterior, looks.Rank(posterior, odds, closed));
        }

        var ours = Timing.Median(() => Ours(), 1500);
        var (network, given) = Network(knowledge, prior, picked);

        // Seconds long: once is enough.
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var (theirs, gains) = (network.Query(0, given), network.Gains(0, given));
        var plain = clock.Elapsed.TotalMilliseconds;
        var (mine, ranked) = Ours();
        var open = ranked.Where(l => picked.TrueForAll(p => knowledge.GroupOf[p.Question] != knowledge.GroupOf[knowledge.IndexOf(l.Question.Id)]));
        Table.Row(
            Table.Whole(count), Table.Figure(whole), Table.Figure(ours), Table.Figure(plain), Table.Times(plain / ours),
            mine.Odds.Zip(theirs).Max(static p => Math.Abs(p.First - p.Second)).ToString("0.0E0", System.Globalization.CultureInfo.InvariantCulture),
            open.Max(l => Math.Abs(l.Gain - gains[knowledge.IndexOf(l.Question.Id) + 1])).ToString("0.0E0", System.Globalization.CultureInfo.InvariantCulture));
    }

    // Variable 0 is the cause; question q is variable q + 1.
    private static (PlainNetwork Network, Dictionary<int, int> Given) Network(ClinicKnowledge knowledge, double[] prior, List<(int Question, int Choice)> picked)
    {
        int[] states = [prior.Length, .. knowledge.Questions.Select(static q => q.Choices)];
        List<PlainFactor> factors = [new([0], [prior.Length], prior)];
        for (var q = 0; q < knowledge.Questions.Length; q++)
        {
            factors.Add(new([0, q + 1], [prior.Length, states[q + 1]], knowledge.Odds(q)));
        }

        return (new(states, factors), picked.ToDictionary(static p => p.Question + 1, static p => p.Choice));
    }
}
