using System.Globalization;

namespace Ashery.Bench;

/// <summary>Tables in the form that goes into README files.</summary>
internal static class Table
{
    public static void Line(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    public static void Head(string title, params string[] columns)
    {
        Console.WriteLine();
        Console.WriteLine("### " + title);
        Console.WriteLine();
        Row(columns);
        Row([.. columns.Select(_ => "---")]);
    }

    public static void Row(params string[] cells) => Console.WriteLine("| " + string.Join(" | ", cells) + " |");

    /// <summary>A figure with three digits that count.</summary>
    public static string Figure(double value) => value switch
    {
        >= 100 => value.ToString("#,0", CultureInfo.InvariantCulture),
        >= 10 => value.ToString("0.0", CultureInfo.InvariantCulture),
        >= 1 => value.ToString("0.00", CultureInfo.InvariantCulture),
        >= 0.1 => value.ToString("0.000", CultureInfo.InvariantCulture),
        _ => value.ToString("0.0000", CultureInfo.InvariantCulture),
    };

    public static string Times(double ratio) => (ratio >= 10 ? ratio.ToString("#,0", CultureInfo.InvariantCulture) : ratio.ToString("0.0", CultureInfo.InvariantCulture)) + " x";

    public static string Whole(long value) => value.ToString("#,0", CultureInfo.InvariantCulture);
}
