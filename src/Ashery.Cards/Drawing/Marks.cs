namespace Ashery.Cards.Drawing;

/// <summary>A place in a picture; x to the right, y down. Units: CSS pixels in pictures, points on paper.</summary>
public readonly record struct Spot(double X, double Y);

/// <summary>
/// One thing drawn. A picture is a list of these, so that SVG and PDF draw the same and neither knows what it means.
/// </summary>
public abstract record Mark;

/// <summary>A closed shape.</summary>
public sealed record Shape(IReadOnlyList<Spot> Corners, Tone Fill, Tone Stroke = Tone.None, double Width = 1, bool Dashed = false) : Mark;

/// <summary>Separate straight strokes: rules, grids, hatching.</summary>
public sealed record Strokes(IReadOnlyList<(Spot From, Spot To)> Lines, Tone Stroke, double Width = 1, bool Dashed = false) : Mark;

/// <summary>A circle.</summary>
public sealed record Disc(Spot Centre, double Radius, Tone Fill, Tone Stroke = Tone.None, double Width = 1) : Mark;

/// <summary>A line of text; <paramref name="At"/> is on the base line.</summary>
public sealed record Words(Spot At, string Text, double Size, Tone Fill = Tone.Ink, Anchor Anchor = Anchor.Start, Face Face = Face.Text, bool Halo = false) : Mark;

/// <summary>Marks that belong together, with a word about them for a pointer that rests there.</summary>
public sealed record Group(string Title, IReadOnlyList<Mark> Marks) : Mark;

public enum Anchor
{
    Start,
    Middle,
    End,
}

/// <summary>The three faces a card is set in.</summary>
public enum Face
{
    Text,
    Bold,
    Head,
}

/// <summary>A drawing with its words: what a screen reader says instead.</summary>
/// <param name="Id">Makes ids inside a page unique; lower-case letters, digits, hyphens.</param>
/// <param name="Width">Width of the drawing.</param>
/// <param name="Height">Height of the drawing.</param>
/// <param name="Title">What it is.</param>
/// <param name="Description">The facts it shows, in sentences.</param>
/// <param name="Marks">What is drawn, first at the back.</param>
public sealed record Picture(string Id, double Width, double Height, string Title, string Description, IReadOnlyList<Mark> Marks);
