using System.Globalization;

namespace Ashery.Journal;

/// <summary>What the trade calls the figures read beside a pot, in the one unit each has.</summary>
public static class MeasuredWords
{
    /// <summary>Name of the figure.</summary>
    public static string Name(MeasuredKind what) => what switch
    {
        MeasuredKind.LeachateEc => "Leachate EC",
        MeasuredKind.LeachatePh => "Leachate pH",
        MeasuredKind.ExtractEc => "Extract EC (1:2)",
        MeasuredKind.ExtractPh => "Extract pH (1:2)",
        MeasuredKind.Weight => "Weight",
        MeasuredKind.Flowers => "Flowers",
        MeasuredKind.Buds => "Buds",
        MeasuredKind.LeafColour => "Leaf colour",
        MeasuredKind.Height => "Height",
        MeasuredKind.Width => "Width",
        _ => what.ToString(),
    };

    /// <summary>Unit as printed after the figure; empty for what is counted.</summary>
    public static string Unit(MeasuredKind what) => what switch
    {
        MeasuredKind.LeachateEc or MeasuredKind.ExtractEc => "mS/cm",
        MeasuredKind.Weight => "g",
        MeasuredKind.Height or MeasuredKind.Width => "cm",
        MeasuredKind.LeafColour => "of 5",
        _ => "",
    };

    /// <summary>How it is read, in a sentence.</summary>
    public static string How(MeasuredKind what) => what switch
    {
        MeasuredKind.LeachateEc or MeasuredKind.LeachatePh => "An hour after watering, pour on a little pure water and read the first drops that run out below.",
        MeasuredKind.ExtractEc or MeasuredKind.ExtractPh => "One part of medium in two parts of pure water by volume, stirred, read after half an hour.",
        MeasuredKind.Weight => "The pot on the scale, as it stands.",
        MeasuredKind.LeafColour => "The youngest grown leaf against the card: 1 yellow, 5 dark green.",
        MeasuredKind.Flowers => "Open flowers.",
        MeasuredKind.Buds => "Buds that show colour or will.",
        MeasuredKind.Height => "From the rim of the pot.",
        _ => "At its widest.",
    };

    /// <summary>The step of the large buttons.</summary>
    public static (double Small, double Large) Step(MeasuredKind what) => what switch
    {
        MeasuredKind.LeachateEc or MeasuredKind.ExtractEc or MeasuredKind.LeachatePh or MeasuredKind.ExtractPh => (0.1, 1),
        MeasuredKind.Weight => (10, 100),
        MeasuredKind.LeafColour => (0.5, 1),
        MeasuredKind.Height or MeasuredKind.Width => (1, 10),
        _ => (1, 10),
    };

    /// <summary>The figure with no more digits than it was read with.</summary>
    public static string Figure(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary><c>2.3 mS/cm</c>, <c>pH 6.1</c>, <c>14</c>.</summary>
    public static string Value(MeasuredKind what, double value) => what is MeasuredKind.LeachatePh or MeasuredKind.ExtractPh
        ? "pH " + Figure(value)
        : $"{Figure(value)} {Unit(what)}".TrimEnd();
}
