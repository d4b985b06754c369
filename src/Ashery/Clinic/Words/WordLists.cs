using Ashery.Clinic.Knowledge;
using Ashery.Sources;

namespace Ashery.Clinic.Words;

/// <summary>A phrase of growers and what it stands for.</summary>
/// <param name="Words">Words in a row; a star for any ending.</param>
/// <param name="Question">Place of the question.</param>
/// <param name="Choices">Places of the choices it may mean.</param>
/// <param name="General">True for "anything but none" and for weak words (marked ! and ? in the lists), which a nearer word overrides.</param>
/// <param name="Anywhere">Read in every field.</param>
internal sealed record Phrase(string[] Words, int Question, int[] Choices, bool General, bool Anywhere);

/// <summary>The word lists of <c>data/clinic</c>, longest phrases first.</summary>
internal sealed class WordLists
{
    private static readonly Lazy<WordLists> Shared = new(static () => new(ClinicData.Shipped.Questions));

    private WordLists(IReadOnlyList<QuestionRow> questions)
    {
        Questions = questions;
        var phrases = new List<Phrase>();
        foreach (var rows in DataRows.Read("data/clinic/words.json", row => Of(questions, row.Text("question"), row.Text("choice"), row.Flag("anywhere"), row.Texts("words"))))
        {
            phrases.AddRange(rows);
        }

        // A level (low, normal, high) goes with every question that has such choices and no words of its own for it.
        foreach (var (choice, words) in DataRows.Read("data/clinic/levels.json", static row => Tuple.Create(row.Text("choice"), row.Texts("words"))))
        {
            Levels.Add((choice, Array.ConvertAll(words, static w => w.Split(' '))));
        }

        ByQuestion = new Phrase[questions.Count][];
        for (var q = 0; q < questions.Count; q++)
        {
            var own = phrases.Where(p => p.Question == q).ToList();
            foreach (var (choice, words) in Levels)
            {
                if (questions[q].IndexOf(choice) is var at and >= 0 && !own.Exists(p => p.Choices.Contains(at)))
                {
                    own.AddRange(words.Select(w => new Phrase(w, q, [at], General: false, Anywhere: false)));
                }
            }

            ByQuestion[q] = LongestFirst(own);
        }

        Anywhere = LongestFirst(phrases.Where(static p => p.Anywhere));
        Elements = DataRows.Read("data/clinic/elements.json", static row => Tuple.Create(row.Text("element"), row.Texts("words")));
        Triggers = LongestFirst(DataRows.Read("data/clinic/triggers.json", row => Of(questions, row.Text("question"), row.Texts("words"))).SelectMany(static p => p));
    }

    public static WordLists Default => Shared.Value;

    public IReadOnlyList<QuestionRow> Questions { get; }

    public Phrase[][] ByQuestion { get; }

    public Phrase[] Anywhere { get; }

    /// <summary>Words that say which question a clause is about.</summary>
    public Phrase[] Triggers { get; }

    public List<(string Choice, string[][] Words)> Levels { get; } = [];

    public IReadOnlyList<Tuple<string, string[]>> Elements { get; }

    /// <summary>Does the phrase stand at this place?</summary>
    public static bool Stands(List<string> words, int at, string[] phrase)
    {
        if (at + phrase.Length > words.Count)
        {
            return false;
        }

        for (var i = 0; i < phrase.Length; i++)
        {
            if (!Phrases.Fits(words[at + i], phrase[i]))
            {
                return false;
            }
        }

        return true;
    }

    // Array.Sort is not stable, so the place in the list decides between phrases of a length.
    private static Phrase[] LongestFirst(IEnumerable<Phrase> phrases) => [.. phrases.OrderByDescending(static p => p.Words.Length)];

    private static IReadOnlyList<Phrase> Of(IReadOnlyList<QuestionRow> questions, string question, string choice, bool anywhere, string[] words)
    {
        var q = Place(questions, question);
        var general = choice[0] is '!' or '?';
        var named = (general ? choice[1..] : choice).Split('|').Select(id => questions[q].IndexOf(id)).ToArray();
        if (Array.Exists(named, static i => i < 0))
        {
            throw DataRows.Unknown($"{question} {choice}");
        }

        int[] choices = choice[0] == '!' ? [.. Enumerable.Range(0, questions[q].Choices).Except(named)] : named;
        return [.. words.Select(w => new Phrase(w.Split(' '), q, choices, general, anywhere))];
    }

    private static IReadOnlyList<Phrase> Of(IReadOnlyList<QuestionRow> questions, string question, string[] words)
    {
        var q = Place(questions, question);
        return [.. words.Select(w => new Phrase(w.Split(' '), q, [], General: false, Anywhere: false))];
    }

    private static int Place(IReadOnlyList<QuestionRow> questions, string id)
    {
        for (var q = 0; q < questions.Count; q++)
        {
            if (questions[q].Id == id)
            {
                return q;
            }
        }

        throw DataRows.Unknown(id);
    }
}
