using System.Xml.Linq;
using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Cards.Tests.Support;
using Ashery.Climate;
using CsCheck;

namespace Ashery.Cards.Tests.Pictures;

public class WeatherPictureTests
{
    private static readonly Place Coast = new()
    {
        Name = "Gull steps (invented)",
        Latitude = 44,
        ElevationMetres = 15,
        NearCoast = true,
        Normals = [.. Enumerable.Range(0, 12).Select(static m => new MonthlyNormal(20 - (9 * Math.Cos(m * Math.PI / 6)), 11 - (8 * Math.Cos(m * Math.PI / 6)), 60 + (45 * Math.Cos(m * Math.PI / 6))))],
    };

    [Fact]
    public void Weather_as_approved() => Approval.Check(WeatherPicture.Svg(UsualYear.Of(Coast).Value!, Coast.Name, SvgFor.File), "weather", "svg");

    [Fact]
    public void The_words_say_what_the_picture_shows()
    {
        var words = WeatherPicture.Draw(UsualYear.Of(Coast).Value!, Coast.Name).Description;
        Assert.Contains("Hottest days in July, 29 °C; coldest nights in January, 3 °C.", words, StringComparison.Ordinal);
        Assert.Contains("Grass would use more than it rains in April,", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("জবা ফুল 🌺 山茶花")]
    public void Hostile_names_stay_text(string name)
    {
        var root = XDocument.Parse(WeatherPicture.Svg(UsualYear.Of(Coast).Value!, name)).Root!;
        var allowed = new[] { "svg", "title", "desc", "style", "path", "circle", "text", "g" };
        Assert.All(root.DescendantsAndSelf(), e => Assert.Contains(e.Name.LocalName, allowed));
    }

    /// <summary>Any climate: every mark stays inside the picture and no figure lies on another.</summary>
    [Fact]
    public void Nothing_leaves_the_picture() => Gen.Select(Gen.Double[-60, 55], Gen.Double[0, 5], Gen.Double[0, 3000], Gen.Double[0, 400]).Array[12].Sample(months =>
    {
        var picture = WeatherPicture.Draw([.. months.Select((m, i) => new WeatherMonth(null, i + 1, 30, Math.Min(60, m.Item1 + m.Item2), m.Item1, m.Item3, 5, 10, 12, m.Item4))], "x");
        var spots = picture.Marks.SelectMany(Inside).ToList();
        Assert.All(spots, s => Assert.True(s.X >= 0 && s.Y >= 0 && s.X <= picture.Width && s.Y <= picture.Height, s.ToString()));
        var figures = picture.Marks.OfType<Words>().Where(static w => w.Anchor == Anchor.End).OrderBy(static w => w.At.Y).ToList();
        Assert.All(figures.Zip(figures.Skip(1)), static p => Assert.True(p.Second.At.Y - p.First.At.Y > 13, $"{p.First} {p.Second}"));
        Assert.All(figures, static f => Assert.True(f.At.X - TextWidth.Of(f.Text, f.Size) >= 0, f.Text));
    }, iter: 300);

    private static IEnumerable<Spot> Inside(Mark mark) => mark switch
    {
        Group g => g.Marks.SelectMany(Inside),
        Shape s => s.Corners,
        Strokes s => s.Lines.SelectMany(static l => new[] { l.From, l.To }),
        Disc d => [d.Centre with { X = d.Centre.X - d.Radius }, d.Centre with { X = d.Centre.X + d.Radius }, d.Centre with { Y = d.Centre.Y - d.Radius }, d.Centre with { Y = d.Centre.Y + d.Radius }],
        Words w => [w.At],
        _ => [],
    };
}
