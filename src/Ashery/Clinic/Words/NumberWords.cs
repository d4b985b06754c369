using System.Globalization;

namespace Ashery.Clinic.Words;

/// <summary>A figure as growers write it: "5.5", "below 5.5", "above 6.2-6.4", "5 to 6".</summary>
internal readonly record struct NumberWords(double Low, double High)
{
    private static readonly string[] Above = ["above", "over", "more", "greater", "least", "exceeds", "exceeding", ">"];

    private static readonly string[] Below = ["below", "under", "less", "most", "<", "beneath"];

    /// <summary>One figure: both ends are the same.</summary>
    public bool IsOne => Low == High;

    /// <summary>Null when there is no figure in the text.</summary>
    public static NumberWords? Read(string text)
    {
        var numbers = new List<double>();
        var (above, below) = (false, false);
        var i = 0;
        while (i < text.Length && numbers.Count < 2)
        {
            if (char.IsAsciiDigit(text[i]))
            {
                var start = i;
                while (i < text.Length && (char.IsAsciiDigit(text[i]) || (text[i] == '.' && i + 1 < text.Length && char.IsAsciiDigit(text[i + 1]))))
                {
                    i++;
                }

                if (!double.TryParse(text.AsSpan(start, i - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
                {
                    return null;
                }

                numbers.Add(number);

                // "5:1" is a ratio: the second part only says to what.
                if (i < text.Length && text[i] == ':')
                {
                    break;
                }
            }
            else if (char.IsLetter(text[i]) || text[i] is '<' or '>')
            {
                var start = i++;
                while (i < text.Length && char.IsLetter(text[i]) && char.IsLetter(text[start]))
                {
                    i++;
                }

                if (numbers.Count == 0)
                {
                    var word = text[start..i].ToLowerInvariant();
                    above |= Array.IndexOf(Above, word) >= 0;
                    below |= Array.IndexOf(Below, word) >= 0;
                }
                else if (!string.Equals(text[start..i], "to", StringComparison.OrdinalIgnoreCase) && !string.Equals(text[start..i], "and", StringComparison.OrdinalIgnoreCase))
                {
                    break;
                }
            }
            else
            {
                i++;
            }
        }

        if (numbers.Count == 0)
        {
            return null;
        }

        var (low, high) = (numbers.Min(), numbers.Max());
        return above ? new((low + high) / 2, double.PositiveInfinity) : below ? new(double.NegativeInfinity, (low + high) / 2) : new(low, high);
    }
}
