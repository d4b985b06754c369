using Ashery.Clinic.Knowledge;

namespace Ashery.Clinic.Cases;

/// <summary>An answer as it was understood, in words.</summary>
internal static class AnswerWords
{
    // From this weight on a choice is named.
    private const double Named = 0.25;

    public static string Of(QuestionRow question, double[] weights)
    {
        var (named, left) = (new List<string>(), new List<string>());
        for (var i = 0; i < weights.Length; i++)
        {
            (weights[i] >= Named ? named : left).Add(question.Public.Choices[i].Words);
        }

        var said = named.Count == 1 || named.Count <= left.Count || left.Count == 0 ? string.Join(" or ", named) : "not " + string.Join(", not ", left);
        return $"{char.ToUpperInvariant(question.Label[0])}{question.Label[1..]}: {said}" is var text && question.Label.StartsWith("pH", StringComparison.Ordinal) ? $"{question.Label}: {said}" : text;
    }
}
