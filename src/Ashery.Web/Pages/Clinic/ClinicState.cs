using System.Globalization;
using Ashery.Clinic;
using Ashery.Problems;
using Ashery.Web.Forms;

namespace Ashery.Web.Pages.Clinic;

/// <summary>
/// A visit as the address of its page: which pot or crop, and every answer. Tapping an answer is a link to another such address, so that the
/// browser's Back takes an answer back and nothing is kept on the way.
/// </summary>
public sealed class ClinicState
{
    /// <summary>Fields of the address.</summary>
    public const string Pick = "a", Figure = "n", Unknown = "x", Told = "w";

    // Words are read for every sign they name, whichever field they stand in.
    private const string AnyField = "leaves";
    private const int MostAnswers = 200;

    private readonly Draft asked;
    private readonly Dictionary<string, ClinicAnswer> answers = new(StringComparer.Ordinal);

    public ClinicState(Draft asked)
    {
        this.asked = asked;
        foreach (var text in asked.All(Pick).Take(MostAnswers))
        {
            Add(text, (question, answer) => ClinicAnswer.Pick(question, answer));
        }

        foreach (var question in asked.All(Unknown).Take(MostAnswers).Where(static q => q.Length > 0))
        {
            answers[question] = ClinicAnswer.DontKnow(question);
        }

        foreach (var question in PlantClinic.Questions.Where(q => asked.Has(FigureOf(q.Id))))
        {
            Measure(question);
        }

        if (asked.Has(Told))
        {
            answers[Told] = ClinicAnswer.Tell(Told, asked[Told]);
        }
    }

    public IReadOnlyList<Problem> Problems { get; private set; } = [];

    public string Pot => asked["pot"];

    public string Crop => asked["crop"];

    public bool IsEmpty => answers.Count == 0;

    /// <summary>Questions answered, also with "I don't know".</summary>
    public IReadOnlyDictionary<string, ClinicAnswer> Answers => answers;

    public static string FigureOf(string question) => $"{Figure}-{question}";

    public bool Is(string question, string choice) => answers.TryGetValue(question, out var answer) && answer.Picked.Contains(choice);

    public bool IsUnknown(string question) => answers.TryGetValue(question, out var answer) && answer.NotKnown;

    /// <summary>The address with an answer picked, or taken back when it was the one.</summary>
    public string With(string question, string choice) => Address(Is(question, choice) ? null : $"{question}:{choice}", question, null);

    /// <summary>The address with "I don't know", or with that taken back.</summary>
    public string WithUnknown(string question) => Address(null, question, IsUnknown(question) ? null : question);

    /// <summary>The address without an answer to a question.</summary>
    public string Without(string question) => Address(null, question, null);

    /// <summary>What a form beside the answers has to send along.</summary>
    public IEnumerable<(string Name, string Value)> Along(params IReadOnlyList<string> without)
    {
        foreach (var name in new[] { "pot", "crop", Pick, Unknown, Told }.Concat(PlantClinic.Questions.Select(static q => FigureOf(q.Id))))
        {
            foreach (var value in without.Contains(name) ? [] : asked.All(name).Where(static v => v.Length > 0))
            {
                yield return (name, value);
            }
        }
    }

    public string Query => asked.ToQuery("saved");

    public ClinicCase ToCase(string? cropId, PotHistory? history) => new()
    {
        CropId = cropId,
        Answers = [.. answers.Values.Select(static a => a.QuestionId == Told ? ClinicAnswer.Tell(AnyField, a.Words!) : a)],
        History = history,
    };

    private void Add(string text, Func<string, string, ClinicAnswer> make)
    {
        if (text.Split(':') is [{ Length: > 0 } question, { Length: > 0 } answer])
        {
            answers[question] = make(question, answer);
        }
    }

    private void Measure(ClinicQuestion question)
    {
        var text = asked[FigureOf(question.Id)];
        if (double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var figure) && double.IsFinite(figure))
        {
            answers[question.Id] = ClinicAnswer.Measure(question.Id, figure);
        }
        else
        {
            Problems = [.. Problems, new(question.Label, $"'{text}' is not a figure.", "Write it as 5.8, without the unit.")];
        }
    }

    private string Address(string? pick, string question, string? unknown)
    {
        List<string> picks = [.. asked.All(Pick).Where(t => !t.StartsWith(question + ":", StringComparison.Ordinal))];
        List<string> unknowns = [.. asked.All(Unknown).Where(t => t != question)];
        if (pick is not null)
        {
            picks.Add(pick);
        }

        if (unknown is not null)
        {
            unknowns.Add(unknown);
        }

        return "/clinic" + asked.Set(FigureOf(question), (IReadOnlyList<string>?)null).Set(Pick, picks).Set(Unknown, unknowns).ToQuery("saved");
    }
}
