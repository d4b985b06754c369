using System.Xml.Linq;
using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Cards.Tests.Support;

namespace Ashery.Cards.Tests.Pictures;

public class PictureTests
{
    [Fact]
    public void Triangle_as_approved() => Approval.Check(Triangle.Svg(Samples.Shelf, SvgFor.File), "triangle", "svg");

    [Fact]
    public void Year_strip_as_approved() =>
        Approval.Check(YearStrip.Svg(Samples.Year, new DateOnly(2027, 4, 9), use: SvgFor.File), "year-strip", "svg");

    [Fact]
    public void Wide_year_strip_as_approved() =>
        Approval.Check(YearStrip.Svg(Samples.Year, width: 720, use: SvgFor.File), "year-strip-wide", "svg");

    [Fact]
    public void Root_zone_as_approved() => Approval.Check(RootZoneChart.Svg(Samples.RootZone, use: SvgFor.File), "root-zone", "svg");

    [Fact]
    public void A_root_zone_chart_says_its_facts()
    {
        var picture = RootZoneChart.Draw(Samples.RootZone);
        Assert.Contains("limit 2.0", picture.Description, StringComparison.Ordinal);
        Assert.Contains("largest chance to pass it on a day 12 %", picture.Description, StringComparison.Ordinal);
        Assert.Contains(picture.Marks.OfType<Group>(), g => g.Title.StartsWith("Measured on", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\"><img src=x onerror=alert(1)>")]
    [InlineData("]]>&amp;'\u0000\u0008\uFFFE\uD800 \u202Egnp.exe")]
    [InlineData("জবা ফুল 🌺 山茶花")]
    public void Hostile_names_stay_text(string name)
    {
        var view = Samples.Shelf with { TargetName = name, BlendName = name, Materials = [new(name, new(1, 2, 3), true), new(name, new(3, 2, 1)), new("x", new(1, 0, 0))] };
        var feed = Samples.Feed(new(2027, 3, 3), Feeds.FeedKind.Mineral, name, 1, name);
        foreach (var svg in new[] { Triangle.Svg(view), Triangle.Svg(view, SvgFor.File, name), YearStrip.Svg(Samples.Year with { Feeds = [feed] }), RootZoneChart.Svg(Samples.RootZone with { Name = name, Feeds = [feed] }) })
        {
            var root = XDocument.Parse(svg).Root!;
            var allowed = new[] { "svg", "title", "desc", "style", "path", "circle", "text", "g" };
            Assert.All(root.DescendantsAndSelf(), e => Assert.Contains(e.Name.LocalName, allowed));
            Assert.DoesNotContain(root.DescendantsAndSelf().Attributes(), a => a.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
            Assert.DoesNotContain('\u202E', svg);
        }
    }

    [Fact]
    public void Figures_that_cannot_be_drawn_are_left_out()
    {
        var view = new TriangleView { Target = new(double.NaN, 1, 1), Blend = new(0, 0, 0), Materials = [new("bad", new(-1, 2, 3)), new("huge", new(double.MaxValue, double.MaxValue, 1)), new("none", default)] };
        var svg = Triangle.Svg(view);
        Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
        Assert.Equal("N-P-K triangle", XDocument.Parse(svg).Root!.Elements().First().Value);
    }

    [Fact]
    public void A_picture_says_what_it_shows()
    {
        var root = XDocument.Parse(Triangle.Svg(Samples.Shelf)).Root!;
        Assert.Equal("img", root.Attribute("role")!.Value);
        var desc = root.Elements().Single(e => e.Name.LocalName == "desc").Value;
        Assert.Contains("Target: 38 % N, 13 % P₂O₅, 50 % K₂O.", desc, StringComparison.Ordinal);
        Assert.Contains("Epsom salt", desc, StringComparison.Ordinal);
        Assert.Equal("triangle-title triangle-desc", root.Attribute("aria-labelledby")!.Value);
    }
}
