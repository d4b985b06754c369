using System.Globalization;

namespace Ashery.Recipes;

/// <summary>Figures and typed text as they stand in messages.</summary>
internal static class Say
{
    private const int LongestQuote = 40;

    /// <summary>What was typed, cut short and without signs that a terminal or page would act on.</summary>
    public static string Quoted(string text)
    {
        var shown = text.Length > LongestQuote ? text[..LongestQuote] : text;
        var safe = string.Create(shown.Length, shown, static (span, source) =>
        {
            for (var i = 0; i < span.Length; i++)
            {
                span[i] = IsPlain(source[i]) ? source[i] : '\u00B7';
            }
        });

        return text.Length > LongestQuote ? $"\"{safe}...\"" : $"\"{safe}\"";
    }

    public static string Number(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    public static string Percent(double fraction) =>
        $"{(fraction * 100).ToString("0.##", CultureInfo.InvariantCulture)} %";

    public static string Grams(double grams) => $"{grams.ToString("0.###", CultureInfo.InvariantCulture)} g";

    /// <summary><c>a, b and c</c>.</summary>
    public static string List(IReadOnlyList<string> words) => Joined(words, "and");

    /// <summary><c>a, b or c</c>.</summary>
    public static string Any(IReadOnlyList<string> words) => Joined(words, "or");

    private static string Joined(IReadOnlyList<string> words, string last) => words.Count switch
    {
        0 => string.Empty,
        1 => words[0],
        _ => $"{string.Join(", ", words.Take(words.Count - 1))} {last} {words[^1]}",
    };

    // Controls, escape codes and the signs that turn the reading direction round are not shown.
    private static bool IsPlain(char c) => CharUnicodeInfo.GetUnicodeCategory(c) is not
        (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate
        or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.PrivateUse);
}
