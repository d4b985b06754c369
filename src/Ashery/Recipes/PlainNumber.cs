using System.Globalization;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>Reads the numbers of a wish or a limit, and says what is wrong with one that cannot be used.</summary>
internal static class PlainNumber
{
    private const NumberStyles Styles =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>A finite number from <paramref name="least"/> to <paramref name="most"/>.</summary>
    public static Result<double> Read(string text, string field, double least, double most, string example)
    {
        var bare = text.Trim().Replace('\u2212', '-');
        if (bare.Length == 0)
        {
            return Result.Fail<double>(field, "A number is missing.", $"Write one, as in {example}.");
        }

        if (bare.Contains(',', StringComparison.Ordinal))
        {
            return Result.Fail<double>(
                field, $"{Say.Quoted(text)} has a comma.", $"Write decimals with a point and thousands without a mark, as in {example}.");
        }

        if (!double.TryParse(bare, Styles, CultureInfo.InvariantCulture, out var value) || double.IsNaN(value))
        {
            return Result.Fail<double>(field, $"{Say.Quoted(text)} is not a number.", $"Write one, as in {example}.");
        }

        if (value < least)
        {
            return Result.Fail<double>(
                field, $"{Say.Quoted(text)} is below {Say.Number(least)}.", $"Write {Say.Number(least)} or more, as in {example}.");
        }

        // An exponent too large for a double reads as infinity and is caught here too.
        return value > most
            ? Result.Fail<double>(
                field, $"{Say.Quoted(text)} is above {Say.Number(most)}.", $"Write {Say.Number(most)} or less, as in {example}.")
            : Result.Of(value);
    }
}
