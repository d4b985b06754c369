namespace Ashery.Clinic.Knowledge;

/// <summary>
/// The rows made ready to count with: for every question the odds of each choice under each cause. "Something else" behaves like the average
/// ailing plant, and a part of all answers (noise) does too, so that nothing is ever impossible and what all causes share tells nothing.
/// </summary>
internal sealed class ClinicKnowledge
{
    private static readonly Lazy<ClinicKnowledge> Shared = new(static () => new(ClinicData.Shipped));

    private readonly RowFinder finder;
    private readonly Known?[][] known;
    private readonly double[][] odds;

    public ClinicKnowledge(ClinicData data)
    {
        Data = data;
        Questions = [.. data.Questions];
        Causes = CauseList.Of(data);
        finder = new RowFinder(data);
        Prior = [.. Causes.Select(static c => c.Prior)];
        known = new Known?[Questions.Length][];
        odds = new double[Questions.Length][];
        Groups = GroupsOf(Questions, out var groupOf);
        GroupOf = groupOf;
        for (var q = 0; q < Questions.Length; q++)
        {
            known[q] = Rows(Questions[q]);
            odds[q] = Table(q, known[q]);
        }
    }

    public static ClinicKnowledge Default => Shared.Value;

    public ClinicData Data { get; }

    public QuestionRow[] Questions { get; }

    /// <summary>Single causes, pairs, and last "something else".</summary>
    public Cause[] Causes { get; }

    /// <summary>Before any crop is known; sums to 1.</summary>
    public double[] Prior { get; }

    public int Groups { get; }

    public int[] GroupOf { get; }

    /// <summary>Place of a question, letters great or small; -1 when there is none of this name.</summary>
    public int IndexOf(string questionId) => Array.FindIndex(Questions, q => string.Equals(q.Id, questionId, StringComparison.OrdinalIgnoreCase));

    /// <summary>P(choice | cause), noise counted in: at <c>cause * choices + choice</c>.</summary>
    public double[] Odds(int question) => odds[question];

    /// <summary>The row behind the odds; null where nothing is known.</summary>
    public Known? KnownOf(int question, int cause) => known[question][cause];

    /// <summary>Odds of a question with the rows that hold for these crops put in; the same array when there are none.</summary>
    public double[][] OddsFor(IReadOnlyList<string> groups)
    {
        if (groups.Count == 0)
        {
            return odds;
        }

        double[][]? own = null;
        foreach (var (row, special) in finder.ForCrops(groups, Questions))
        {
            own ??= [.. odds];
            var q = IndexOf(row.Sign);
            var rows = (Known?[])known[q].Clone();
            rows[Array.FindIndex(Causes, c => c.Id == row.Cause)] = special;
            own[q] = Table(q, rows);
        }

        return own ?? odds;
    }

    private static int GroupsOf(QuestionRow[] questions, out int[] groupOf)
    {
        var names = new Dictionary<string, int>(StringComparer.Ordinal);
        groupOf = new int[questions.Length];
        for (var q = 0; q < questions.Length; q++)
        {
            if (!names.TryGetValue(questions[q].Group, out var group))
            {
                names.Add(questions[q].Group, group = names.Count);
            }

            groupOf[q] = group;
        }

        return names.Count;
    }

    private Known?[] Rows(QuestionRow question)
    {
        var rows = new Known?[Causes.Length];
        for (var c = 0; c < Causes.Length; c++)
        {
            rows[c] = finder.Find(Causes[c], question);
        }

        for (var c = 0; c < Causes.Length; c++)
        {
            if (rows[c] is null && Causes[c].Pair is { } pair)
            {
                rows[c] = Together(question, rows[pair.A], rows[pair.B]);
            }
        }

        return rows;
    }

    // Two shortages at once: each shows its signs on a part of the plant; a test that only one of them moves is moved by it alone.
    private Known? Together(QuestionRow question, Known? a, Known? b)
    {
        if (a is null || b is null)
        {
            var one = a ?? b;
            return one is null || question.IsTest ? one : new(Mix(one.Odds, question.Often, Data.Model.PairShare), one.Voices);
        }

        return new(Mix(a.Odds, b.Odds, 0.5), [.. a.Voices, .. b.Voices]);
    }

    private static double[] Mix(double[] a, double[] b, double share)
    {
        var mixed = new double[a.Length];
        for (var i = 0; i < a.Length; i++)
        {
            mixed[i] = (share * a[i]) + ((1 - share) * b[i]);
        }

        return mixed;
    }

    private double[] Table(int q, Known?[] rows)
    {
        var question = Questions[q];
        var n = question.Choices;
        var average = new double[n];
        var total = 0.0;
        for (var c = 0; c < Causes.Length - 1; c++)
        {
            var row = rows[c]?.Odds ?? question.Often;
            total += Causes[c].Prior;
            for (var a = 0; a < n; a++)
            {
                average[a] += Causes[c].Prior * row[a];
            }
        }

        for (var a = 0; a < n; a++)
        {
            average[a] /= total;
        }

        var noise = question.IsTest ? Data.Model.TestNoise : Data.Model.Noise;
        var table = new double[Causes.Length * n];
        for (var c = 0; c < Causes.Length; c++)
        {
            var row = c == Causes.Length - 1 ? average : rows[c]?.Odds ?? question.Often;
            for (var a = 0; a < n; a++)
            {
                table[(c * n) + a] = ((1 - noise) * row[a]) + (noise * average[a]);
            }
        }

        return table;
    }
}
