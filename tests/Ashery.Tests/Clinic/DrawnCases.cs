using Ashery.Clinic.Knowledge;
using Ashery.Clinic.Ranking;

namespace Ashery.Tests.Clinic;

/// <summary>
/// Cases drawn from a world that is not quite the clinic's: every likelihood is up to 30 % higher or lower, answers of one group go together beyond what the
/// cause explains (a plant that shows one sign as the book says shows the others so too), some are wrong, most are missing.
/// </summary>
internal sealed class DrawnCases(ClinicKnowledge knowledge, int seed)
{
    // Harsher than what the clinic counts with (noise 0.06 and 0.03, correlation 0.3 only within groups).
    private const double Shift = 0.3, WithinGroup = 0.35, WithinCase = 0.1, Slip = 0.08, MeterSlip = 0.03;

    private readonly Random random = new(seed);

    /// <summary>A cause and the answers of a plant that has it.</summary>
    public IEnumerable<(int Cause, List<Evidence> Answers)> Draw(int count)
    {
        var world = World();
        for (var i = 0; i < count; i++)
        {
            var cause = Pick(knowledge.Prior, random.NextDouble());
            yield return (cause, Answers(world, cause));
        }
    }

    private double[][] World() => [.. Enumerable.Range(0, knowledge.Questions.Length).Select(q =>
    {
        var n = knowledge.Questions[q].Choices;
        var odds = Array.ConvertAll(knowledge.Odds(q), p => p * (1 + (Shift * ((2 * random.NextDouble()) - 1))));
        for (var c = 0; c < knowledge.Causes.Length; c++)
        {
            var sum = odds.AsSpan(c * n, n).ToArray().Sum();
            for (var a = 0; a < n; a++)
            {
                odds[(c * n) + a] /= sum;
            }
        }

        return odds;
    })];

    private List<Evidence> Answers(double[][] world, int cause)
    {
        var answers = new List<Evidence>();
        var plant = Normal();
        var groups = Enumerable.Range(0, knowledge.Groups).Select(_ => Normal()).ToArray();
        for (var q = 0; q < knowledge.Questions.Length; q++)
        {
            var question = knowledge.Questions[q];
            var typical = (Math.Sqrt(WithinCase) * plant) + (Math.Sqrt(WithinGroup) * groups[knowledge.GroupOf[q]]) + (Math.Sqrt(1 - WithinCase - WithinGroup) * Normal());
            var (asked, slip, other) = (random.NextDouble(), random.NextDouble(), random.Next(question.Choices));
            if (asked >= Answered(question.Public.Part))
            {
                continue;
            }

            var n = question.Choices;
            var choice = slip < (question.IsTest ? MeterSlip : Slip) ? other : Place(knowledge.Odds(q), world[q], cause, n, Below(typical));
            var weights = new double[n];
            weights[choice] = 1;
            answers.Add(Evidence.Of(knowledge, knowledge.Odds(q), q, weights));
        }

        return answers;
    }

    // Choices from the most telling of this cause to the least, so that a low draw is a plant as the book says.
    private int Place(double[] book, double[] world, int cause, int n, double u)
    {
        var any = knowledge.Causes.Length - 1;
        var order = Enumerable.Range(0, n).OrderByDescending(a => book[(cause * n) + a] / book[(any * n) + a]).ThenBy(static a => a).ToArray();
        return order[Pick([.. order.Select(a => world[(cause * n) + a])], u)];
    }

    private static double Answered(Ashery.Clinic.ClinicPart part) => part switch
    {
        Ashery.Clinic.ClinicPart.Leaves => 0.55,
        Ashery.Clinic.ClinicPart.Plant => 0.35,
        Ashery.Clinic.ClinicPart.Pot => 0.35,
        Ashery.Clinic.ClinicPart.Before => 0.25,
        Ashery.Clinic.ClinicPart.Meters => 0.2,
        _ => 0.04,
    };

    private static int Pick(double[] odds, double u)
    {
        for (var i = 0; i < odds.Length; i++)
        {
            u -= odds[i];
            if (u < 0)
            {
                return i;
            }
        }

        return odds.Length - 1;
    }

    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    // The normal distribution function, Abramowitz and Stegun (1964) 26.2.17, from memory; error below 1e-7.
    private static double Below(double z)
    {
        var t = 1 / (1 + (0.2316419 * Math.Abs(z)));
        var tail = Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI) * t * (0.319381530 + (t * (-0.356563782 + (t * (1.781477937 + (t * (-1.821255978 + (t * 1.330274429))))))));
        return z > 0 ? 1 - tail : tail;
    }
}
