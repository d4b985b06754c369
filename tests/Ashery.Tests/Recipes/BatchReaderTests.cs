using Ashery.Recipes;

namespace Ashery.Tests.Recipes;

public class BatchReaderTests
{
    [Theory]
    [InlineData("15g", 15, 15)]
    [InlineData("75 g", 75, 75)]
    [InlineData("0.5kg", 500, 500)]
    [InlineData("10g..15g", 10, 15)]
    [InlineData("10..15g", 10, 15)]
    [InlineData("0.9kg .. 1kg", 900, 1000)]
    [InlineData("2oz", 56.699, 56.699)]
    public void Reads_a_batch_or_a_window(string text, double from, double to)
    {
        var batch = BatchReader.Parse(text).Value!;
        Assert.Equal(from, batch.From.Grams, 0.001);
        Assert.Equal(to, batch.To.Grams, 0.001);
    }

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("15")]
    [InlineData("0g")]
    [InlineData("-5g")]
    [InlineData("NaN g")]
    [InlineData("1e99kg")]
    [InlineData("1,5kg")]
    [InlineData("15 stone")]
    [InlineData("15g..10g")]
    [InlineData("..15g")]
    [InlineData("10g..")]
    [InlineData("g")]
    public void Refuses_what_is_no_batch(string? text)
    {
        var read = BatchReader.Parse(text);
        Assert.False(read.Ok);
        Assert.StartsWith("batch", read.Problems[0].Field, StringComparison.Ordinal);
        Assert.NotEmpty(read.Problems[0].WayOut);
    }
}
