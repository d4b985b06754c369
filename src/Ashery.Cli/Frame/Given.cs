using System.CommandLine;
using System.Globalization;
using Ashery.Problems;

namespace Ashery.Cli.Frame;

/// <summary>The words that were given to a verb, and the problems met while reading them.</summary>
internal sealed class Given(ParseResult parse)
{
    private readonly List<Problem> problems = [];

    public IReadOnlyList<Problem> Problems => problems;

    public bool Wrong => problems.Count > 0;

    public bool Has(Option<bool> flag) => parse.GetResult(flag) is { Implicit: false } && parse.GetValue(flag);

    public bool Has(ValueOption option) => parse.GetResult(option) is { Implicit: false };

    /// <summary>The single value; null when the option was not given or something is wrong with it.</summary>
    public string? Text(ValueOption option)
    {
        if (parse.GetResult(option) is not { Implicit: false } result)
        {
            return null;
        }

        if (result.IdentifierTokenCount > 1)
        {
            Add(new Problem(Field(option), $"{option.Name} is given {Count(result.IdentifierTokenCount)}.", $"Give {option.Name} once."));
            return null;
        }

        if (result.Tokens.Count == 0 || string.IsNullOrWhiteSpace(result.Tokens[0].Value))
        {
            Add(Missing(option));
            return null;
        }

        return result.Tokens[0].Value;
    }

    /// <summary>All values of an option that may be repeated, in order.</summary>
    public IReadOnlyList<string> Texts(ValueOption option)
    {
        if (parse.GetResult(option) is not { Implicit: false } result)
        {
            return [];
        }

        if (result.Tokens.Count < result.IdentifierTokenCount || result.Tokens.Any(static t => string.IsNullOrWhiteSpace(t.Value)))
        {
            Add(Missing(option));
            return [];
        }

        return [.. result.Tokens.Select(static t => t.Value)];
    }

    /// <summary>The words without a name before them.</summary>
    public IReadOnlyList<string> Texts(Argument<string[]> argument) =>
        parse.GetResult(argument) is { } result ? [.. result.Tokens.Select(static t => t.Value)] : [];

    /// <summary>A whole number within limits.</summary>
    public int Whole(ValueOption option, int usual, int least, int most)
    {
        if (Text(option) is not { } text)
        {
            return usual;
        }

        if (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) && value >= least && value <= most)
        {
            return value;
        }

        Add(new Problem(
            Field(option),
            string.Create(CultureInfo.InvariantCulture, $"{SafeText.Quoted(text)} is not a whole number from {least} to {most}."),
            string.Create(CultureInfo.InvariantCulture, $"For example {option.Name} {usual}.")));
        return usual;
    }

    /// <summary>One of a few words; null when not given or wrong.</summary>
    public string? Word(ValueOption option, IReadOnlyList<string> known)
    {
        if (Text(option) is not { } text)
        {
            return null;
        }

        if (known.Contains(text, StringComparer.Ordinal))
        {
            return text;
        }

        var nearest = WrongWords.Meant(text, known);
        Add(new Problem(
            Field(option),
            $"{SafeText.Quoted(text)} is not one of {string.Join(", ", known)}.",
            nearest is null ? $"For example {option.Name} {known[0]}." : $"Did you mean {option.Name} {nearest}?"));
        return null;
    }

    /// <summary>The value of a result, or null with its problems kept.</summary>
    public T? Take<T>(Result<T> result)
        where T : class
    {
        if (!result.Ok)
        {
            problems.AddRange(result.Problems);
        }

        return result.Value;
    }

    public void Add(Problem problem) => problems.Add(problem);

    public void AddRange(IEnumerable<Problem> more) => problems.AddRange(more);

    public static string Field(ValueOption option) => option.Name[2..];

    private static Problem Missing(ValueOption option) =>
        new(Field(option), $"{option.Name} has no value.", $"Write {option.Name} {option.HelpName}; --help shows examples.");

    private static string Count(int times) => times == 2 ? "twice" : string.Create(CultureInfo.InvariantCulture, $"{times} times");
}
