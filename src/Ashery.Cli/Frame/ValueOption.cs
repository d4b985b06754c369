using System.CommandLine;
using System.CommandLine.Completions;

namespace Ashery.Cli.Frame;

/// <summary>
/// An option that takes a value. It accepts any number of values as they stand: counting and reading them is
/// <see cref="Given"/>'s, so that every message is ours and names the way out.
/// </summary>
internal sealed class ValueOption : Option<string[]>
{
    public ValueOption(string name, string hint, string description)
        : base(name)
    {
        HelpName = hint;
        Description = description;
        Arity = new ArgumentArity(0, 10_000);
    }

    /// <summary>May be given several times.</summary>
    public bool Repeatable { get; init; }

    /// <summary>One word is completed from these; after a comma the next one.</summary>
    public Func<IEnumerable<string>>? Words
    {
        init
        {
            if (value is { } words)
            {
                CompletionSources.Add(context => CompleteList(context, words()));
            }
        }
    }

    internal static IEnumerable<CompletionItem> CompleteList(CompletionContext context, IEnumerable<string> words)
    {
        var typed = context.WordToComplete;
        var before = typed[..(typed.LastIndexOf(',') + 1)];
        return words.Select(word => before + word)
            .Where(whole => whole.StartsWith(typed, StringComparison.OrdinalIgnoreCase))
            .Select(static whole => new CompletionItem(whole));
    }
}
