using Ashery.Clinic.Knowledge;

namespace Ashery.Clinic.Words;

/// <summary>
/// Reads free words: takes the text apart at commas and brackets, finds the longest phrases of the field's own question, then phrases of other
/// questions that are read anywhere. "No" and "without" before a phrase turn it round. What stands in brackets counts less.
/// </summary>
internal sealed class SentenceReader(WordLists lists, double aside)
{
    private static readonly string[] Denials = ["no", "not", "without", "never", "neither", "nor"];

    private static readonly string[] Nothings = ["none", "no", "nothing", "normal", "ok", "okay", "healthy", "fine", "absent"];

    private static readonly string[] Unknowns = ["", "unknown", "don't know", "do not know", "not known", "not measured", "unsure", "n a", "na"];

    /// <summary>True for a dash, a question mark, "not known": no answer.</summary>
    public static bool IsUnknown(string text) => Array.IndexOf(Unknowns, string.Join(' ', Phrases.Split(text))) >= 0;

    /// <summary>What the text says, by place of the question. <paramref name="question"/> is the field's own, or -1 for a field of free notes.</summary>
    public Dictionary<int, double[]> Read(string text, int question)
    {
        var said = new Dictionary<int, SaidWords>();
        var (main, brackets) = Part(text);
        foreach (var clause in Clauses(main))
        {
            Clause(clause, question, 1, said);
        }

        foreach (var clause in Clauses(brackets))
        {
            Clause(clause, question, aside, said);
        }

        var found = new Dictionary<int, double[]>();
        foreach (var (q, words) in said)
        {
            if (words.Weights() is { } weights)
            {
                found.Add(q, weights);
            }
        }

        if (question >= 0 && !found.ContainsKey(question) && lists.Questions[question].None is var none and >= 0
            && SaysNothing(Phrases.Split(main)))
        {
            var weights = new double[lists.Questions[question].Choices];
            weights[none] = 1;
            found[question] = weights;
        }

        return found;
    }

    /// <summary>"Mg and S low, K high": the level of each element, by the questions of a family (leaf, medium, water, feed).</summary>
    public Dictionary<int, double[]> ReadLevels(string text, string family)
    {
        var found = new Dictionary<int, double[]>();
        foreach (var clause in text.Split(',', ';', '.'))
        {
            var words = Phrases.Split(clause);
            var level = Level(words);
            foreach (var (element, names) in lists.Elements)
            {
                if (level is null || !words.Exists(w => Array.IndexOf(names, w) >= 0))
                {
                    continue;
                }

                for (var q = 0; q < lists.Questions.Count; q++)
                {
                    if (lists.Questions[q].Id == $"{family}_{element}" && lists.Questions[q].IndexOf(level) is var choice and >= 0)
                    {
                        found[q] = new double[lists.Questions[q].Choices];
                        found[q][choice] = 1;
                    }
                }
            }
        }

        return found;
    }

    // "None", "none yet", "looks normal", but not "not normal".
    private static bool SaysNothing(List<string> words) =>
        words.Count <= 3 && words.Exists(static w => Array.IndexOf(Nothings, w) >= 0) && !words.Contains("not");

    private string? Level(List<string> words)
    {
        foreach (var (choice, phrases) in lists.Levels)
        {
            for (var at = 0; at < words.Count; at++)
            {
                if (Array.Exists(phrases, p => WordLists.Stands(words, at, p)))
                {
                    return choice;
                }
            }
        }

        return null;
    }

    private static (string Main, string Brackets) Part(string text)
    {
        var (main, brackets) = (new System.Text.StringBuilder(), new System.Text.StringBuilder());
        var depth = 0;
        foreach (var sign in text)
        {
            if (sign is '(' or '[')
            {
                depth++;
                brackets.Append(',');
            }
            else if (sign is ')' or ']')
            {
                depth = Math.Max(0, depth - 1);
            }
            else
            {
                (depth > 0 ? brackets : main).Append(sign);
            }
        }

        return (main.ToString(), brackets.ToString());
    }

    private static string[] Clauses(string text) => text.Split([',', ';', '.'], StringSplitOptions.RemoveEmptyEntries);

    private void Clause(string clause, int question, double weight, Dictionary<int, SaidWords> said)
    {
        var words = Phrases.Split(clause);
        var taken = new bool[words.Count];
        if (question >= 0)
        {
            Find(lists.ByQuestion[question], words, taken, weight, said);
        }
        else
        {
            var marked = new HashSet<int>();
            for (var at = 0; at < words.Count; at++)
            {
                foreach (var trigger in lists.Triggers)
                {
                    if (WordLists.Stands(words, at, trigger.Words) && marked.Add(trigger.Question))
                    {
                        Find(lists.ByQuestion[trigger.Question], words, new bool[words.Count], weight, said);
                    }
                }
            }
        }

        Find(lists.Anywhere, words, taken, weight, said);
    }

    private void Find(Phrase[] phrases, List<string> words, bool[] taken, double weight, Dictionary<int, SaidWords> said)
    {
        foreach (var phrase in phrases)
        {
            for (var at = 0; at < words.Count; at++)
            {
                if (!WordLists.Stands(words, at, phrase.Words) || IsTaken(taken, at, phrase.Words.Length))
                {
                    continue;
                }

                Array.Fill(taken, value: true, at, phrase.Words.Length);
                if (!said.TryGetValue(phrase.Question, out var of))
                {
                    said.Add(phrase.Question, of = new(lists.Questions[phrase.Question].Choices));
                }

                if (IsDenied(words, at))
                {
                    of.Deny(phrase);
                }
                else
                {
                    of.Say(phrase, weight);
                }
            }
        }
    }

    private static bool IsTaken(bool[] taken, int at, int length)
    {
        for (var i = at; i < at + length; i++)
        {
            if (taken[i])
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsDenied(List<string> words, int at)
    {
        for (var i = Math.Max(0, at - 2); i < at; i++)
        {
            if (Array.IndexOf(Denials, words[i]) >= 0)
            {
                return true;
            }
        }

        return false;
    }
}
