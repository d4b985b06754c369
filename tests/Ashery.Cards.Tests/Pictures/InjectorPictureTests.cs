using System.Xml.Linq;
using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Crops;
using Ashery.Materials;
using Ashery.Solutions.Acids;
using Ashery.Solutions.Can;
using Ashery.Solutions.Foliar;
using Ashery.Solutions.Tanks;
using Ashery.Solutions.Waters;

namespace Ashery.Cards.Tests.Pictures;

/// <summary>Pictures of acid, stock tanks and sprays say what they show and stay within their frame.</summary>
public class InjectorPictureTests
{
    [Theory]
    [InlineData("nitric", 0.6, "hard", 5.8)]
    [InlineData("phosphoric", 0.75, "moderate", 6.5)]
    [InlineData("citric", 1, "soft", 5)]
    [InlineData("sulfuric", 0.35, "saline", 4.5)]
    public void The_curve_of_an_acid(string id, double strength, string water, double pH)
    {
        var report = AcidTreatment.Find(new(SourceWaters.Default.Find(water)!.ToInput(), AcidBottle.OfStrength(Acid.Find(id)!, strength).Value!, AcidTarget.ToPh(pH))).Value!;
        var picture = AcidCurvePicture.Draw(report);
        Inside(picture);
        Assert.Contains($"Just mixed: pH {pH.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)}", picture.Description, StringComparison.Ordinal);
        Assert.Contains(id == "citric" ? " g a litre" : " mL a litre", picture.Description, StringComparison.Ordinal);
        Parses(AcidCurvePicture.Svg(report, SvgFor.File));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Tanks_with_what_is_in_them(int tanks)
    {
        string[] ids = ["calcium-nitrate-double", "potassium-nitrate", "epsom-salt", "mkp", "potassium-sulfate", "ammonium-nitrate", "iron-edta", "boric-acid", "zinc-sulfate-heptahydrate", "urea", "map-technical"];
        var report = TankSplit.Find(new() { Feed = [.. ids.Select((id, i) => new TankMaterial(Of(id), 0.6 / (i + 1)))], Tanks = tanks }).Value!;
        var picture = TankVessels.Draw(report);
        Inside(picture);
        Assert.All(report.Tanks, tank => Assert.Contains($"Tank {tank.Name}: ", picture.Description, StringComparison.Ordinal));
        Assert.All(ids, id => Assert.Contains(Of(id).Name, picture.Description, StringComparison.Ordinal));
        Parses(TankVessels.Svg(report, SvgFor.File));
    }

    [Fact]
    public void Strips_of_a_spray()
    {
        var report = SprayCheck.Judge(new()
        {
            Additions = [new(Of("epsom-salt"), 30), new(Of("urea"), 2), new(Of("boric-acid"), 0.1), new(Of("potassium-chloride"), 1)],
            Water = SourceWaters.Default.Find("hard")!.ToInput(),
            Crop = CropCatalogue.Default.Find("rose"),
        }).Value!;
        var picture = SprayStrips.Draw(report);
        Inside(picture);
        Assert.Contains("Epsom salt: 30 against 20 g/L, past it.", picture.Description, StringComparison.Ordinal);
        Assert.Contains(picture.Marks.OfType<Words>(), static w => w.Text == "not on leaves");
        Parses(SprayStrips.Svg(report, SvgFor.File));
    }

    private static MaterialInWater Of(string id) => MaterialInWater.Of(MaterialCatalogue.Default.Find(id)!).Value!;

    private static void Parses(string svg)
    {
        var root = XDocument.Parse(svg).Root!;
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
    }

    private static void Inside(Picture picture)
    {
        foreach (var spot in picture.Marks.SelectMany(Spots))
        {
            Assert.InRange(spot.X, 0, picture.Width);
            Assert.InRange(spot.Y, 0, picture.Height);
        }
    }

    private static IEnumerable<Spot> Spots(Mark mark) => mark switch
    {
        Shape shape => shape.Corners,
        Strokes strokes => strokes.Lines.SelectMany(static l => new[] { l.From, l.To }),
        Disc disc => [disc.Centre],
        Words words => [words.At],
        Group group => group.Marks.SelectMany(Spots),
        _ => [],
    };
}
