using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Materials;

/// <summary>One line of a label as typed, in percent by weight.</summary>
/// <param name="Item">What it is a figure of, and on which basis.</param>
/// <param name="Percent">Percent by weight.</param>
public sealed record LabelLine(LabelItem Item, double Percent);

/// <summary>Reads a label line by line: <c>N 13.7</c>, <c>K2O 46.3 %</c>, <c>B 200 mg/kg</c>; or all at once, divided by semicolons or line ends.</summary>
public static class LabelReader
{
    /// <summary>The lines of a whole label, or everything that is wrong with them.</summary>
    public static Result<IReadOnlyList<LabelLine>> Parse(string text, string field = "label")
    {
        var lines = new List<LabelLine>();
        var problems = new List<Problem>();
        foreach (var part in text.Split([';', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var cut = part.AsSpan().LastIndexOfAny(" =\t:");
            cut = ValueStart(part, cut);
            var line = cut < 0
                ? Result.Fail<LabelLine>(field, $"'{NumberReader.Shown(part)}' is not a line of a label.", "Write the nutrient and its percent: K2O 46.3; put a semicolon between lines.")
                : Line(part[..cut].TrimEnd(' ', '=', ':', '\t'), part[cut..], field);
            if (line.Ok)
            {
                lines.Add(line.Value);
            }
            else
            {
                problems.AddRange(line.Problems);
            }
        }

        if (problems.Count == 0 && lines.Count == 0)
        {
            problems.Add(new Problem(field, "The label is empty.", "Write at least one line, such as N 21."));
        }

        return problems.Count > 0 ? Result.Fail<IReadOnlyList<LabelLine>>(problems) : Result.Of<IReadOnlyList<LabelLine>>(lines);
    }

    /// <summary>One line: a word for the nutrient and a figure, percent unless <c>mg/kg</c> or <c>ppm</c> is said.</summary>
    public static Result<LabelLine> Line(string word, string figure, string field = "label")
    {
        if (LabelItems.Find(word) is not { } item)
        {
            return Result.Fail<LabelLine>(field, $"'{NumberReader.Shown(word.Trim())}' is not a nutrient known here.",
                "Use N, NH4-N, NO3-N, urea-N, organic-N, P2O5 or P, K2O or K, CaO or Ca, MgO or Mg, SO3 or S, Fe, Mn, Zn, Cu, B, Mo, Cl, Na.");
        }

        var s = figure.Trim();
        var perMillion = Cut(ref s, "mg/kg") || Cut(ref s, "ppm");
        var perThousand = !perMillion && Cut(ref s, "g/kg");
        if (!perMillion && !perThousand)
        {
            Cut(ref s, "%");
        }

        var read = NumberReader.NotNegative(s, $"{field}, {LabelItems.Symbol(item)}", example: "12.5");
        if (!read.Ok)
        {
            return Result.Fail<LabelLine>(read.Problems);
        }

        var factor = perMillion ? 1e-4 : perThousand ? 0.1 : 1;
        return Result.Of(new LabelLine(item, read.Value * factor));
    }

    // The figure begins at the last blank that has a digit or sign behind it: "B 200 mg/kg", "NH4-N 1.1".
    private static int ValueStart(string part, int cut)
    {
        while (cut > 0 && !(cut + 1 < part.Length && (char.IsAsciiDigit(part[cut + 1]) || part[cut + 1] is '-' or '+' or '.')))
        {
            cut = part.AsSpan(0, cut).LastIndexOfAny(" =\t:");
        }

        return cut < 0 ? cut : cut + 1;
    }

    private static bool Cut(ref string s, string unit)
    {
        if (!s.EndsWith(unit, StringComparison.OrdinalIgnoreCase))
        {
            return false;
        }

        s = s[..^unit.Length].TrimEnd();
        return true;
    }
}
