using System.Text;

namespace Ashery.Cards.Drawing;

/// <summary>Makes any text, hostile or broken, harmless in XML and HTML.</summary>
internal static class Safe
{
    /// <summary>Escapes markup; drops what XML 1.0 forbids (control signs, lone surrogates) and what turns the reading direction round.</summary>
    public static string Xml(string text)
    {
        var safe = new StringBuilder(text.Length + 16);
        foreach (var rune in Plain(text).EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '&' => safe.Append("&amp;"),
                '<' => safe.Append("&lt;"),
                '>' => safe.Append("&gt;"),
                '"' => safe.Append("&quot;"),
                '\'' => safe.Append("&#39;"),
                _ => safe.Append(rune.ToString()),
            };
        }

        return safe.ToString();
    }

    /// <summary>One line of printable text: no control signs, no lone surrogates, no direction overrides; tabs and line ends become a space.</summary>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '\t' or '\n' or '\r' or 0x2028 or 0x2029:
                    plain.Append(' ');
                    break;
                case < 32 or (>= 127 and < 160) or 0xFFFD or 0xFFFE or 0xFFFF:
                case >= 0x202A and <= 0x202E:
                case >= 0x2066 and <= 0x2069:
                case 0x200B or 0x2060 or 0xFEFF:
                    break;
                default:
                    plain.Append(rune.ToString());
                    break;
            }
        }

        return plain.ToString();
    }

    /// <summary>Letters, digits and hyphens only.</summary>
    public static string Id(string text) => string.Concat(text.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-'));
}
