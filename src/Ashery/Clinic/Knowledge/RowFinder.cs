using Ashery.Sources;

namespace Ashery.Clinic.Knowledge;

/// <summary>What is known of one cause at one question, and who says so.</summary>
internal sealed record Known(double[] Odds, Voice[] Voices);

/// <summary>
/// Finds the row for a cause at a question: its own, else that of tests by element, of antagonists, of lock-out, of mobility, of its kind.
/// Words become odds here: P(choice | cause) is the grade of the word, what is left goes to the other choices as they are met anyway.
/// </summary>
internal sealed class RowFinder(ClinicData data)
{
    // The most that named choices may take, so that no choice is ever impossible.
    private const double MostNamed = 0.97;

    private readonly Dictionary<(string Cause, string Sign), SignRow> own = Index(data.Signs);

    public Known? Find(Cause cause, QuestionRow question)
    {
        if (own.TryGetValue((cause.Id, question.Id), out var row))
        {
            return Make(question, row.Said, row.Voices);
        }

        if (cause.Row is not { } single)
        {
            return null;
        }

        return Family(single, question) ?? Antagonist(single, question) ?? Lock(single, question) ?? Mobility(single, question)
            ?? (own.TryGetValue(("*" + CauseWords.Of(single.Kind), question.Id), out var kind) ? Make(question, kind.Said, kind.Voices) : null);
    }

    /// <summary>Rows that hold only for some crops.</summary>
    public IEnumerable<(SignRow Row, Known Known)> ForCrops(IReadOnlyList<string> groups, IReadOnlyList<QuestionRow> questions)
    {
        foreach (var row in data.Signs)
        {
            if (row.Crops.Length > 0 && row.Crops.Any(groups.Contains))
            {
                yield return (row, Make(questions.First(q => q.Id == row.Sign), row.Said, row.Voices));
            }
        }
    }

    private static Dictionary<(string Cause, string Sign), SignRow> Index(IReadOnlyList<SignRow> rows)
    {
        var index = new Dictionary<(string Cause, string Sign), SignRow>(rows.Count);
        foreach (var row in rows)
        {
            if (row.Crops.Length == 0)
            {
                index.Add((row.Cause, row.Sign), row);
            }
        }

        return index;
    }

    private Known? Family(CauseRow cause, QuestionRow question)
    {
        if (cause.Element is not { } element || !question.Id.EndsWith("_" + element, StringComparison.Ordinal))
        {
            return null;
        }

        foreach (var row in data.Families)
        {
            if (row.Kind == cause.Kind && question.Id.Length == row.Family.Length + 1 + element.Length && question.Id.StartsWith(row.Family, StringComparison.Ordinal))
            {
                return Make(question, row.Said, row.Voices);
            }
        }

        return null;
    }

    // A high figure of the one is met sometimes where the other is short.
    private Known? Antagonist(CauseRow cause, QuestionRow question)
    {
        if (cause is not { Kind: CauseKind.Shortage, Element: { } element } || question.Public.Part != ClinicPart.Laboratory)
        {
            return null;
        }

        foreach (var row in data.Antagonists)
        {
            if (question.Id == "medium_" + row.Excess && row.Shortages.Contains(element))
            {
                return Make(question, [new("often", ["high"])], row.Voices);
            }
        }

        return null;
    }

    private Known? Lock(CauseRow cause, QuestionRow question)
    {
        if (question.Id != "medium_pH" || cause.Element is not { } element)
        {
            return null;
        }

        foreach (var row in data.Locks)
        {
            if ((cause.Kind == CauseKind.Shortage ? row.Less : row.More).Contains(element))
            {
                return Make(question, [new("often", row.Choices)], row.Voices);
            }
        }

        return null;
    }

    private Known? Mobility(CauseRow cause, QuestionRow question)
    {
        if (question.Id != "leaf_age" || cause is not { Kind: CauseKind.Shortage, Element: { } element })
        {
            return null;
        }

        foreach (var row in data.Mobilities)
        {
            if (row.Element == element)
            {
                return Make(question, [new("usually", [row.LeafAge])], row.Voices);
            }
        }

        return null;
    }

    private Known Make(QuestionRow question, Said[] said, Voice[] voices)
    {
        var odds = new double[question.Choices];
        var named = new bool[question.Choices];
        foreach (var (grade, choices) in said)
        {
            var value = data.Model.Grades[grade];
            var among = 0.0;
            foreach (var choice in choices)
            {
                among += question.Often[Place(question, choice)];
            }

            foreach (var choice in choices)
            {
                var i = Place(question, choice);
                odds[i] += value * question.Often[i] / among;
                named[i] = true;
            }
        }

        var sum = odds.Sum();
        if (sum > MostNamed)
        {
            for (var i = 0; i < odds.Length; i++)
            {
                odds[i] *= MostNamed / sum;
            }

            sum = MostNamed;
        }

        var rest = 0.0;
        for (var i = 0; i < odds.Length; i++)
        {
            rest += named[i] ? 0 : question.Often[i];
        }

        for (var i = 0; i < odds.Length; i++)
        {
            odds[i] = rest > 0 ? odds[i] + (named[i] ? 0 : (1 - sum) * question.Often[i] / rest) : odds[i] / sum;
        }

        return new(odds, voices);
    }

    private static int Place(QuestionRow question, string choice) =>
        question.IndexOf(choice) is var i and >= 0 ? i : throw DataRows.Unknown($"{question.Id} {choice}");
}
