using Ashery.Sources;

namespace Ashery.Compatibility;

/// <summary>Sources of a verdict in words: what was read is cited, what was only recalled says so.</summary>
internal static class Citations
{
    public const string NothingFound = "No publication was found that says so.";

    public static string Of(IReadOnlyList<string> sourceIds) => string.Join(" ", sourceIds.Select(One).Distinct(StringComparer.Ordinal));

    private static string One(string id) => id switch
    {
        "chemistry" => "Chemical reasoning; no publication was found on this pair.",
        "growers-practice" => "Common practice, no source.",
        _ => SourceIndex.Default.Find(id) is { } source
            ? source.LookedUp ? $"{source.Citation}." : $"{source.Citation} (recalled, not looked up)."
            : $"Source {id}.",
    };
}
