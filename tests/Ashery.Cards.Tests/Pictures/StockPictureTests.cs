using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Cards.Tests.Support;
using Ashery.Stock;

namespace Ashery.Cards.Tests.Pictures;

/// <summary>Bags, ways of a lot, and codes, as a person approved them and as a reader of another house reads them.</summary>
public class StockPictureTests
{
    [Fact]
    public void Bags_of_the_demo() => Approval.Check(StockBars.Svg(StockSamples.Ledger, StockSamples.Forecast, SvgFor.File), "stock", "svg");

    [Fact]
    public void Trace_of_a_batch() =>
        Approval.Check(FlowPicture.Svg(FlowView.Of(Trace.OfBatch(StockSamples.Ledger, StockSamples.Batch), StockSamples.Ledger, Demo.Garden), SvgFor.File), "trace", "svg");

    [Fact]
    public void Recall_of_a_makers_lot() =>
        Approval.Check(FlowPicture.Svg(FlowView.Of(Recall.OfLot(StockSamples.Ledger, "N-26-02"), StockSamples.Ledger, Demo.Garden), SvgFor.File), "recall", "svg");

    [Fact]
    public void Every_bag_drawn_is_told_in_words()
    {
        var picture = StockBars.Draw(StockSamples.Ledger, StockSamples.Forecast);
        Assert.All(StockBars.Shown(StockSamples.Ledger, StockSamples.Forecast), s => Assert.Contains(s.Line.Name, picture.Description, StringComparison.Ordinal));
        Assert.Equal(StockBars.Shown(StockSamples.Ledger, StockSamples.Forecast).Count, picture.Marks.OfType<Group>().Count());
    }

    [Fact]
    public void Many_pots_share_a_box()
    {
        var batch = StockSamples.Batch;
        var uses = Enumerable.Range(0, 40).Select(i => new FeedUse(Guid.NewGuid(), batch.Made, batch.FeedId, FormattableString.Invariant($"q{i}"), 1, 1, batch.Id, false)).ToList();
        var ledger = StockSamples.Ledger with { Batches = StockSamples.Ledger.Batches with { Uses = uses } };
        var view = FlowView.Of(Trace.OfBatch(ledger, batch), ledger, Demo.Garden);
        Assert.Equal(14, view.Pots.Count);
        Assert.Equal("27 more", view.Pots[^1].Name);
        Assert.Equal(40, view.Links.Where(l => l.From.StartsWith("batch", StringComparison.Ordinal)).Sum(l => l.Grams), 1e-9);
    }

    // The judge is another library's reader (ZXing.Net); it is given the strokes we draw, as grey values.
    [Theory]
    [InlineData("http://127.0.0.1:5080/batches/0b6a5a1e-8b5b-4c1e-9a9e-3f5f3b1f7a10")]
    [InlineData("https://terrace.example/batches/0b6a5a1e-8b5b-4c1e-9a9e-3f5f3b1f7a10?x=\u00e9")]
    public void A_code_reads_back_as_its_address(string address)
    {
        var picture = QrPicture.Draw(address);
        var side = (int)picture.Width;
        var grey = Enumerable.Repeat((byte)255, side * side).ToArray();
        var strokes = Assert.Single(picture.Marks.OfType<Strokes>());
        foreach (var (from, to) in strokes.Lines)
        {
            for (var y = (int)(from.Y - 2); y < from.Y + 2; y++)
            {
                Array.Fill(grey, (byte)0, (y * side) + (int)from.X, (int)(to.X - from.X));
            }
        }

        var source = new ZXing.RGBLuminanceSource(grey, side, side, ZXing.RGBLuminanceSource.BitmapFormat.Gray8);
        Assert.Equal(address, new ZXing.QrCode.QRCodeReader().decode(new(new ZXing.Common.HybridBinarizer(source)))?.Text);
    }
}
