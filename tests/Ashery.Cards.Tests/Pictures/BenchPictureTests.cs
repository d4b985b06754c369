using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Cards.Tests.Support;
using Ashery.Feeds;
using CsCheck;

namespace Ashery.Cards.Tests.Pictures;

public class BenchPictureTests
{
    private static readonly Gen<BenchPot> AnyPot = Gen.Select(Gen.String[Gen.Char['A', 'z'], 1, 40], Gen.Double[0.2, 60], Gen.Enum<FeedKind>(), Gen.Enum<BenchSign>(), static (n, l, k, s) => new BenchPot(n, l, k, s));

    [Fact]
    public void Bench_as_approved() => Approval.Check(
        BenchPicture.Svg(
        [
            new("Rose", 20, FeedKind.Mineral, BenchSign.Given), new("Lantana", 8, FeedKind.Organic, BenchSign.Due), new("Fuchsia", 3, FeedKind.Organic, BenchSign.Overdue),
            new("Gardenia", 5, FeedKind.Foliar, BenchSign.Held), new("Oleander", 30, FeedKind.TraceElements, BenchSign.Skipped), new("Cutting", 0.5, FeedKind.Inoculant, BenchSign.Coming),
        ], use: SvgFor.File), "bench", "svg");

    [Fact]
    public void Each_pot_is_said_with_what_became_of_it()
    {
        var picture = BenchPicture.Draw([new("Rose", 20, FeedKind.Mineral, BenchSign.Given), new("Fuchsia", 3, null, BenchSign.Held)]);
        Assert.Equal("Rose: given, mineral. Fuchsia: not today.", picture.Description);
    }

    [Fact]
    public void Nothing_leaves_the_picture_and_no_name_lies_on_another() => AnyPot.Array[1, 60].Sample(
        static pots =>
        {
            foreach (var wide in (double[])[360, 1100])
            {
                var picture = BenchPicture.Draw(pots, wide);
                var words = picture.Marks.OfType<Words>().Concat(picture.Marks.OfType<Group>().SelectMany(static g => g.Marks.OfType<Words>())).ToList();
                var boxes = words.Select(static w => (Width: TextWidth.Of(w.Text, w.Size, w.Face), Words: w)).Select(static t => new Box(
                    t.Words.Anchor switch { Anchor.Middle => t.Words.At.X - (t.Width / 2), Anchor.End => t.Words.At.X - t.Width, _ => t.Words.At.X },
                    t.Words.At.Y - (t.Words.Size * 0.8),
                    t.Words.Anchor switch { Anchor.Middle => t.Words.At.X + (t.Width / 2), Anchor.End => t.Words.At.X, _ => t.Words.At.X + t.Width },
                    t.Words.At.Y + (t.Words.Size * 0.2))).ToList();
                Assert.All(boxes, b => Assert.True(b.Within(new(-1, -1, picture.Width + 1, picture.Height + 1)), b.ToString()));
                for (var i = 0; i < boxes.Count; i++)
                {
                    Assert.DoesNotContain(boxes[(i + 1)..], b => b.Overlaps(boxes[i]));
                }
            }
        },
        iter: 100);
}
