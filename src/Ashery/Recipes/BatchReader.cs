using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Recipes;

/// <summary>Reads a batch (<c>75g</c>, <c>10g..15g</c>, <c>0.5kg</c>) and the step of a scale (<c>1g</c>).</summary>
public static class BatchReader
{
    private const double GramsPerOunce = 28.349523125;

    private const double GramsPerPound = 453.59237;

    private static readonly (string Unit, double Grams)[] Units =
        [("mg", 0.001), ("kg", 1000), ("oz", GramsPerOunce), ("lb", GramsPerPound), ("g", 1), ("t", 1e6)];

    /// <summary>An exact batch, or a window between two masses.</summary>
    public static Result<BatchWindow> Parse(string? text)
    {
        var words = text ?? string.Empty;
        var dots = words.IndexOf("..", StringComparison.Ordinal);
        if (dots < 0)
        {
            var exact = Mass(words, "batch", "75g");
            return exact.Ok ? Result.Of(new BatchWindow(exact.Value, exact.Value)) : Result.Fail<BatchWindow>(exact.Problems);
        }

        var to = Mass(words[(dots + 2)..], "batch, to", "10g..15g");
        if (!to.Ok)
        {
            return Result.Fail<BatchWindow>(to.Problems);
        }

        // 10..15g: the unit of the end goes for the start too.
        var start = words[..dots].Trim();
        var unit = start.Length > 0 && char.IsAsciiDigit(start[^1]) ? Unit(words[(dots + 2)..].Trim()) : string.Empty;
        var from = Mass(start + unit, "batch, from", "10g..15g");
        if (!from.Ok)
        {
            return Result.Fail<BatchWindow>(from.Problems);
        }

        return from.Value.Grams > to.Value.Grams
            ? Result.Fail<BatchWindow>("batch", "The window ends before it starts.", "Write the smaller mass first, as in 10g..15g.")
            : Result.Of(new BatchWindow(from.Value, to.Value));
    }

    /// <summary>One step of a scale.</summary>
    public static Result<Mass> ParseStep(string? text) => Mass(text ?? string.Empty, "step", "1g");

    /// <summary>A mass above zero.</summary>
    internal static Result<Mass> Mass(string text, string field, string example)
    {
        var words = text.Trim();
        if (words.Length > 40)
        {
            return Result.Fail<Mass>(field, $"{Say.Quoted(words)} is too long for a mass.", $"Write one like {example}.");
        }

        foreach (var (unit, grams) in Units)
        {
            if (words.EndsWith(unit, StringComparison.OrdinalIgnoreCase) && words.Length > unit.Length && !char.IsAsciiLetter(words[^(unit.Length + 1)]))
            {
                var number = PlainNumber.Read(
                    words[..^unit.Length], field, RequestCheck.SmallestMass / grams, RequestCheck.LargestBatch / grams, example);
                return number.Ok ? Result.Of(new Mass(number.Value * grams)) : Result.Fail<Mass>(number.Problems);
            }
        }

        if (words.Length == 0)
        {
            return Result.Fail<Mass>(field, "A mass is missing.", $"Write one like {example}.");
        }

        return Result.Fail<Mass>(
            field, $"{Say.Quoted(words)} is not a mass with a unit known here.", $"Write a number with g, kg, mg, oz or lb, as in {example}.");
    }

    private static string Unit(string mass)
    {
        var at = mass.Length;
        while (at > 0 && char.IsAsciiLetter(mass[at - 1]))
        {
            at--;
        }

        return mass[at..];
    }
}
