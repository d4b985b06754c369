using Ashery.Clinic;
using Ashery.Clinic.Knowledge;
using Ashery.Clinic.Ranking;
using CsCheck;

namespace Ashery.Tests.Clinic;

/// <summary>What must hold for any case.</summary>
public class ClinicPropertyTests
{
    private static readonly Gen<ClinicAnswer> Answers =
        from q in Gen.Int[0, PlantClinic.Questions.Count - 1]
        from a in Gen.Int[0, 100]
        from b in Gen.Int[0, 100]
        let choices = PlantClinic.Questions[q].Choices
        select ClinicAnswer.Pick(PlantClinic.Questions[q].Id, a % 3 == 0 ? [choices[a % choices.Count].Id, choices[b % choices.Count].Id] : [choices[a % choices.Count].Id]);

    private static readonly Gen<ClinicCase> Visits =
        from answers in Answers.Array[0, 12]
        from crop in Gen.Int[0, 5].Select(static i => (string?)new[] { null, "petunia", "zonal geranium", "seedlings", "tropical hibiscus", "gardenia" }[i])
        select new ClinicCase { CropWords = crop, Answers = answers };

    [Fact]
    public void Probabilities_are_above_nothing_and_add_up_to_one() => Visits.Sample(
        static visit =>
        {
            var report = PlantClinic.Diagnose(visit).Value!;
            Assert.Equal(1, report.Causes.Sum(static c => c.Probability), 1e-9);
            Assert.All(report.Causes, static c => Assert.InRange(c.Probability, double.Epsilon, 1));
            Assert.All(report.NextLooks, static l => Assert.Equal(1, l.Answers.Sum(static a => a.Probability), 1e-6));
        },
        iter: 100);

    [Fact]
    public void The_order_of_answers_never_matters() => (from visit in Visits from seed in Gen.Int select (visit, seed)).Sample(
        static pair =>
        {
            var (visit, seed) = pair;
            var shuffled = visit.Answers.ToArray();
            new Random(seed).Shuffle(shuffled);
            var (one, two) = (PlantClinic.Diagnose(visit).Value!, PlantClinic.Diagnose(visit with { Answers = shuffled }).Value!);
            Assert.Equal(one.Causes.Select(static c => (c.Id, c.Probability)), two.Causes.Select(static c => (c.Id, c.Probability)));
            Assert.Equal(one.NextLooks.Select(static l => (l.Question.Id, l.Gain)), two.NextLooks.Select(static l => (l.Question.Id, l.Gain)));
            Assert.Equal(one.Read.Select(static r => (r.QuestionId, r.Given)), two.Read.Select(static r => (r.QuestionId, r.Given)));
        },
        iter: 100);

    [Fact]
    public void What_is_not_known_changes_nothing() => (from visit in Visits from q in Gen.Int[0, PlantClinic.Questions.Count - 1] select (visit, q)).Sample(
        static pair =>
        {
            var (visit, q) = pair;
            var id = PlantClinic.Questions[q].Id;
            var asked = PlantClinic.Diagnose(visit with { Answers = [.. visit.Answers, ClinicAnswer.DontKnow(id)] }).Value!;
            Assert.Equal(PlantClinic.Diagnose(visit).Value!.Causes.Select(static c => (c.Id, c.Probability)), asked.Causes.Select(static c => (c.Id, c.Probability)));
            Assert.DoesNotContain(asked.NextLooks, l => l.Question.Id == id);
        },
        iter: 60);

    [Fact]
    public void An_answer_that_may_be_anything_changes_nothing() => (from visit in Visits from q in Gen.Int[0, PlantClinic.Questions.Count - 1] select (visit, q)).Sample(
        static pair =>
        {
            var (visit, q) = pair;
            var question = PlantClinic.Questions[q];
            visit = visit with { Answers = [.. visit.Answers.Where(a => a.QuestionId != question.Id)] };
            var all = PlantClinic.Diagnose(visit with { Answers = [.. visit.Answers, ClinicAnswer.Pick(question.Id, [.. question.Choices.Select(static c => c.Id)])] }).Value!;
            Near(PlantClinic.Diagnose(visit).Value!, all);
        },
        iter: 60);

    [Fact]
    public void A_sign_that_all_causes_share_changes_nothing()
    {
        // A question more, in the group of the leaf's colours, that every cause shows alike; something else and noise must follow.
        var shipped = ClinicData.Shipped;
        var model = shipped.Questions.First(static q => q.Id == "tint");
        var shared = model with { Public = model.Public with { Id = "shared_sign" } };
        var data = shipped with { Questions = [.. shipped.Questions, shared], Signs = [.. shipped.Signs, .. shipped.Causes.Select(c => new SignRow(c.Id, "shared_sign", [new("usually", ["purple"])], [new("test", Ashery.Sources.Provenance.FromMemory)], []))] };
        var engine = new ClinicEngine(new ClinicKnowledge(data));
        Visits.Sample(
            visit => Near(engine.Diagnose(visit).Value!, engine.Diagnose(visit with { Answers = [.. visit.Answers, ClinicAnswer.Pick("shared_sign", "purple")] }).Value!),
            iter: 60);
    }

    [Fact]
    public void A_settled_test_never_lowers_the_true_cause_in_expectation()
    {
        // Sum over answers of P(a | c) P(c | a) is never below P(c): P(c) sum P(a|c)²/P(a), at least P(c) by Cauchy and Schwarz. It holds for questions that stand alone in
        // their group, as meters and laboratories do; for correlated looks the weights break it by a little, which the second figure bounds.
        var knowledge = ClinicKnowledge.Default;
        var alone = Enumerable.Range(0, knowledge.Questions.Length).Where(q => knowledge.GroupOf.Count(g => g == knowledge.GroupOf[q]) == 1).ToList();
        Assert.Contains(alone, q => knowledge.Questions[q].Id == "leaf_Mg");
        foreach (var (cause, answers) in new DrawnCases(knowledge, 7).Draw(60))
        {
            var logPrior = Array.ConvertAll(knowledge.Prior, Math.Log);
            var before = Posterior.Of(knowledge, logPrior, answers).Odds[cause];
            foreach (var q in alone.Where(q => answers.TrueForAll(a => a.Question != q)))
            {
                var n = knowledge.Questions[q].Choices;
                var after = 0.0;
                for (var a = 0; a < n; a++)
                {
                    var weights = new double[n];
                    weights[a] = 1;
                    after += knowledge.Odds(q)[(cause * n) + a] * Posterior.Of(knowledge, logPrior, [.. answers, Evidence.Of(knowledge, knowledge.Odds(q), q, weights)]).Odds[cause];
                }

                Assert.True(after >= before - 1e-9, FormattableString.Invariant($"{knowledge.Causes[cause].Id} {knowledge.Questions[q].Id} {before} {after}"));
            }
        }
    }

    [Fact]
    public void The_ranking_is_that_of_plain_enumeration_of_bayes_rule()
    {
        // One answer a group: no weights come in, and the whole of Bayes' rule can be written out.
        var knowledge = ClinicKnowledge.Default;
        string[] questions = ["leaf_age", "chlorosis", "medium_pH", "roots"];
        var picked = questions.Select(id => (Question: knowledge.IndexOf(id), Choice: 1)).ToArray();
        var product = Enumerable.Range(0, knowledge.Causes.Length).Select(c => knowledge.Prior[c] * picked.Aggregate(1.0, (p, a) => p * knowledge.Odds(a.Question)[(c * knowledge.Questions[a.Question].Choices) + a.Choice])).ToArray();
        var engine = ClinicEngine.Default;
        var neutral = engine.PriorFor([], cropKnown: false);
        for (var c = 0; c < product.Length; c++)
        {
            product[c] *= neutral[c] / knowledge.Prior[c];
        }

        var report = engine.Diagnose(new() { Answers = [.. picked.Select(a => ClinicAnswer.Pick(knowledge.Questions[a.Question].Id, knowledge.Questions[a.Question].Public.Choices[a.Choice].Id))] }).Value!;
        foreach (var cause in report.Causes)
        {
            var at = Array.FindIndex(knowledge.Causes, c => c.Id == cause.Id);
            Assert.Equal(product[at] / product.Sum(), cause.Probability, 1e-9);
        }
    }

    private static void Near(ClinicReport one, ClinicReport two)
    {
        var odds = two.Causes.ToDictionary(static c => c.Id, static c => c.Probability);
        Assert.All(one.Causes, c => Assert.Equal(c.Probability, odds[c.Id], 1e-9));
    }
}
