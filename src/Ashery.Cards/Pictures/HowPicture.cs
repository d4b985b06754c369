using Ashery.Cards.Drawing;
using Ashery.Pots;

namespace Ashery.Cards.Pictures;

/// <summary>What to do, as a small picture: grains about the stem of a watered pot, a can that pours, drops on leaves.</summary>
public static class HowPicture
{
    private const double Wide = 96, High = 84;

    public static string Svg(DoseMethod method, string id, SvgFor use = SvgFor.Page) => SvgWriter.Write(Draw(method, id), use);

    public static Picture Draw(DoseMethod method, string id)
    {
        List<Mark> marks = [.. Pot(new(40, 80))];
        switch (method)
        {
            case DoseMethod.Can:
                marks.AddRange(Can());
                break;
            case DoseMethod.Spray:
                marks.AddRange(Drops());
                break;
            default:
                marks.AddRange(Grains());
                break;
        }

        return new(id, Wide, High, Say(method), "", marks);
    }

    private static string Say(DoseMethod method) => method switch
    {
        DoseMethod.Can => "Pour from the can onto the moist medium.",
        DoseMethod.Spray => "Spray the leaves, in the cool of the morning.",
        _ => "Spread on the moist medium, off the stem, and water in.",
    };

    private static IEnumerable<Mark> Pot(Spot foot)
    {
        yield return new Strokes([(new(foot.X, foot.Y - 34), new(foot.X, foot.Y - 64))], Tone.Leaf, 2);
        foreach (var side in (double[])[-1, 1])
        {
            yield return new Shape([new(foot.X, foot.Y - 44), new(foot.X + (side * 8), foot.Y - 56), new(foot.X + (side * 20), foot.Y - 56), new(foot.X + (side * 12), foot.Y - 46)], Tone.LeafWash, Tone.Leaf, 1.2);
            yield return new Shape([new(foot.X, foot.Y - 54), new(foot.X + (side * 6), foot.Y - 68), new(foot.X + (side * 16), foot.Y - 70), new(foot.X + (side * 10), foot.Y - 58)], Tone.LeafWash, Tone.Leaf, 1.2);
        }

        yield return new Shape([new(foot.X - 22, foot.Y - 30), new(foot.X + 22, foot.Y - 30), new(foot.X + 16, foot.Y - 1), new(foot.X - 16, foot.Y - 1)], Tone.Sheet, Tone.Edge, 1.5);
        yield return new Shape([new(foot.X - 25, foot.Y - 36), new(foot.X + 25, foot.Y - 36), new(foot.X + 25, foot.Y - 30), new(foot.X - 25, foot.Y - 30)], Tone.Sheet, Tone.Edge, 1.5);
    }

    private static IEnumerable<Mark> Grains()
    {
        foreach (var x in (double[])[20, 25, 30, 50, 55, 60])
        {
            yield return new Disc(new(x, 41), 2, Tone.Ember);
        }

        // Kept off the stem.
        yield return new Strokes([(new(35, 38), new(35, 43)), (new(45, 38), new(45, 43))], Tone.Soft, 1);
        yield return Drop(new(78, 30), 7);
        yield return Drop(new(88, 44), 5);
    }

    private static IEnumerable<Mark> Can()
    {
        yield return new Shape([new(72, 14), new(93, 20), new(88, 42), new(67, 36)], Tone.WaterWash, Tone.Water, 1.5);
        yield return new Shape([new(70, 26), new(56, 18), new(57, 15), new(72, 20)], Tone.WaterWash, Tone.Water, 1.5);
        foreach (var (x, y) in ((double, double)[])[(54, 24), (51, 31), (55, 34), (52, 40)])
        {
            yield return Drop(new(x, y), 2.4);
        }
    }

    private static IEnumerable<Mark> Drops()
    {
        yield return new Shape([new(76, 24), new(90, 24), new(92, 50), new(74, 50)], Tone.WaterWash, Tone.Water, 1.5);
        yield return new Shape([new(72, 14), new(88, 14), new(88, 24), new(78, 24), new(72, 19)], Tone.Sheet, Tone.Water, 1.5);
        foreach (var (x, y) in ((double, double)[])[(66, 14), (62, 20), (58, 10), (54, 16), (66, 24), (52, 25)])
        {
            yield return new Disc(new(x, y), 1.6, Tone.Water);
        }
    }

    private static Shape Drop(Spot at, double r)
    {
        List<Spot> spots = [new(at.X, at.Y - (1.5 * r))];
        for (var i = 0; i <= 8; i++)
        {
            var angle = (-30 + (i * 240.0 / 8)) * Math.PI / 180;
            spots.Add(new(at.X + (0.8 * r * Math.Cos(angle)), at.Y + (0.8 * r * Math.Sin(angle))));
        }

        return new(spots, Tone.WaterWash, Tone.Water, 1.2);
    }
}
