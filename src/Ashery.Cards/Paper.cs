namespace Ashery.Cards;

/// <summary>A sheet to print on, in millimetres.</summary>
/// <param name="Name">As asked for: <c>a5</c>, <c>label</c>.</param>
/// <param name="Width">mm.</param>
/// <param name="Height">mm.</param>
/// <param name="Margin">mm kept free all round.</param>
/// <param name="TextSize">Size of running text, points.</param>
public sealed record Paper(string Name, double Width, double Height, double Margin, double TextSize)
{
    internal const double PointsPerMm = 72 / 25.4;

    /// <summary>ISO 216 A4: the year list.</summary>
    public static Paper A4 { get; } = new("a4", 210, 297, 16, 9);

    /// <summary>ISO 216 A5: the recipe card.</summary>
    public static Paper A5 { get; } = new("a5", 148, 210, 12, 8.5);

    /// <summary>ISO 216 A6: a recipe card for a tin.</summary>
    public static Paper A6 { get; } = new("a6", 105, 148, 8, 7.5);

    /// <summary>Letter, 8.5 by 11 inches.</summary>
    public static Paper Letter { get; } = new("letter", 215.9, 279.4, 16, 9);

    /// <summary>Half a letter sheet.</summary>
    public static Paper HalfLetter { get; } = new("half-letter", 139.7, 215.9, 12, 8.5);

    /// <summary>Label for a bag.</summary>
    public static Paper Label { get; } = new("label", 100, 70, 5, 7.5);

    /// <summary>Label for a jar or a small bag.</summary>
    public static Paper SmallLabel { get; } = new("small-label", 70, 50, 3.5, 6);

    /// <summary>Every size, for menus and completion.</summary>
    public static IReadOnlyList<Paper> All { get; } = [A4, A5, A6, Letter, HalfLetter, Label, SmallLabel];

    /// <summary>The size of this name, or null.</summary>
    public static Paper? Find(string name) => All.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase));

    internal double PointsWide => Width * PointsPerMm;

    internal double PointsHigh => Height * PointsPerMm;

    internal double PointsMargin => Margin * PointsPerMm;
}
