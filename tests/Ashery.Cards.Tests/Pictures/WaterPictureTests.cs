using System.Xml.Linq;
using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Cards.Tests.Support;
using Ashery.Solutions.Waters;
using CsCheck;

namespace Ashery.Cards.Tests.Pictures;

public class WaterPictureTests
{
    private static readonly WaterReport Part = new()
    {
        Id = "part", Name = "part", PH = 7.4,
        Lines = [new("hardness", 12, "°dH"), new("alkalinity", 160), new("Na", 31), new("SO4", 44)],
    };

    private static readonly WaterReport Off = new()
    {
        Id = "off", Name = "off", PH = 7.2,
        Lines = [new("Ca", 62), new("Mg", 9), new("Na", 48), new("K", 3), new("alkalinity", 130), new("SO4", 38), new("Cl", 34), new("NO3", 6)],
    };

    [Fact]
    public void Columns_with_estimates_as_approved() => Approval.Check(ChargeColumns.Svg(Read(Part), SvgFor.File), "charges", "svg");

    [Fact]
    public void Columns_with_a_gap_as_approved() => Approval.Check(ChargeColumns.Svg(Read(Off), SvgFor.File), "charges-gap", "svg");

    [Fact]
    public void Strips_as_approved() => Approval.Check(WaterStrips.Svg(WaterSuitability.Judge(Read(Part), WaterSensitivity.Sensitive), SvgFor.File), "strips", "svg");

    [Fact]
    public void What_colour_tells_words_tell_too()
    {
        var columns = ChargeColumns.Draw(Read(Off));
        Assert.Contains("were added to close the balance", columns.Description, StringComparison.Ordinal);
        Assert.Contains(columns.Marks.OfType<Group>(), static g => g.Title.StartsWith("Gap: ", StringComparison.Ordinal));
        Assert.Contains("(estimated)", ChargeColumns.Draw(Read(Part)).Description, StringComparison.Ordinal);
        var strips = WaterStrips.Draw(WaterSuitability.Judge(Read(Off), WaterSensitivity.Sensitive));
        Assert.Contains("watch above", strips.Description, StringComparison.Ordinal);
    }

    /// <summary>Any water: the columns are equally high, all is inside the picture and no text lies on another.</summary>
    [Fact]
    public void Nothing_leaves_the_picture_and_no_text_lies_on_another() => Gen.Select(Gen.Double[0, 12].Array[7], Gen.Double[0, 0.4].Array[4], Gen.Bool.Array[11]).Sample(
        (majors, traces, kept) =>
        {
            string[] names = ["Ca", "Mg", "Na", "K", "alkalinity", "SO4", "Cl", "NO3", "NH4", "Fe", "Zn"];
            var lines = names.Zip([.. majors, .. traces], static (n, v) => new WaterLine(n, v, "meq/L")).Where((_, i) => kept[i]).ToList();
            var read = WaterReports.Read(new WaterReport { Id = "w", Name = "w", Lines = lines });
            if (!read.Ok)
            {
                return;
            }

            foreach (var picture in new[] { ChargeColumns.Draw(read.Value), WaterStrips.Draw(WaterSuitability.Judge(read.Value, WaterSensitivity.Sensitive)) })
            {
                XDocument.Parse(SvgWriter.Write(picture, SvgFor.Page));
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
        iter: 300, seed: "0000000000000");

    private static Box Around(Words w)
    {
        var width = TextWidth.Of(w.Text, w.Size, w.Face);
        var left = w.At.X - (w.Anchor switch { Anchor.Middle => width / 2, Anchor.End => width, _ => 0 });
        return new(left, w.At.Y - (0.76 * w.Size), left + width, w.At.Y + (0.22 * w.Size));
    }

    private static WaterReading Read(WaterReport report) => WaterReports.Read(report).Value!;
}
