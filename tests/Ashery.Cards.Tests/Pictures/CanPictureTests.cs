using System.Xml.Linq;
using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Cards.Tests.Support;
using Ashery.Crops;
using Ashery.Materials;
using Ashery.Solutions;
using Ashery.Solutions.Can;
using Ashery.Solutions.Waters;
using CsCheck;

namespace Ashery.Cards.Tests.Pictures;

public class CanPictureTests
{
    private static readonly Crop Rose = CropCatalogue.Default.Find("rose")!;

    private static readonly string[] Soluble = [.. MaterialCatalogue.Default.All.Where(m => MaterialInWater.Of(m).Ok).Select(m => m.Id)];

    [Fact]
    public void Can_as_approved()
    {
        var report = Made("hard", ("calcium-nitrate-double", 0.7), ("epsom-salt", 0.4), ("mkp", 0.2));
        Approval.Check(CanPicture.Svg(report, CanWindow.For(Rose, report), SvgFor.File), "can", "svg");
    }

    [Fact]
    public void Bars_as_approved() => Approval.Check(NearnessBars.Svg(Made("hard", ("calcium-nitrate-double", 0.7), ("epsom-salt", 0.4), ("mkp", 0.2)), SvgFor.File), "near", "svg");

    [Fact]
    public void Nothing_near_is_no_picture() => Assert.Empty(NearnessBars.Svg(Made("pure", ("urea", 1))));

    [Fact]
    public void Quick_and_slow_are_told_by_words_and_shape()
    {
        var picture = NearnessBars.Draw(Made("hard", ("mkp", 0.5)));
        Assert.Contains("hydroxyapatite: +", picture.Description, StringComparison.Ordinal);
        Assert.Contains("slow.", picture.Description, StringComparison.Ordinal);
        Assert.Contains(picture.Marks.OfType<Group>(), g => g.Title.EndsWith("slow", StringComparison.Ordinal) && g.Marks.OfType<Disc>().Any());
        Assert.Contains(picture.Marks.OfType<Group>(), g => g.Title.EndsWith("quick", StringComparison.Ordinal) && !g.Marks.OfType<Disc>().Any());
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\"><img src=x onerror=alert(1)>")]
    [InlineData("জবা ফুল 🌺 山茶花")]
    public void Hostile_names_stay_text(string name)
    {
        var report = Made("soft", ("mkp", 1), ("urea", 1));
        var root = XDocument.Parse(CanPicture.Svg(report, CanWindow.For(Rose with { Name = name }, report))).Root!;
        var allowed = new[] { "svg", "title", "desc", "style", "path", "circle", "text", "g" };
        Assert.All(root.DescendantsAndSelf(), e => Assert.Contains(e.Name.LocalName, allowed));
    }

    /// <summary>Any can, in any water: all is inside the picture and no label lies on another.</summary>
    [Fact]
    public void Nothing_leaves_the_picture_and_no_text_lies_on_another() => Gen.Select(Gen.Shuffle(Soluble), Gen.Int[1, 4], Gen.Double[0.001, 200], Gen.Int[0, 5], Gen.Bool).Sample(
        (ids, n, grams, water, withCrop) =>
        {
            var name = new[] { "pure", "rain", "soft", "moderate", "hard", "saline" }[water];
            var report = Made(name, [.. ids.Take(n).Select(id => (id, grams))]);
            foreach (var picture in new[] { CanPicture.Draw(report, withCrop ? CanWindow.For(Rose, report) : null), NearnessBars.Draw(report) })
            {
                var texts = picture.Marks.OfType<Words>().ToList();
                var boxes = texts.Select(Around).ToList();
                Assert.All(boxes, b => Assert.True(b.Left >= -1 && b.Top >= -1 && b.Right <= picture.Width + 1 && b.Bottom <= picture.Height + 1, $"{b} {texts[boxes.IndexOf(b)].Text}"));
                for (var i = 0; i < boxes.Count; i++)
                {
                    for (var j = i + 1; j < boxes.Count; j++)
                    {
                        Assert.False(boxes[i].Overlaps(boxes[j]), $"{texts[i].Text} on {texts[j].Text}");
                    }
                }
            }
        },
        iter: 60);

    private static Box Around(Words w)
    {
        var width = TextWidth.Of(w.Text, w.Size, w.Face);
        var left = w.At.X - (w.Anchor switch { Anchor.Middle => width / 2, Anchor.End => width, _ => 0 });
        return new(left, w.At.Y - (0.76 * w.Size), left + width, w.At.Y + (0.22 * w.Size));
    }

    private static CanReport Made(string water, params (string Id, double Grams)[] parts) => CanMaker.Make(CanRequest.In(
        SourceWaters.Default.Find(water)!,
        [.. parts.Select(p => new CanAddition(MaterialInWater.Of(MaterialCatalogue.Default.Find(p.Id)!).Value!, p.Grams))],
        20, Air.Closed)).Value!;
}
