using System.Globalization;
using Ashery.Nutrients;

namespace Ashery.Web.Show;

/// <summary>Figures as pages print them: invariant, as many digits as mean something.</summary>
public static class Figures
{
    private const string None = "–";

    public static string Number(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>Three digits that count.</summary>
    public static string Short(double value)
    {
        if (value == 0)
        {
            return "0";
        }

        var digits = Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6);
        return value.ToString("0." + new string('#', digits), CultureInfo.InvariantCulture);
    }

    public static string Short(double? value) => value is { } v ? Short(v) : None;

    /// <summary>Three digits that count, of large figures too: what was worked out and not weighed.</summary>
    public static string Three(double value)
    {
        if (Math.Abs(value) < 1000)
        {
            return Short(value);
        }

        var unit = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 2);
        return Number(Math.Round(value / unit) * unit);
    }

    public static string Percent(double fraction) => $"{Short(fraction * 100)} %";

    public static string Percent(double? fraction) => fraction is { } f ? Percent(f) : None;

    /// <summary>N-P2O5-K2O, as the trade says a grade.</summary>
    public static string Grade(LabelAnalysis label) =>
        $"{Grade(label.Percent(Nutrient.N))}-{Grade(label.Percent(Nutrient.P))}-{Grade(label.Percent(Nutrient.K))}";

    /// <summary>The grade, or what else it holds most of when it holds none of the three.</summary>
    public static string Contents(LabelAnalysis label)
    {
        if (label[Nutrient.N] + label[Nutrient.P] + label[Nutrient.K] > 0)
        {
            return Grade(label);
        }

        var most = label.Present.OrderByDescending(n => label[n]).Take(2).Select(n => $"{n} {Percent(label[n])}");
        return string.Join(", ", most) is { Length: > 0 } text ? text : "no nutrients";
    }

    public static string Money(double? amount, string currency) =>
        amount is { } a ? $"{a.ToString("0.00", CultureInfo.InvariantCulture)} {currency}" : "not known";

    /// <summary>A day as the year's list and cards say it: <c>Sat 14 Mar 2026</c>.</summary>
    public static string Day(DateOnly date) => date.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A day among days of one year.</summary>
    public static string ShortDay(DateOnly date) => date.ToString("d MMM", CultureInfo.InvariantCulture);

    public static string IsoDay(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    public static string Instant(DateTimeOffset at) => at.ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);

    public static string Month(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);

    private static string Grade(double percent) => percent.ToString(percent < 10 ? "0.##" : "0.#", CultureInfo.InvariantCulture);
}
