using System.Globalization;
using Ashery.Clinic.Knowledge;
using Ashery.Clinic.Tests;
using Ashery.Clinic.Words;
using Ashery.Crops;
using Ashery.Problems;

namespace Ashery.Clinic.Cases;

/// <summary>Reads the answers of a case: choices, figures and words, each to the choices it may be.</summary>
internal sealed class CaseReader(ClinicKnowledge knowledge, ClinicCase visit, Crop? crop)
{
    /// <summary>Longest text of one answer that is read.</summary>
    public const int LongestWords = 600;

    private readonly SentenceReader sentences = new(WordLists.Default, knowledge.Data.Model.Aside);
    private readonly Dictionary<int, List<CaseAnswer>> direct = [];
    private readonly Dictionary<int, List<CaseAnswer>> byTheWay = [];
    private double factor = 1;

    public List<Problem> Wrong { get; } = [];

    public List<Problem> Notes { get; } = [.. visit.Notes];

    public List<TestFinding> Tests { get; } = [];

    /// <summary>Questions that were asked and not known.</summary>
    public HashSet<int> NotKnown { get; } = [];

    /// <summary>Answers in the order of the questions.</summary>
    public IReadOnlyList<CaseAnswer> Read()
    {
        if (Scales.ToExtract(visit.MediumMethod) is { } known)
        {
            factor = known;
        }
        else
        {
            Wrong.Add(new("ec_method", $"\"{Short(visit.MediumMethod!)}\" is no known way to extract a medium.", $"Write one of {string.Join(", ", Scales.MethodNames)}."));
        }

        foreach (var answer in visit.Answers)
        {
            One(answer);
        }

        foreach (var (q, said) in byTheWay)
        {
            direct.TryAdd(q, said);
        }

        foreach (var answer in HistoryReader.Read(knowledge, visit.History, crop))
        {
            direct.TryAdd(answer.Question, [answer]);
        }

        NotKnown.ExceptWith(direct.Keys);
        return [.. direct.Values.Select(CaseAnswer.Together).OrderBy(static a => a.Question)];
    }

    private void One(ClinicAnswer answer)
    {
        var field = knowledge.IndexOf(answer.QuestionId) >= 0 ? null : Field.Find(answer.QuestionId);
        var q = knowledge.IndexOf(field?.Question ?? answer.QuestionId);
        if (answer.NotKnown || (answer.Words is { } words && SentenceReader.IsUnknown(words)))
        {
            if (q >= 0)
            {
                NotKnown.Add(q);
            }
        }
        else if (answer.Picked.Count > 0)
        {
            Picked(answer, q);
        }
        else if (answer.Number is { } number)
        {
            Number(answer.QuestionId, q, number);
        }
        else if (answer.Words is { } text)
        {
            Told(answer.QuestionId, field, q, text);
        }
        else if (q >= 0)
        {
            NotKnown.Add(q);
        }
    }

    private void Picked(ClinicAnswer answer, int q)
    {
        if (q < 0)
        {
            Wrong.Add(new(Short(answer.QuestionId), "The clinic has no such question.", "Take the keys of its list of questions."));
            return;
        }

        var question = knowledge.Questions[q];
        var weights = new double[question.Choices];
        foreach (var id in answer.Picked)
        {
            if (question.IndexOf(id) is var at and >= 0)
            {
                weights[at] = 1;
            }
            else
            {
                Wrong.Add(new(question.Id, $"\"{Short(id)}\" is not one of its answers.", $"Take one of {string.Join(", ", question.Public.Choices.Select(static c => c.Id))}."));
                return;
            }
        }

        Put(direct, new(q, weights, string.Join(", ", answer.Picked)));
    }

    private void Number(string name, int q, double number)
    {
        if (q < 0 || knowledge.Questions[q].Public.Unit is null)
        {
            Notes.Add(new(Short(name), "The clinic has no figure of this name; it counts for nothing.", "Look at the list of fields in docs/clinic-file.md.", Severity.Warning));
            return;
        }

        var question = knowledge.Questions[q];
        if (!Within(question, number))
        {
            return;
        }

        var times = Scales.IsExtract(question.Id) ? factor : 1;
        Put(direct, new(q, Fitted(question, new(number * times, number * times)), string.Create(CultureInfo.InvariantCulture, $"{number:0.####} {question.Public.Unit}").TrimEnd()));
        if (TestFinding.Of(question, number, times, crop) is { } finding)
        {
            Tests.Add(finding);
        }
    }

    private void Told(string name, Field? field, int q, string text)
    {
        if (text.Length > LongestWords)
        {
            Wrong.Add(new(Short(name), $"The text has {text.Length} signs; {LongestWords} is the limit.", "Keep to what is seen, in a few words."));
            return;
        }

        if (q >= 0 && knowledge.Questions[q].Public.Unit is not null && NumberWords.Read(text) is { } figure)
        {
            ToldNumber(q, figure, text);
            return;
        }

        var found = field?.Levels is { } family ? sentences.ReadLevels(text, family) : sentences.Read(text, q);
        if (found.Count == 0 || (q >= 0 && field?.Levels is null && !found.ContainsKey(q)))
        {
            Notes.Add(new(Short(name), $"\"{Short(text)}\" was not understood{(found.Count == 0 ? " and counts for nothing" : " here, only what it says of other things")}.", "Use plain words, such as: older leaves; yellow between the veins; brown edges.", Severity.Warning));
        }
        else if (q < 0 && field is null)
        {
            Notes.Add(new(Short(name), "There is no field of this name; its words were read as notes.", "The fields are told in docs/clinic-file.md.", Severity.Note));
        }

        foreach (var (at, weights) in found)
        {
            // Words of another question in this field give way to that question's own field.
            Put(at == q || field?.Levels is not null ? direct : byTheWay, new(at, weights, text.Trim()));
        }
    }

    private void ToldNumber(int q, NumberWords figure, string text)
    {
        var question = knowledge.Questions[q];
        if ((double.IsFinite(figure.Low) && !Within(question, figure.Low)) || (double.IsFinite(figure.High) && !Within(question, figure.High)))
        {
            return;
        }

        var times = Scales.IsExtract(question.Id) ? factor : 1;
        Put(direct, new(q, Fitted(question, new(figure.Low * times, figure.High * times)), text.Trim()));
        if (figure.IsOne && TestFinding.Of(question, figure.Low, times, crop) is { } finding)
        {
            Tests.Add(finding);
        }
    }

    private bool Within(QuestionRow question, double number)
    {
        if (double.IsFinite(number) && (question.Public.Limits is not { } limits || (number >= limits.Low && number <= limits.High)))
        {
            return true;
        }

        var (low, high) = question.Public.Limits ?? (0, 0);
        Wrong.Add(new(
            question.Id, string.Create(CultureInfo.InvariantCulture, $"{number:0.###} cannot be: {question.Label} lies between {low:0.###} and {high:0.###} {question.Public.Unit}").TrimEnd() + ".",
            $"Give {question.Label}{(question.Public.Unit is { Length: > 0 } unit ? $" in {unit}" : string.Empty)}."));
        return false;
    }

    // The scale's choices in the order of the question's.
    private double[] Fitted(QuestionRow question, NumberWords figure)
    {
        var weights = new double[question.Choices];
        if (Scales.Of(question.Id, crop) is { } scale)
        {
            var fit = scale.Fit(figure);
            for (var i = 0; i < fit.Length; i++)
            {
                weights[question.IndexOf(scale.Choices[i])] = fit[i];
            }
        }

        return weights;
    }

    private static void Put(Dictionary<int, List<CaseAnswer>> into, CaseAnswer answer)
    {
        if (!into.TryGetValue(answer.Question, out var said))
        {
            into.Add(answer.Question, said = []);
        }

        said.Add(answer);
    }

    internal static string Short(string text) => text.Length > 60 ? text[..60] + "…" : text;
}
