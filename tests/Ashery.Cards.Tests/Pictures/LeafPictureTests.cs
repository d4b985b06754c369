using System.Xml.Linq;
using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures.Leaves;
using Ashery.Clinic;

namespace Ashery.Cards.Tests.Pictures;

/// <summary>The clinic's drawings: each that a question, an answer or a cause asks for is there and is sound SVG with words.</summary>
public class LeafPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Ids => [.. LeafPictures.All];

    [Fact]
    public void Every_picture_the_clinic_asks_for_is_drawn_and_every_drawing_is_asked_for()
    {
        var asked = PlantClinic.Questions.SelectMany(static q => q.Choices.Select(static c => c.PictureId).Append(q.PictureId))
            .Concat(PlantClinic.Diagnose(new()).Value!.Causes.Select(static c => c.PictureId)).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        Assert.Equal(LeafPictures.All.Order(StringComparer.Ordinal), asked);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_drawing_is_sound_svg_with_title_and_description_in_its_frame(string id)
    {
        var svg = XElement.Parse(LeafPictures.Svg(id, "q-1 " + id));
        Assert.Equal("0 0 120 120", svg.Attribute("viewBox")!.Value);
        Assert.Equal(2, svg.Attribute("aria-labelledby")!.Value.Split(' ').Count(name => svg.Elements().Any(e => e.Attribute("id")?.Value == name && e.Value.Length > 3)));
        Assert.Equal(LeafPictures.Title(id), svg.Element(Svg + "title")!.Value);
        Assert.True(svg.Descendants().Count() > 6, "Something is drawn.");
        Assert.DoesNotContain("NaN", svg.ToString(), StringComparison.Ordinal);
        Assert.Contains(svg.Descendants(), static e => e.Attribute("class")?.Value.StartsWith("as-s-", StringComparison.Ordinal) == true);
        Assert.Equal(LeafPictures.Svg(id), LeafPictures.Svg(id));
        var silent = XElement.Parse(LeafPictures.Svg(id, silent: true));
        Assert.Equal(("true", null), (silent.Attribute("aria-hidden")?.Value, silent.Element(Svg + "title")?.Value));
        Assert.NotNull(XElement.Parse(LeafPictures.Svg(id, use: SvgFor.File)).Element(Svg + "style"));
    }

    [Fact]
    public void No_two_drawings_are_alike() =>
        Assert.Equal(LeafPictures.All.Count, LeafPictures.All.Select(static id => LeafPictures.Svg(id, silent: true)).Distinct(StringComparer.Ordinal).Count());

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("<script>")]
    public void An_id_that_does_not_exist_draws_nothing(string? id) => Assert.Empty(LeafPictures.Svg(id));
}
