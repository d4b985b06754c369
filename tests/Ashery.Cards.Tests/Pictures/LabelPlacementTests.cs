using Ashery.Cards.Drawing;
using CsCheck;

namespace Ashery.Cards.Tests.Pictures;

public class LabelPlacementTests
{
    private static readonly Box Frame = new(0, 0, 360, 350);

    private static readonly Gen<LabelWish[]> Wishes =
        Gen.Select(Gen.Double[0, 360], Gen.Double[0, 350], Gen.String[Gen.Char['A', 'z'], 0, 24], Gen.Double[-1, 1],
            (x, y, text, side) => new LabelWish(new(x, y), 5, text, 12, Outward: new(side, 1))).Array[0, 40];

    [Fact]
    public void No_label_overlaps_another_or_a_point_or_an_obstacle_or_leaves_the_frame() => Wishes.Sample(
        wishes =>
        {
            Box[] obstacles = [new(100, 100, 150, 140), new(0, 300, 60, 350)];
            var placed = LabelPlacement.Place(wishes, obstacles, Frame, [(new(0, 0), new(360, 350))]);
            var boxes = placed.Where(p => p.Box is not null).Select(p => p.Box!.Value).ToList();
            Assert.Equal(wishes, placed.Select(p => p.Wish));
            for (var i = 0; i < boxes.Count; i++)
            {
                Assert.True(boxes[i].Within(Frame));
                Assert.DoesNotContain(obstacles, o => o.Overlaps(boxes[i]));
                Assert.DoesNotContain(wishes, w => Box.Around(w.Point, w.PointRadius).Overlaps(boxes[i]));
                Assert.DoesNotContain(boxes.Skip(i + 1), b => b.Overlaps(boxes[i]));
            }
        },
        iter: 300);

    [Fact]
    public void The_same_wishes_are_placed_the_same() => Wishes.Sample(
        wishes => Assert.Equal(LabelPlacement.Place(wishes, [], Frame), LabelPlacement.Place(wishes, [], Frame)), iter: 50);

    [Fact]
    public void A_lone_label_stands_to_the_right_and_a_leader_joins_a_far_one()
    {
        var wish = new LabelWish(new(100, 100), 5, "Alone", 12);
        var box = LabelPlacement.Place([wish], [], Frame)[0].Box!.Value;
        Assert.Equal(109, box.Left, 9);
        var fenced = LabelPlacement.Place([wish], [new(60, 80, 140, 120)], Frame)[0];
        Assert.NotNull(fenced.Leader);
    }
}
