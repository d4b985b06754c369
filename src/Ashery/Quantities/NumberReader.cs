using System.Globalization;
using Ashery.Problems;

namespace Ashery.Quantities;

/// <summary>Reads a number as a grower may type it, and says what is wrong with it in their words. The decimal mark is the point, everywhere.</summary>
public static class NumberReader
{
    /// <summary>Anything larger is a slip of the finger.</summary>
    public const double Largest = 1e9;

    private const int LongestText = 40;

    /// <summary>A number from zero up.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="field">What the grower knows it as.</param>
    /// <param name="largest">Largest that makes sense here.</param>
    /// <param name="example">How one looks.</param>
    public static Result<double> NotNegative(string text, string field, double largest = Largest, string example = "12.5") =>
        Read(text, field, lowest: 0, largest, example);

    /// <summary>A number above zero.</summary>
    public static Result<double> Positive(string text, string field, double largest = Largest, string example = "12.5")
    {
        var read = Read(text, field, double.MinValue, largest, example);
        return read.Ok && !(read.Value > 0)
            ? Result.Fail<double>(field, $"'{Shown(text.Trim())}' is not above zero.", $"Write an amount above 0, as in {example}.")
            : read;
    }

    /// <summary>A number within limits.</summary>
    public static Result<double> Read(string text, string field, double lowest, double largest, string example = "12.5")
    {
        var s = text.Trim();
        if (s.Length is 0 or > LongestText)
        {
            return Result.Fail<double>(field, s.Length == 0 ? "A number is missing." : "The number is too long to be one.", $"Write one like {example}.");
        }

        if (s.Contains(',', StringComparison.Ordinal))
        {
            return Comma(s, field, example);
        }

        if (!double.TryParse(s, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
        {
            return Result.Fail<double>(field, $"'{Shown(s)}' is not a number.", $"Write digits with a point for decimals, as in {example}.");
        }

        return Check(value, field, lowest, largest) is { } problem ? Result.Fail<double>(problem) : Result.Of(value);
    }

    /// <summary>What is wrong with a number from a file or a form, or null.</summary>
    public static Problem? Check(double value, string field, double lowest, double largest)
    {
        if (!double.IsFinite(value))
        {
            return new Problem(field, "It is not a finite number.", "Write an ordinary number, as in 12.5.");
        }

        if (value < lowest)
        {
            return lowest == 0
                ? new Problem(field, FormattableString.Invariant($"{value} is negative."), "Write zero or more.")
                : new Problem(field, FormattableString.Invariant($"{value} is below the least allowed, {lowest}."), FormattableString.Invariant($"Write {lowest} or more."));
        }

        return value > largest
            ? new Problem(field, FormattableString.Invariant($"{value} is above the most allowed, {largest}."), "Check the figure and its unit.")
            : null;
    }

    /// <summary>Typed text, cut short and without control characters, so that a message stays a message.</summary>
    public static string Shown(string text)
    {
        var clean = string.Create(Math.Min(text.Length, LongestText), text, static (span, source) =>
        {
            for (var i = 0; i < span.Length; i++)
            {
                span[i] = char.IsControl(source[i]) ? '?' : source[i];
            }
        });
        return text.Length > clean.Length ? clean + "…" : clean;
    }

    internal static Result<double> Comma(string s, string field, string example)
    {
        var marks = s.Count(static c => c is ',' or '.');
        return Result.Fail<double>(
            field,
            $"'{Shown(s)}' has a comma; the decimal mark here is the point.",
            marks == 1 ? $"Write {Shown(s.Replace(',', '.'))}, and thousands without a mark, as in {example}." : $"Write thousands without a mark and decimals with a point, as in {example}.");
    }
}
