using System.Globalization;

namespace Ashery.Cli.Frame;

/// <summary>
/// Text from outside as it may stand on a terminal: a name must not move the cursor, change colours, turn the reading
/// direction round or break a line.
/// </summary>
internal static class SafeText
{
    private const int Longest = 60;

    public static string Of(string text)
    {
        var at = 0;
        while (at < text.Length && IsPlain(text[at]))
        {
            at++;
        }

        return at == text.Length ? text : string.Create(text.Length, text, static (span, source) =>
        {
            for (var i = 0; i < span.Length; i++)
            {
                span[i] = IsPlain(source[i]) ? source[i] : '\u00B7';
            }
        });
    }

    /// <summary>What was typed, in quotes and cut short, for a message.</summary>
    public static string Quoted(string text) => text.Length > Longest ? $"'{Of(text[..Longest])}...'" : $"'{Of(text)}'";

    // Surrogates pass: letters outside the first plane are letters too.
    private static bool IsPlain(char c) => c < 0x7f ? c >= ' ' : CharUnicodeInfo.GetUnicodeCategory(c) is not
        (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator
        or UnicodeCategory.ParagraphSeparator or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned);
}
