using Ashery.Problems;

namespace Ashery.Quantities;

/// <summary>
/// Reads an amount as a grower types it: <c>120g</c>, <c>0.1 kg</c>, <c>5mL</c>, <c>1/4 tsp</c>, <c>50g..80g</c>, <c>12 %</c>.
/// A bare number is refused: asking for the unit costs less than guessing it.
/// </summary>
public static class QuantityReader
{
    private const int LongestText = 40;

    private static readonly Kind Masses = new(Units.Grams, Units.MassNames, Most: 1e6, MostText: "1000 kg");
    private static readonly Kind Volumes = new(Units.Litres, Units.VolumeNames, Most: 1e6, MostText: "1000 m³");

    /// <summary>A mass above zero, at most a tonne: no pot garden mixes more at once.</summary>
    public static Result<Mass> Mass(string text, string field, string example = "120g")
    {
        var read = WithUnit(text, field, example, Masses);
        return read.Ok ? Result.Of(new Mass(read.Value)) : Result.Fail<Mass>(read.Problems);
    }

    /// <summary>A volume above zero, at most a thousand cubic metres.</summary>
    public static Result<Volume> Volume(string text, string field, string example = "5mL")
    {
        var read = WithUnit(text, field, example, Volumes);
        return read.Ok ? Result.Of(new Volume(read.Value)) : Result.Fail<Volume>(read.Problems);
    }

    /// <summary>A mass, or a window of masses as <c>50g..80g</c> or <c>10..15g</c>; both ends are the same for a single mass.</summary>
    public static Result<(Mass From, Mass To)> MassWindow(string text, string field, string example = "50g..80g")
    {
        var dots = text.IndexOf("..", StringComparison.Ordinal);
        if (dots < 0)
        {
            var one = Mass(text, field, example);
            return one.Ok ? Result.Of((one.Value, one.Value)) : Result.Fail<(Mass, Mass)>(one.Problems);
        }

        var (fromText, toText) = (text[..dots].Trim(), text[(dots + 2)..].Trim());
        var to = Mass(toText, field, example);
        var from = Mass(fromText.Length > 0 && !fromText.Any(char.IsAsciiLetter) ? fromText + UnitOf(toText) : fromText, field, example);
        if (!from.Ok || !to.Ok)
        {
            return Result.Fail<(Mass, Mass)>([.. from.Problems, .. to.Problems]);
        }

        return from.Value.Grams <= to.Value.Grams
            ? Result.Of((from.Value, to.Value))
            : Result.Fail<(Mass, Mass)>(field, $"The window '{NumberReader.Shown(text)}' ends before it begins.", $"Put the smaller mass first, as in {example}.");
    }

    /// <summary>A share written as percent (<c>12</c> or <c>12 %</c>), as a fraction 0 to 1.</summary>
    public static Result<double> Percent(string text, string field, string example = "12.5")
    {
        var s = text.Trim();
        var read = NumberReader.NotNegative(s.EndsWith('%') ? s[..^1] : s, field, largest: 100, example);
        return read.Ok ? Result.Of(read.Value / 100) : read;
    }

    private static Result<double> WithUnit(string text, string field, string example, Kind kind)
    {
        var s = text.Trim();
        if (s.Length is 0 or > LongestText)
        {
            return Result.Fail<double>(field, s.Length == 0 ? "An amount is missing." : "The amount is too long to be one.", $"Write one like {example}.");
        }

        var shown = NumberReader.Shown(s);
        var unit = UnitOf(s);
        var digits = s[..^unit.Length].TrimEnd();
        if (digits.Length == 0)
        {
            return Result.Fail<double>(field, $"'{shown}' does not start with a number.", $"Write one like {example}.");
        }

        if (digits.Contains(',', StringComparison.Ordinal))
        {
            return NumberReader.Comma(s, field, example);
        }

        if (unit.Length == 0 || kind.Size(unit) is not { } factor)
        {
            return Result.Fail<double>(
                field,
                unit.Length == 0 ? $"'{shown}' has no unit." : $"'{NumberReader.Shown(unit)}' is not a unit known here.",
                $"Write {kind.Names} after the number, as in {example}.");
        }

        var number = Amount(digits, field, example);
        if (!number.Ok)
        {
            return number;
        }

        var value = number.Value * factor;
        return value > kind.Most
            ? Result.Fail<double>(field, $"'{shown}' is above {kind.MostText}.", $"Write {kind.MostText} or less, as in {example}.")
            : Result.Of(value);
    }

    // "5", "2.5", "1/4", "1 1/2": spoons are counted in halves and quarters.
    private static Result<double> Amount(string digits, string field, string example)
    {
        var slash = digits.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0)
        {
            return NumberReader.Positive(digits, field, double.MaxValue, example);
        }

        var space = digits.LastIndexOf(' ', slash);
        var whole = space > 0 ? NumberReader.NotNegative(digits[..space], field) : Result.Of(0.0);
        var top = NumberReader.Positive(digits[(space + 1)..slash], field);
        var bottom = NumberReader.Positive(digits[(slash + 1)..], field);
        return whole.Ok && top.Ok && bottom.Ok
            ? Result.Of(whole.Value + (top.Value / bottom.Value))
            : Result.Fail<double>(field, $"'{NumberReader.Shown(digits)}' is not a fraction.", $"Write it as 1/4 or 1 1/2, or as in {example}.");
    }

    // Letters at the end, with the point and blank of "fl. oz".
    private static string UnitOf(string s)
    {
        var start = s.Length;
        while (start > 0 && (char.IsLetter(s[start - 1]) || IsInnerMark(s, start)))
        {
            start--;
        }

        return s[start..].TrimStart();
    }

    private static bool IsInnerMark(string s, int at) =>
        s[at - 1] is ' ' or '.' && at < s.Length && at > 1 && !char.IsDigit(s[at - 2]) && s[at - 2] is not '/';

    private sealed record Kind(Func<string, double?> Size, string Names, double Most, string MostText);
}
