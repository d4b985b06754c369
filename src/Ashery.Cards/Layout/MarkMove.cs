using Ashery.Cards.Drawing;
using Ashery.Cards.Fonts;

namespace Ashery.Cards.Layout;

/// <summary>Puts a picture's mark on a sheet: scaled about the corner, then moved.</summary>
internal static class MarkMove
{
    public static Mark To(Mark mark, double x, double y, double k)
    {
        Spot Move(Spot s) => new(x + (k * s.X), y + (k * s.Y));
        return mark switch
        {
            Shape s => s with { Corners = [.. s.Corners.Select(Move)], Width = s.Width * k },
            Strokes s => s with { Lines = [.. s.Lines.Select(l => (Move(l.From), Move(l.To)))], Width = s.Width * k },
            Disc d => d with { Centre = Move(d.Centre), Radius = d.Radius * k, Width = d.Width * k },
            Words w => w with { At = Move(w.At), Size = w.Size * k, Text = Typeface.Printable(w.Text, w.Face) },
            Group g => g with { Marks = [.. g.Marks.Select(m => To(m, x, y, k))] },
            _ => throw new NotSupportedException(mark.GetType().Name),
        };
    }
}
