using System.Xml.Linq;
using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Cards.Tests.Support;
using Ashery.Journal;
using CsCheck;

namespace Ashery.Cards.Tests.Pictures;

public class ReadingsChartTests
{
    [Fact]
    public void Readings_as_approved() => Approval.Check(ReadingsChart.Svg(SeasonSample.Readings, use: SvgFor.File), "readings", "svg");

    [Fact]
    public void The_words_say_what_the_picture_shows()
    {
        var words = ReadingsChart.Draw(SeasonSample.Readings).Description;
        Assert.Contains("Leachate EC: 5 readings from 2.1 to 4.1 mS/cm, band 1.3 to 3.9, 1 outside.", words, StringComparison.Ordinal);
        Assert.Contains("Flowers: 5 readings from 0 to 23.", words, StringComparison.Ordinal);
        Assert.Contains("12 days of feeding", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("জবা ফুল 🌺")]
    public void Hostile_names_stay_text(string name)
    {
        var view = SeasonSample.Readings with { Name = name, Events = [new(SeasonSample.From, name)], Feeds = [new(SeasonSample.From, Feeds.FeedKind.Foliar, name)] };
        var allowed = new[] { "svg", "title", "desc", "style", "path", "circle", "text", "g" };
        Assert.All(XDocument.Parse(ReadingsChart.Svg(view)).Root!.DescendantsAndSelf(), e => Assert.Contains(e.Name.LocalName, allowed));
    }

    /// <summary>Any readings: every mark stays inside the picture, no two figures of an axis lie on each other, and a higher reading never lies lower.</summary>
    [Fact]
    public void Nothing_leaves_the_picture_and_higher_is_higher() => Gen.Select(Gen.Double[0, 4000].Array[1, 30], Gen.Double[-3, 2], Gen.Int[0, 3000], Gen.Int[240, 1100]).Sample((values, power, days, width) =>
    {
        var scaled = values.Select(v => Math.Round(v * Math.Pow(10, power), 4)).ToArray();
        var series = new ReadingSeries(MeasuredKind.Weight, [.. scaled.Select((v, i) => new Reading(SeasonSample.From.AddDays(i % (days + 1)), null, v, Guid.Empty)).OrderBy(static r => r.Day)]);
        var picture = ReadingsChart.Draw(new("x", SeasonSample.From, SeasonSample.From.AddDays(days), [new(series, null)]), width);
        Assert.All(picture.Marks.SelectMany(Inside), s => Assert.True(s.X >= -1e-9 && s.Y >= 0 && s.X <= picture.Width && s.Y <= picture.Height, s.ToString()));
        var figures = picture.Marks.OfType<Words>().Where(static w => w.Anchor == Anchor.End).OrderBy(static w => w.At.Y).ToList();
        Assert.All(figures.Zip(figures.Skip(1)), static p => Assert.True(p.Second.At.Y - p.First.At.Y > 11, $"{p.First} {p.Second}"));
        var dots = picture.Marks.OfType<Group>().SelectMany(static g => g.Marks).OfType<Disc>().Select(static d => d.Centre.Y).ToList();
        Assert.All(dots.Zip(series.Points).OrderBy(static d => d.Second.Value).Zip(dots.Zip(series.Points).OrderBy(static d => d.Second.Value).Skip(1)), static p => Assert.True(p.First.First >= p.Second.First - 1e-9));
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
