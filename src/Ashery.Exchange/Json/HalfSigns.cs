using System.Globalization;
using Ashery.Problems;

namespace Ashery.Exchange.Json;

/// <summary>Finds signs written by halves (<c>"\ud800"</c> alone): JSON by its grammar, but no text, so that reading it as one would throw.</summary>
internal static class HalfSigns
{
    /// <summary>The problem, with the line it stands on; null when every sign is whole.</summary>
    public static Problem? In(string text, string field)
    {
        var line = 1;
        for (var i = 0; i < text.Length; i++)
        {
            line += text[i] == '\n' ? 1 : 0;
            var (unit, length) = At(text, i);
            if (char.IsSurrogate(unit))
            {
                var (next, more) = At(text, i + length);
                if (!char.IsSurrogatePair(unit, next))
                {
                    return new(
                        string.Create(CultureInfo.InvariantCulture, $"{field}, line {line}"),
                        "Half a sign stands here (an escape from \\ud800 to \\udfff without its other half).",
                        "Write the sign itself, or leave it out.");
                }

                length += more;
            }

            i += length - 1;
        }

        return null;
    }

    // The sign or escape at a place, and how long it is written.
    private static (char Unit, int Length) At(string text, int i) =>
        i >= text.Length ? ('\0', 1)
        : text[i] != '\\' || i + 1 >= text.Length ? (text[i], 1)
        : text[i + 1] == 'u' && i + 5 < text.Length && ushort.TryParse(text.AsSpan(i + 2, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var unit) ? ((char)unit, 6)
        : ('\0', 2);
}
