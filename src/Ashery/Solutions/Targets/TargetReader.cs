using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Solutions.Targets;

/// <summary>
/// Reads a wish for a solution: <c>N=150</c> as near as may be, <c>Cl&lt;=50</c>, <c>S&gt;=20</c>, <c>Ca=80..120</c>; mg/L of the element. Forms of nitrogen as N: <c>NO3-N</c>,
/// <c>NH4-N</c>, <c>urea-N</c>, also <c>NH4-N&lt;=15%</c> of all nitrogen. An oxide or an ion by its formula is turned into the element.
/// </summary>
public static class TargetReader
{
    /// <summary>Largest figure that is no slip of the pen, mg/L.</summary>
    public const double Most = 20_000;

    // Standard atomic weights: P 30.974, S 32.06, N 14.007, O 15.999, H 1.008.
    private static readonly (string Word, string Symbol, double PerWritten)[] Words =
    [
        ("NO3-N", "NO3-N", 1), ("nitrate", "NO3-N", 1), ("nitrate-N", "NO3-N", 1), ("NH4-N", "NH4-N", 1), ("ammonium", "NH4-N", 1), ("ammonium-N", "NH4-N", 1),
        ("urea-N", "urea-N", 1), ("urea", "urea-N", 1), ("NO3", "NO3-N", 14.007 / 62.004), ("NH4", "NH4-N", 14.007 / 18.039),
        ("P2O5", "P", LabelBasis.PhosphorusInP2O5), ("PO4", "P", 30.974 / 94.970), ("H2PO4", "P", 30.974 / 96.986), ("K2O", "K", LabelBasis.PotassiumInK2O),
        ("CaO", "Ca", LabelBasis.CalciumInCaO), ("MgO", "Mg", LabelBasis.MagnesiumInMgO), ("SO4", "S", 32.06 / 96.056), ("SO4-S", "S", 1), ("SO3", "S", LabelBasis.SulfurInSO3),
    ];

    /// <summary>All wishes of one text, parted by blanks, commas or semicolons.</summary>
    public static Result<IReadOnlyList<TargetWish>> ReadAll(string text, string field = "target") =>
        ReadAll(text.Split([' ', '\t', '\n', '\r', ',', ';'], StringSplitOptions.RemoveEmptyEntries), field);

    /// <summary>Wishes already parted; the problems of all of them together.</summary>
    public static Result<IReadOnlyList<TargetWish>> ReadAll(IReadOnlyList<string> words, string field = "target")
    {
        var wishes = new List<TargetWish>();
        var problems = new List<Problem>();
        foreach (var word in words)
        {
            var read = Read(word, field);
            problems.AddRange(read.Problems);
            if (read.Ok && wishes.Exists(w => w.Item == read.Value.Item))
            {
                problems.Add(new(field, $"{read.Value.Item.Symbol} is named twice.", "Name it once; a range is written as in Ca=80..120."));
            }
            else if (read.Ok)
            {
                wishes.Add(read.Value);
            }
        }

        return problems.Count > 0 ? Result.Fail<IReadOnlyList<TargetWish>>(problems) : Result.Of<IReadOnlyList<TargetWish>>(wishes);
    }

    /// <summary>One wish.</summary>
    public static Result<TargetWish> Read(string text, string field = "target")
    {
        var word = text.Trim();
        var at = word.IndexOfAny(['<', '>', '=', '≤', '≥', ':']);
        if (at <= 0)
        {
            return Fail(field, $"'{NumberReader.Shown(word)}' is no wish.");
        }

        if (Item(word[..at].Trim()) is not { } item)
        {
            return Result.Fail<TargetWish>(field, $"'{NumberReader.Shown(word[..at])}' is nothing a solution can be asked to hold.",
                "Write N, NO3-N, NH4-N, urea-N, P, K, Ca, Mg, S, Fe, Mn, Zn, Cu, B, Mo, Cl or Na; P2O5, K2O, CaO, MgO, SO4 and the like are turned into the element.");
        }

        var rest = word[at..];
        var sign = rest.StartsWith("<=", StringComparison.Ordinal) || rest[0] == '≤' ? '<' : rest.StartsWith(">=", StringComparison.Ordinal) || rest[0] == '≥' ? '>' : rest[0];
        var figure = rest[(rest.Length > 1 && rest[1] == '=' ? 2 : 1)..].Trim();
        var percent = figure.EndsWith('%');
        if (percent && !item.Item.IsForm)
        {
            return Result.Fail<TargetWish>(field, $"'{NumberReader.Shown(word)}' is in per cent, which only a form of nitrogen can be.", "Write mg/L, as in K=160, or a part of the nitrogen, as in NH4-N<=15%.");
        }

        return Range(word, field, item, sign, percent ? figure[..^1] : figure, percent);
    }

    private static Result<TargetWish> Range(string word, string field, (TargetItem Item, double Factor) item, char sign, string figure, bool percent)
    {
        var dots = figure.IndexOf("..", StringComparison.Ordinal);
        if (dots >= 0 && sign is '<' or '>')
        {
            return Fail(field, $"'{NumberReader.Shown(word)}' has both a range and a sign.");
        }

        var of = $"{field}, {item.Item.Symbol}";
        var first = NumberReader.Read(dots >= 0 ? figure[..dots] : figure, of, 0, percent ? 100 : Most, "150");
        var second = dots >= 0 ? NumberReader.Read(figure[(dots + 2)..], of, 0, percent ? 100 : Most, "150") : first;
        if (!first.Ok || !second.Ok)
        {
            return Result.Fail<TargetWish>(first.Ok ? second.Problems : first.Problems);
        }

        if (second.Value < first.Value)
        {
            return Result.Fail<TargetWish>(of, $"'{NumberReader.Shown(word)}' ends below its start.", "Write the smaller figure first, as in Ca=80..120.");
        }

        var factor = percent ? 0.01 : item.Factor;
        double low = sign == '<' ? 0 : first.Value * factor, high = sign == '>' ? double.PositiveInfinity : second.Value * factor;
        return Result.Of(new TargetWish(item.Item, low, high, percent, word));
    }

    private static (TargetItem Item, double Factor)? Item(string word)
    {
        foreach (var item in TargetItem.All)
        {
            if (word.Equals(item.Symbol, StringComparison.OrdinalIgnoreCase))
            {
                return (item, 1);
            }
        }

        foreach (var (known, symbol, factor) in Words)
        {
            if (word.Equals(known, StringComparison.OrdinalIgnoreCase))
            {
                return (TargetItem.Of(symbol), factor);
            }
        }

        return null;
    }

    private static Result<TargetWish> Fail(string field, string message) => Result.Fail<TargetWish>(
        field, message, "Write mg/L as in N=150, at most as in Cl<=50, at least as in S>=20, a range as in Ca=80..120.");
}
