using System.CommandLine;
using Ashery.Materials;
using Ashery.Problems;

namespace Ashery.Cli.Frame;

/// <summary>Words that no verb or option takes, with what was probably meant.</summary>
internal static class WrongWords
{
    public static IReadOnlyList<Problem> In(ParseResult parse, Verb? verb, IReadOnlyList<Verb> verbs)
    {
        var problems = new List<Problem>();
        foreach (var word in parse.UnmatchedTokens)
        {
            problems.Add(verb is null ? Verb(word, verbs) : Word(word, verb));
            if (verb is null)
            {
                break;
            }
        }

        // An argument would take a misspelt option for its value.
        foreach (var token in verb?.Command.Arguments.SelectMany(a => parse.GetResult(a)?.Tokens ?? []) ?? [])
        {
            if (token.Value.StartsWith('-'))
            {
                problems.Add(Word(token.Value, verb!));
            }
        }

        if (problems.Count == 0 && verb is null)
        {
            problems.Add(new Problem("verb", "No verb is given.", $"Write one of {string.Join(", ", verbs.Select(static v => v.Name))}."));
        }

        // Whatever else the parser found, in its own words.
        if (problems.Count == 0)
        {
            problems.AddRange(parse.Errors.Select(static e => new Problem("command line", SafeText.Of(e.Message), "Compare with the examples of the help.")));
        }

        return problems;
    }

    /// <summary>The known word that a misspelt one was meant to be; null when nothing is near.</summary>
    public static string? Meant(string word, IEnumerable<string> known) =>
        NearestName.Find(word, known.Select(static k => (k, k)), count: 1) is [var nearest] ? nearest : null;

    private static Problem Verb(string word, IReadOnlyList<Verb> verbs)
    {
        if (word.StartsWith('-'))
        {
            return new Problem("verb", $"{SafeText.Quoted(word)} stands before any verb.", "Write the verb first, for example: ashery materials --json.");
        }

        var nearest = Meant(word, verbs.Select(static v => v.Name));
        return new Problem(
            "verb",
            $"{SafeText.Quoted(word)} is not a verb of ashery.",
            nearest is null ? $"Write one of {string.Join(", ", verbs.Select(static v => v.Name))}." : $"Did you mean ashery {nearest}?");
    }

    private static Problem Word(string word, Verb verb)
    {
        if (!word.StartsWith('-'))
        {
            return new Problem(
                "command line", $"{SafeText.Quoted(word)} belongs to no option.", "Put a value with blanks into quotes, and check the option before it.");
        }

        var name = word.Split('=', 2)[0];
        var nearest = Meant(name, verb.Command.Options.Select(static o => o.Name));
        return new Problem(
            "option",
            $"{SafeText.Quoted(name)} is not an option of ashery {verb.Name}.",
            nearest is null ? $"ashery {verb.Name} --help lists them." : $"Did you mean {nearest}?");
    }
}
