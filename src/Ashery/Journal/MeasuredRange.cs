using Ashery.Problems;

namespace Ashery.Journal;

/// <summary>Between which figures a reading is believed, with its unit.</summary>
public static class MeasuredRange
{
    /// <summary>Lowest and highest figure taken, and the unit. Common practice, no source: beyond them a meter or thumb slipped.</summary>
    public static (double From, double To, string Unit) Of(MeasuredKind what) => what switch
    {
        MeasuredKind.LeachateEc or MeasuredKind.ExtractEc => (0, 50, "mS/cm"),
        MeasuredKind.LeachatePh or MeasuredKind.ExtractPh => (2, 12, "pH"),
        MeasuredKind.Weight => (1, 500_000, "g"),
        MeasuredKind.Flowers or MeasuredKind.Buds => (0, 100_000, "flowers"),
        MeasuredKind.LeafColour => (1, 5, "on the card"),
        _ => (0, 2000, "cm"),
    };

    internal static void Check(List<Problem> problems, Measured measured)
    {
        var (from, to, unit) = Of(measured.What);
        EntryRules.Range(problems, "value", measured.Value, from, to, unit);
        EntryRules.Range(problems, "celsius", measured.Celsius ?? 25, -5, 60, "°C");
    }
}
