using System.Globalization;
using Ashery.Problems;

namespace Ashery.Solutions.Waters;

/// <summary>Reads figures as laboratories print them, <c>0.05</c> and <c>&lt; 0.05</c>, and says what is wrong with others.</summary>
public static class WaterNumber
{
    private const int Longest = 30;

    /// <summary>The figure, and whether the report says only that it is below it.</summary>
    public static Result<WaterFigure> Read(string text, string field)
    {
        var trimmed = text.Trim();
        var below = trimmed.StartsWith('<') || trimmed.StartsWith('≤');
        var digits = below ? trimmed[1..].Trim() : trimmed;
        if (digits.Contains(',', StringComparison.Ordinal))
        {
            var point = digits.Replace(',', '.');
            return Result.Fail<WaterFigure>(
                field,
                $"\"{Shown(trimmed)}\" has a comma, which may mean thousands or a decimal.",
                digits.IndexOf(',', StringComparison.Ordinal) == digits.LastIndexOf(',') && !digits.Contains('.', StringComparison.Ordinal)
                    ? $"Write {Shown(point)} for a decimal, {Shown(digits.Replace(",", string.Empty, StringComparison.Ordinal))} for thousands."
                    : "Write figures with a point and without marks of thousands: 1250.5.");
        }

        if (!double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
        {
            return Result.Fail<WaterFigure>(field, $"\"{Shown(trimmed)}\" is not a number.", "Write a number with a point, such as 4.5; \"<0.1\" where the report says less than.");
        }

        return Check(value, field) is { } wrong ? Result.Fail<WaterFigure>(wrong) : Result.Of(new WaterFigure(value, below));
    }

    /// <summary>What is wrong with a figure that a report may not hold; null when nothing is.</summary>
    internal static Problem? Check(double value, string field) =>
        !double.IsFinite(value) ? new(field, "This is not a number.", "Give the figure of the report, or leave the line out.")
        : value < 0 ? new(field, string.Create(CultureInfo.InvariantCulture, $"{value:0.###} is negative; a water cannot hold less than nothing."), "Check the sign; leave the line out when it was not measured.")
        : null;

    /// <summary>What was typed, cut short.</summary>
    internal static string Shown(string text) => text.Length > Longest ? text[..Longest] + "..." : text;
}

/// <summary>A figure of a report.</summary>
/// <param name="Value">The number.</param>
/// <param name="Below">The report says only that it is less.</param>
public sealed record WaterFigure(double Value, bool Below);
