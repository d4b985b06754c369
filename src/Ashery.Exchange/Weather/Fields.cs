using System.Globalization;

namespace Ashery.Exchange.Weather;

/// <summary>Cutting a line at its separators and reading figures from the pieces, without allocating.</summary>
internal static class Fields
{
    /// <summary>Cuts a line; returns the number of pieces, at most as many as fit.</summary>
    public static int Cut(ReadOnlySpan<char> line, char separator, Span<Range> pieces)
    {
        var (count, start) = (0, 0);
        while (count < pieces.Length)
        {
            var at = line[start..].IndexOf(separator);
            if (at < 0)
            {
                pieces[count++] = start..line.Length;
                return count;
            }

            pieces[count++] = start..(start + at);
            start += at + 1;
        }

        return count;
    }

    /// <summary>A plain number, with a point for decimals.</summary>
    public static bool Number(ReadOnlySpan<char> text, out double value)
    {
        value = double.NaN;
        return text.Length is > 0 and <= 40
            && double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out value)
            && double.IsFinite(value);
    }

    /// <summary>A whole number.</summary>
    public static bool Whole(ReadOnlySpan<char> text, out int value) =>
        int.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out value);
}
