using Ashery.Crops;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>
/// Reads what is wanted: <c>3:1:2</c> (N : P2O5 : K2O), <c>3:1:2 Ca 1 Mg 0.5</c>, <c>N=3,P2O5=1,K2O=2,Mg=0.5</c>, or a
/// grade to reach at least, <c>10-5-10</c>, <c>10-5-10 + 2 MgO</c>.
/// </summary>
public static class WishReader
{
    /// <summary>Longest text worth reading; anything longer is not a wish.</summary>
    internal const int LongestText = 200;

    /// <summary>Largest part of a ratio.</summary>
    internal const double LargestPart = 1_000_000;

    private const string RatioExample = "3:1:2";
    private const string GradeExample = "10-5-10";

    /// <summary>A ratio when written with colons or names only, a grade when written with hyphens.</summary>
    public static Result<Wish> Parse(string? text) =>
        Prepare(text, "wish", RatioExample) switch
        {
            { Ok: false } failed => Result.Fail<Wish>(failed.Problems),
            { Value: { } words } => words.Length > 0 && IsGradeWord(words[0]) ? Grade(words, "wish") : Ratio(words, "wish"),
        };

    /// <summary>Always a ratio: <c>3-1-2</c> is then 3 : 1 : 2.</summary>
    public static Result<Wish> ParseRatio(string? text) =>
        Prepare(text, "ratio", RatioExample) switch
        {
            { Ok: false } failed => Result.Fail<Wish>(failed.Problems),
            { Value: { } words } => Ratio(words, "ratio"),
        };

    /// <summary>Always a grade to reach at least, in percent by weight.</summary>
    public static Result<Wish> ParseGrade(string? text) =>
        Prepare(text, "grade", GradeExample) switch
        {
            { Ok: false } failed => Result.Fail<Wish>(failed.Problems),
            { Value: { } words } => Grade(words, "grade"),
        };

    /// <summary>The ratio published or practised for a crop.</summary>
    public static Wish ForCrop(Crop crop) => new(
        new Dictionary<Nutrient, double>
        {
            [Nutrient.N] = crop.Ratio.N,
            [Nutrient.P] = crop.Ratio.P2O5,
            [Nutrient.K] = crop.Ratio.K2O,
        },
        IsGrade: false,
        $"{crop.Name} ({Say.Number(crop.Ratio.N)}:{Say.Number(crop.Ratio.P2O5)}:{Say.Number(crop.Ratio.K2O)})");

    private static Result<Wish> Ratio(string[] words, string field)
    {
        var figures = WishWords.Read(words, field, LargestPart, RatioExample);
        return figures.Ok
            ? WishCheck.Ratio(figures.Value, field, figures.Problems)
            : Result.Fail<Wish>(figures.Problems);
    }

    private static Result<Wish> Grade(string[] words, string field)
    {
        var figures = WishWords.Read(words, field, most: 100, GradeExample);
        if (!figures.Ok)
        {
            return Result.Fail<Wish>(figures.Problems);
        }

        var fractions = new Dictionary<Nutrient, double>();
        for (var nutrient = Nutrient.N; nutrient <= Nutrient.Na; nutrient++)
        {
            if (figures.Value.TryGetValue(nutrient, out var percent))
            {
                fractions[nutrient] = percent / 100;
            }
        }

        return WishCheck.Grade(fractions, field, figures.Problems);
    }

    // Words apart by blanks, commas, semicolons and plus signs; blanks around : = and - closed up.
    private static Result<string[]> Prepare(string? text, string field, string example)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return Result.Fail<string[]>(field, "Nothing is wanted.", $"Write a ratio like {RatioExample} or a grade like {GradeExample}.");
        }

        if (text.Length > LongestText)
        {
            return Result.Fail<string[]>(
                field, $"The text is longer than {LongestText} signs.", $"Write only the figures, as in {example}.");
        }

        var tidy = text.Replace('\u2212', '-').Replace('\u2013', '-');
        for (var i = 1; i < tidy.Length - 1; i++)
        {
            if (tidy[i] == ',' && char.IsAsciiDigit(tidy[i - 1]) && char.IsAsciiDigit(tidy[i + 1]))
            {
                return Result.Fail<string[]>(
                    field, $"{Say.Quoted(text)} has a comma inside a number.", "Write decimals with a point, as in 3.5:1:2.");
            }
        }

        foreach (var sign in (ReadOnlySpan<string>)[":", "=", "-"])
        {
            tidy = CloseUp(tidy, sign);
        }

        return Result.Of(tidy.Split([' ', '\t', '\r', '\n', ',', ';', '+'], StringSplitOptions.RemoveEmptyEntries));
    }

    private static string CloseUp(string text, string sign)
    {
        var parts = text.Split(sign);
        for (var i = 0; i < parts.Length; i++)
        {
            parts[i] = i == 0 ? parts[i].TrimEnd() : i == parts.Length - 1 ? parts[i].TrimStart() : parts[i].Trim();
        }

        return string.Join(sign, parts);
    }

    private static bool IsGradeWord(string word) =>
        !word.Contains(':', StringComparison.Ordinal) && !word.Contains('=', StringComparison.Ordinal)
        && word.LastIndexOf('-') > 0 && char.IsAsciiDigit(word[0]);
}
