using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Materials;

/// <summary>Reads a grade as it is printed: <c>21-0-0</c>, <c>13.5-0-45.5</c>; percent N, P2O5, K2O.</summary>
public static class GradeReader
{
    /// <summary>The three figures as a label analysis, each 0 to 100 and together no more than 100.</summary>
    public static Result<LabelAnalysis> Read(string text, string field)
    {
        var s = text.Trim();
        if (s.Contains(':', StringComparison.Ordinal))
        {
            return Result.Fail<LabelAnalysis>(field, $"'{NumberReader.Shown(s)}' is written like a ratio.", "A label is a grade in percent, with hyphens: 21-0-0.");
        }

        var parts = s.Split('-');
        if (s.StartsWith('-') || s.Contains("--", StringComparison.Ordinal))
        {
            return Result.Fail<LabelAnalysis>(field, $"'{NumberReader.Shown(s)}' has a negative figure.", "Give N-P2O5-K2O in percent, none below zero, such as 21-0-0.");
        }

        if (parts.Length != 3)
        {
            return Result.Fail<LabelAnalysis>(field, $"'{NumberReader.Shown(s)}' is not a grade of three figures.", "Give N-P2O5-K2O in percent, such as 21-0-0.");
        }

        var n = NumberReader.NotNegative(parts[0], $"{field}, N", 100);
        var p = NumberReader.NotNegative(parts[1], $"{field}, P2O5", 100);
        var k = NumberReader.NotNegative(parts[2], $"{field}, K2O", 100);
        if (!n.Ok || !p.Ok || !k.Ok)
        {
            return Result.Fail<LabelAnalysis>([.. n.Problems, .. p.Problems, .. k.Problems]);
        }

        var sum = n.Value + p.Value + k.Value;
        return sum > 100
            ? Result.Fail<LabelAnalysis>(field, FormattableString.Invariant($"N, P2O5 and K2O add up to {sum:0.##} %."), "Together they cannot pass 100 %: check the label.")
            : Result.Of(LabelAnalysis.Grade(n.Value, p.Value, k.Value));
    }

    /// <summary>A grade as it is printed.</summary>
    public static string Write(LabelAnalysis label) => FormattableString.Invariant(
        $"{label.Percent(Nutrient.N):0.##}-{label.Percent(Nutrient.P):0.##}-{label.Percent(Nutrient.K):0.##}");
}
