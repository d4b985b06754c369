using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Cards.Tests.Support;
using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Planning;
using CsCheck;

namespace Ashery.Cards.Tests.Pictures;

/// <summary>Whatever is drawn, no text lies on another, no mark hides another, nothing leaves the picture.</summary>
public class NoOverlapTests
{
    private static readonly Gen<TriangleView> Views = Gen.Select(
        Gen.Select(Gen.String[Gen.Char['A', 'z'], 1, 40], Gen.Double[0, 60], Gen.Double[0, 60], Gen.Double[0, 60], Gen.Bool).Array[0, 60],
        Gen.Select(Gen.Double[0, 30], Gen.Double[0, 30], Gen.Double[0, 30]),
        (materials, target) => new TriangleView
        {
            Target = new(target.Item1, target.Item2, target.Item3),
            TargetName = "some crop with a long name",
            Blend = materials.Length > 0 ? new(materials[0].Item2, materials[0].Item3, materials[0].Item4) : null,
            BlendName = "12.8-3.8-18.1",
            Materials = [.. materials.Select((m, i) => new TrianglePoint(m.Item1, i % 3 == 0 ? new(m.Item2, 0, 0) : new(m.Item2, m.Item3, m.Item4), m.Item5))],
        });

    private static readonly Gen<YearPlan> Plans = Gen.Select(
        Gen.Select(Gen.Int[0, 364], Gen.Enum<FeedKind>()).Array[0, 150],
        Gen.Select(Gen.Int[0, 364], Gen.Int[0, 364], Gen.Enum<SeasonKind>()).Array[0, 8],
        Gen.Int[0, 364],
        (feeds, seasons, start) =>
        {
            var from = new DateOnly(2026, 1, 1).AddDays(start);
            return Samples.Year with
            {
                From = from,
                To = from.AddYears(1).AddDays(-1),
                Feeds = [.. feeds.OrderBy(f => f.Item1).Select(f => Samples.Feed(from.AddDays(f.Item1), f.Item2, "feed", 1, "pot"))],
                Seasons = [.. seasons.Select(s => new DatedSeason(s.Item3, from.AddDays(Math.Min(s.Item1, s.Item2)), from.AddDays(Math.Max(s.Item1, s.Item2))))],
            };
        });

    [Fact]
    public void Triangle() => Views.Sample(view => Check(Ashery.Cards.Pictures.Triangle.Draw(view)), iter: 200);

    [Fact]
    public void Year_strip() => Gen.Select(Plans, Gen.Int[300, 1200], Gen.Int[0, 364]).Sample(
        (plan, width, today) =>
        {
            var picture = YearStrip.Draw(plan, plan.From.AddDays(today), width);
            Check(picture);

            // Groups other than seasons are feeds; one for each day and kind.
            var marks = picture.Marks.OfType<Group>().Where(g => !g.Title.Contains(" season, ", StringComparison.Ordinal)).Select(g => Around(g.Marks)).ToList();
            Assert.Equal(plan.Feeds.Select(f => (f.Date, f.Kind)).Distinct().Count(), marks.Count);
            Apart(marks, "marks");
            Assert.All(marks, m => Assert.True(m.Within(new Box(0, 0, picture.Width, picture.Height))));

            // Seasons on one row do not cross; those that overlap in time stand on different rows.
            Apart([.. picture.Marks.OfType<Group>().Where(g => g.Title.Contains(" season, ", StringComparison.Ordinal)).Select(g => Shrink(Around(g.Marks)))], "seasons");
        },
        iter: 200);

    [Fact]
    public void Root_zone_chart() => Gen.Select(Plans, Gen.Int[300, 1200], Gen.Double[0.01, 30], Gen.Double[1, 900]).Sample(
        (plan, width, ec, nitrogen) =>
        {
            var view = Samples.RootZone with { From = plan.From, Feeds = plan.Feeds };
            view = view with { Course = view.Course with { Limits = view.Course.Limits with { MostEc = ec, MostNitrogen = nitrogen } } };
            var picture = RootZoneChart.Draw(view, width);
            Check(picture);
            var box = new Box(0, 0, picture.Width, picture.Height);
            Assert.All(picture.Marks.OfType<Group>().Where(g => g.Title.Contains(": feed", StringComparison.Ordinal)).Select(g => Around(g.Marks)), m => Assert.True(m.Within(box)));
        },
        iter: 200);

    [Fact]
    public void Bags_and_flows()
    {
        Check(StockBars.Draw(StockSamples.Ledger, StockSamples.Forecast));
        Gen.Select(Gen.String[Gen.Char['A', 'z'], 1, 60].Array[3, 12], Gen.Double[0.001, 9000].Array[30]).Sample(
            (names, grams) =>
            {
                FlowBox Box(int column, int i) => new(FormattableString.Invariant($"{column} {i}"), names[i], names[(i + 1) % names.Length]);
                List<FlowBox>[] columns = [.. Enumerable.Range(0, 3).Select(c => Enumerable.Range(0, 1 + (names.Length / (c + 1))).Select(i => Box(c, i % names.Length)).DistinctBy(b => b.Key).ToList())];
                var links = grams.Select((g, i) => new FlowLink(columns[i % 2][i % columns[i % 2].Count].Key, columns[(i % 2) + 1][i % columns[(i % 2) + 1].Count].Key, g, i % 3 == 0)).ToList();
                Check(FlowPicture.Draw(new("flow", columns[0], columns[1], columns[2], links)));
            },
            iter: 100);
    }

    private static void Check(Picture picture)
    {
        var texts = All(picture.Marks).OfType<Words>().Where(w => w.Text.Length > 0).Select(w => Shrink(BoxOf(w))).ToList();
        Apart(texts, "texts");
        Assert.All(texts, t => Assert.True(t.Within(new Box(0, 0, picture.Width, picture.Height)), FormattableString.Invariant($"{t} leaves {picture.Width} x {picture.Height}")));
    }

    private static void Apart(List<Box> boxes, string what)
    {
        for (var i = 0; i < boxes.Count; i++)
        {
            for (var j = i + 1; j < boxes.Count; j++)
            {
                Assert.False(boxes[i].Overlaps(boxes[j]), $"{what}: {boxes[i]} overlaps {boxes[j]}");
            }
        }
    }

    private static IEnumerable<Mark> All(IEnumerable<Mark> marks) => marks.SelectMany(m => m is Group g ? All(g.Marks) : [m]);

    /// <summary>From a little above the lower-case letters' top to the foot of their tails.</summary>
    private static Box BoxOf(Words w)
    {
        var width = TextWidth.Of(w.Text, w.Size, w.Face);
        var left = w.At.X - (w.Anchor switch { Anchor.Middle => width / 2, Anchor.End => width, _ => 0 });
        return new(left, w.At.Y - (0.8 * w.Size), left + width, w.At.Y + (0.22 * w.Size));
    }

    private static Box Around(IEnumerable<Mark> marks)
    {
        var spots = marks.SelectMany(m => m switch
        {
            Shape s => s.Corners,
            Disc d => [new(d.Centre.X - d.Radius, d.Centre.Y - d.Radius), new(d.Centre.X + d.Radius, d.Centre.Y + d.Radius)],
            _ => (IEnumerable<Spot>)[],
        }).ToList();
        return new(spots.Min(s => s.X), spots.Min(s => s.Y), spots.Max(s => s.X), spots.Max(s => s.Y));
    }

    private static Box Shrink(Box box) => new(box.Left + 0.01, box.Top + 0.01, box.Right - 0.01, box.Bottom - 0.01);
}
