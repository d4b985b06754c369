using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>An amount with its unit, as a fraction from 0 to 1.</summary>
internal static class LimitAmount
{
    private static readonly (string Unit, double PerOne)[] Units = [("%", 100), ("mg/kg", 1e6), ("ppm", 1e6), ("g/kg", 1000)];

    public static Result<double> Fraction(string text, string field, string example)
    {
        foreach (var (unit, perOne) in Units)
        {
            if (text.EndsWith(unit, StringComparison.OrdinalIgnoreCase))
            {
                var number = PlainNumber.Read(text[..^unit.Length], field, 0, perOne, example);
                return number.Ok ? Result.Of(number.Value / perOne) : number;
            }
        }

        // A bare 2 could be two per cent or two hundred; asking costs less than guessing.
        var bare = PlainNumber.Read(text, field, double.MinValue, double.MaxValue, example);
        return bare.Ok
            ? Result.Fail<double>(field, $"{Say.Quoted(text)} has no unit.", $"Write %, g/kg or mg/kg after it, as in {example}.")
            : Result.Fail<double>(
                field, $"{Say.Quoted(text)} is not an amount with a unit known here.", $"Write a number with %, g/kg, mg/kg or ppm and a decimal point, as in {example}.");
    }
}
