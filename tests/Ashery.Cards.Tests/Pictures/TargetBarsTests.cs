using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Cards.Tests.Support;
using Ashery.Materials;
using Ashery.Solutions.Can;
using Ashery.Solutions.Targets;
using Ashery.Solutions.Waters;
using CsCheck;

namespace Ashery.Cards.Tests.Pictures;

public class TargetBarsTests
{
    private static readonly string[] Shelf = ["calcium-nitrate-double", "potassium-nitrate", "mkp", "epsom-salt", "ammonium-nitrate", "potassium-sulfate", "calcium-chloride-dihydrate"];

    [Fact]
    public void Bars_as_approved() => Approval.Check(
        TargetBars.Svg(Found("hard", "N=150 P=30 K=160 Ca=60 Mg=30 Na<=20", Shelf[1..5]), SvgFor.File), "target", "svg");

    [Fact]
    public void A_miss_has_a_diamond_and_is_said()
    {
        var picture = TargetBars.Draw(Found("hard", "N=100 Ca=60", ["potassium-nitrate"]));
        Assert.Contains(picture.Marks.OfType<Shape>(), s => s.Corners.Count == 4 && s.Fill == Tone.Ember);
        Assert.Contains("Ca: 100 mg/L, of which 100 from the water; 60 wished.", picture.Description, StringComparison.Ordinal);
        Assert.Contains(picture.Marks.OfType<Words>(), t => t.Text.Contains("+67 %", StringComparison.Ordinal));
    }

    /// <summary>Any target in any water: all is inside the picture and no label lies on another.</summary>
    [Fact]
    public void Nothing_leaves_the_picture_and_no_text_lies_on_another() => Gen.Select(Gen.Shuffle(Shelf), Gen.Int[1, 7], Gen.Int[0, 4], Gen.Double[1, 600].Array[6]).Sample(
        (ids, n, water, figures) =>
        {
            var name = new[] { "pure", "soft", "moderate", "hard", "saline" }[water];
            var wishes = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"N={figures[0]:F1} P={figures[1]:F1} K={figures[2]:F1} Ca={figures[3]:F1} Cl<={figures[4]:F1} S>={figures[5] / 100:F2}");
            var answer = TargetSearch.Find(Request(name, wishes, ids[..n]));
            if (!answer.Ok || answer.Value.Recipes.Count == 0)
            {
                return;
            }

            var picture = TargetBars.Draw(answer.Value.Recipes[0]);
            var boxes = picture.Marks.OfType<Words>().Select(Around).ToList();
            Assert.All(boxes, b => Assert.True(b.Left >= -1 && b.Top >= -1 && b.Right <= picture.Width + 1 && b.Bottom <= picture.Height + 1));
            for (var i = 0; i < boxes.Count; i++)
            {
                for (var j = i + 1; j < boxes.Count; j++)
                {
                    Assert.False(boxes[i].Left < boxes[j].Right && boxes[j].Left < boxes[i].Right && boxes[i].Top < boxes[j].Bottom && boxes[j].Top < boxes[i].Bottom);
                }
            }
        },
        iter: 20, seed: "0000000000000");

    private static TargetRequest Request(string water, string wishes, IEnumerable<string> from) => new()
    {
        Target = new(TargetReader.ReadAll(wishes).Value!),
        Water = SourceWaters.Default.Find(water)!.ToInput(),
        Offers = [.. from.Select(id => new TargetOffer(MaterialInWater.Of(MaterialCatalogue.Default.Find(id)!).Value!))],
        Best = 1,
    };

    private static TargetRecipe Found(string water, string wishes, IEnumerable<string> from) => TargetSearch.Find(Request(water, wishes, from)).Value!.Recipes[0];

    private static (double Left, double Top, double Right, double Bottom) Around(Words words)
    {
        var width = TextWidth.Of(words.Text, words.Size, words.Face);
        var left = words.At.X - (words.Anchor switch { Anchor.End => width, Anchor.Middle => width / 2, _ => 0 });
        return (left, words.At.Y - (words.Size * 0.78), left + width, words.At.Y + (words.Size * 0.22));
    }
}
