using Ashery.Cards.Drawing;
using Ashery.Solutions.Tanks;

namespace Ashery.Cards.Pictures;

/// <summary>
/// Stock tanks one under the other: a vessel with its letter and a band for each material, its names and grams beside it, and under both a bar
/// that shows how much of the strength the tank can bear is used; the part beyond the safety margin is hatched.
/// </summary>
public static class TankVessels
{
    private const double Wide = 360;
    private const double VesselLeft = 10;
    private const double VesselRight = 92;
    private const double TextLeft = 102;
    private const double Line = 18;
    private const int MostLines = 9;

    public static string Svg(TankReport report, SvgFor use = SvgFor.Page, string id = "tanks") => SvgWriter.Write(Draw(report, id), use);

    public static Picture Draw(TankReport report, string id = "tanks")
    {
        var marks = new List<Mark>();
        var y = 8.0;
        foreach (var tank in report.Tanks)
        {
            y = Tank(marks, report, tank, y);
        }

        return new(id, Wide, y, report.Tanks.Count == 1 ? "One stock tank" : $"{Figures.Short(report.Tanks.Count, 0)} stock tanks", Describe(report), marks);
    }

    private static double Tank(List<Mark> marks, TankReport report, Tank tank, double y)
    {
        var shown = Math.Min(tank.Parts.Count, MostLines);
        var high = Math.Max(92, (shown * Line) + 22);
        var bottom = y + high;
        var waterline = y + 24;
        Spot[] wall = [new(VesselLeft, y + 8), new(VesselRight, y + 8), new(VesselRight, bottom), new(VesselLeft, bottom)];
        marks.Add(new Shape(wall, Tone.Sheet));
        marks.Add(new Shape([new(VesselLeft, waterline), new(VesselRight, waterline), new(VesselRight, bottom), new(VesselLeft, bottom)], Tone.WaterWash));
        Bands(marks, tank, waterline, bottom);
        marks.Add(new Shape(wall, Tone.None, Tone.Edge, 2));
        marks.Add(new Shape([new(VesselLeft + 26, y + 2), new(VesselRight - 26, y + 2), new(VesselRight - 26, y + 8), new(VesselLeft + 26, y + 8)], Tone.Edge));
        marks.Add(new Words(new((VesselLeft + VesselRight) / 2, waterline + 22), tank.Name, 20, Tone.Ink, Anchor.Middle, Face.Head, Halo: true));

        var at = y + 22;
        for (var i = 0; i < shown; i++)
        {
            var part = tank.Parts[i];
            var last = i == shown - 1 && tank.Parts.Count > shown;
            var grams = last ? string.Empty : Figures.Short(part.GramsPerLitre, part.GramsPerLitre < 1 ? 3 : 1) + " g";
            var share = !last && part.Share < 1 ? $" ({Figures.Percent(part.Share, 0)})" : string.Empty;
            var name = last ? $"and {Figures.Short(tank.Parts.Count - shown + 1, 0)} more" : Safe.Plain(part.Material.Name);
            marks.Add(new Words(new(TextLeft, at), TextWidth.Fit(name, Wide - TextLeft - 52 - TextWidth.Of(share, 12), 12) + share, 12));
            marks.Add(new Words(new(Wide - 6, at), grams, 12, Tone.Ink, Anchor.End, Face.Bold));
            at += Line;
        }

        return Bar(marks, report, tank, bottom + 8);
    }

    // Bands as thick as their share of the grams; different slopes, so that they are told apart in grey.
    private static void Bands(List<Mark> marks, Tank tank, double top, double bottom)
    {
        var grams = tank.Grams;
        var room = (bottom - top) * 0.55;
        var y = bottom;
        for (var i = 0; i < tank.Parts.Count; i++)
        {
            var part = tank.Parts[i];
            var high = room * part.GramsPerLitre / grams;
            if (high < 1.5)
            {
                continue;
            }

            Spot[] band = [new(VesselLeft, y - high), new(VesselRight, y - high), new(VesselRight, y), new(VesselLeft, y)];
            marks.Add(new Group($"{Safe.Plain(part.Material.Name)}, {Figures.Short(part.GramsPerLitre, 1)} g a litre",
            [
                new Shape(band, i % 2 == 0 ? Tone.LeafWash : Tone.Sheet, Tone.Leaf, 1),
                new Strokes(Hatch.Inside(band, 7, i % 4 < 2 ? 1 : -1), Tone.Leaf, 0.5),
            ]));
            y -= high;
        }
    }

    private static double Bar(List<Mark> marks, TankReport report, Tank tank, double y)
    {
        const double From = VesselLeft, To = Wide - 10;
        var most = Math.Max(tank.MostRatio, report.Request.Ratio * 1.05);
        double X(double ratio) => From + (Math.Min(1, ratio / most) * (To - From));
        var clear = X(tank.MostRatio * TankSplit.Margin);
        var asked = X(report.Request.Ratio);
        Spot[] beyond = [new(clear, y), new(To, y), new(To, y + 12), new(clear, y + 12)];
        marks.Add(new Shape([new(From, y), new(clear, y), new(clear, y + 12), new(From, y + 12)], Tone.LeafWash, Tone.Leaf, 1));
        marks.Add(new Shape(beyond, Tone.EmberWash, Tone.Ember, 1));
        marks.Add(new Strokes(Hatch.Inside(beyond, 6, 1), Tone.Ember, 0.75));
        var good = report.Request.Ratio <= tank.MostRatio * TankSplit.Margin;
        marks.Add(new Group($"Asked: 1:{Figures.Short(report.Request.Ratio, 1)}", [new Shape([new(asked, y + 6 - 9), new(asked + 8, y + 6), new(asked, y + 6 + 9), new(asked - 8, y + 6)], good ? Tone.Leaf : Tone.Ember, Tone.Sheet, 1)]));
        var words = tank.MostRatio <= 0 ? "clear at no strength" : $"clear up to 1:{Ratio(tank.MostRatio * TankSplit.Margin)} with the margin";
        marks.Add(new Words(new(From, y + 29), words, 12, good ? Tone.Leaf : Tone.Ember, Face: Face.Bold));
        marks.Add(new Words(new(To, y + 29), $"asked 1:{Figures.Short(report.Request.Ratio, 1)}", 12, Tone.Ink, Anchor.End));
        return y + 46;
    }

    private static string Ratio(double ratio) => Figures.Short(ratio >= 10 ? Math.Floor(ratio) : Math.Floor(ratio * 10) / 10, 1);

    private static string Describe(TankReport report)
    {
        var words = new List<string>();
        foreach (var tank in report.Tanks)
        {
            words.Add($"Tank {tank.Name}: {string.Join(", ", tank.Parts.Select(static p => $"{Safe.Plain(p.Material.Name)} {Figures.Short(p.GramsPerLitre, 2)} g a litre"))}; clear up to 1:{Ratio(tank.MostRatio * TankSplit.Margin)} with the margin.");
        }

        return string.Join(' ', words) + $" Asked for 1:{Figures.Short(report.Request.Ratio, 1)}.";
    }
}
