using System.Globalization;
using Ashery.Problems;

namespace Ashery.Quantities;

/// <summary>
/// Reads a mass or a volume as a grower types it: a number with a point and a unit, <c>75g</c>, <c>1.5 kg</c>, <c>5mL</c>.
/// A bare number is refused: asking for the unit costs less than guessing it.
/// </summary>
public static class QuantityReader
{
    private const int LongestText = 40;

    // The pound is 453.59237 g exactly (United States and others, 1959, Federal Register 24:5348), the ounce a sixteenth of it.
    private static readonly (string Unit, double Factor)[] Masses =
        [("mg", 0.001), ("kg", 1000), ("g", 1), ("oz", 28.349523125), ("lb", 453.59237)];

    private static readonly (string Unit, double Factor)[] Volumes = [("mL", 0.001), ("cL", 0.01), ("dL", 0.1), ("L", 1)];

    /// <summary>A mass above zero, at most a tonne: no pot garden mixes more at once.</summary>
    public static Result<Mass> Mass(string text, string field, string example)
    {
        var read = Read(text, field, example, Masses, "g", mostText: "1000 kg", most: 1e6);
        return read.Ok ? Result.Of(new Mass(read.Value)) : Result.Fail<Mass>(read.Problems);
    }

    /// <summary>A volume above zero, at most 1000 L.</summary>
    public static Result<Volume> Volume(string text, string field, string example)
    {
        var read = Read(text, field, example, Volumes, "mL", mostText: "1000 L", most: 1000);
        return read.Ok ? Result.Of(new Volume(read.Value)) : Result.Fail<Volume>(read.Problems);
    }

    private static Result<double> Read(
        string text, string field, string example, (string Unit, double Factor)[] units, string usual, string mostText, double most)
    {
        var trimmed = text.Trim();
        if (trimmed.Length is 0 or > LongestText)
        {
            return Result.Fail<double>(field, trimmed.Length == 0 ? "An amount is missing." : "The amount is too long to be one.", $"Write one like {example}.");
        }

        var end = trimmed.Length;
        while (end > 0 && char.IsLetter(trimmed[end - 1]))
        {
            end--;
        }

        var number = trimmed[..end].TrimEnd();
        var unit = trimmed[end..];
        if (number.Contains(',', StringComparison.Ordinal))
        {
            return Result.Fail<double>(field, $"'{trimmed}' has a comma.", $"Write decimals with a point and thousands without a mark, as in {example}.");
        }

        if (!double.TryParse(number, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
        {
            return Result.Fail<double>(field, $"'{trimmed}' does not start with a number.", $"Write one like {example}.");
        }

        if (unit.Length == 0)
        {
            return Result.Fail<double>(field, $"'{trimmed}' has no unit.", $"Write {Names(units)} after it, as in {example}.");
        }

        foreach (var (name, factor) in units)
        {
            if (string.Equals(unit, name, StringComparison.OrdinalIgnoreCase))
            {
                var inBase = value * factor;
                if (!(inBase > 0))
                {
                    return Result.Fail<double>(field, $"'{trimmed}' is not above zero.", $"Write an amount above 0 {usual}, as in {example}.");
                }

                return inBase > most
                    ? Result.Fail<double>(field, $"'{trimmed}' is above {mostText}.", $"Write {mostText} or less, as in {example}.")
                    : Result.Of(inBase);
            }
        }

        return Result.Fail<double>(field, $"'{unit}' is not a unit known here.", $"Write {Names(units)}, as in {example}.");
    }

    private static string Names((string Unit, double Factor)[] units) => string.Join(", ", units.Select(static u => u.Unit));
}
