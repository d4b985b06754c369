using Ashery.Blending;

namespace Ashery.Tests.Blending;

public class UncertaintyTests
{
    [Fact]
    public void Without_ranges_every_figure_is_the_typical_one()
    {
        var request = Request(spread: 0, amountError: 0);
        var answer = UncertaintyDraws.Run(request);
        for (var b = 0; b < request.Blends.Count; b++)
        {
            var error = request.Blends[b].RatioError;
            Assert.Equal(error, answer.Blends[b].Median, 12);
            Assert.Equal(error, answer.Blends[b].Percentile95, 12);
            Assert.Equal(error, answer.Blends[b].WorstCase, 9);
        }
    }

    [Fact]
    public void Worst_case_is_that_of_the_worst_corner()
    {
        var request = Request(spread: 0.2, amountError: 0.1);
        foreach (var blend in request.Blends)
        {
            Assert.Equal(WorstCorner(request, blend), WorstCase.Of(request, blend), 9);
        }
    }

    [Fact]
    public void Percentiles_are_ordered_below_the_worst_case_and_the_same_for_the_same_seed()
    {
        var request = Request(spread: 0.2, amountError: 0.1);
        var first = UncertaintyDraws.Run(request);
        var second = UncertaintyDraws.Run(request);
        for (var b = 0; b < first.Blends.Count; b++)
        {
            var u = first.Blends[b];
            Assert.True(u.Median <= u.Percentile95 && u.Percentile95 <= u.WorstCase);
            Assert.Equal(u.Median, second.Blends[b].Median);
            Assert.Equal(u.Percentile95, second.Blends[b].Percentile95);
        }

        var ranked = first.ByPercentile95.Select(b => first.Blends[b].Percentile95).ToArray();
        Assert.Equal(ranked.Order(), ranked);
    }

    /// <summary>
    /// A triangular distribution has its median, 5th and 95th percentile in closed form: for (0.1, 0.2, 0.3) they are 0.2,
    /// 0.1 + sqrt(0.05 * 0.2 * 0.1) and 0.3 - sqrt(0.05 * 0.2 * 0.1).
    /// </summary>
    [Fact]
    public void A_single_content_is_drawn_from_its_triangle()
    {
        var blend = new BlendRequest { Columns = [new Column("meal", [0.2])], Target = [1] };
        var request = new UncertaintyRequest
        {
            Blend = blend,
            Blends = BlendSearch.Find(blend).Blends,
            Contents = [[new ContentRange(0.1, 0.2, 0.3)]],
            AmountError = [0],
            Draws = 200_000,
        };
        var answer = UncertaintyDraws.Run(request).Blends[0];
        var tail = Math.Sqrt(0.05 * 0.2 * 0.1);
        Assert.Equal(0.1 + tail, answer.ContentLow[0], 0.0005);
        Assert.Equal(0.3 - tail, answer.ContentHigh[0], 0.0005);
    }

    private static UncertaintyRequest Request(double spread, double amountError)
    {
        var blend = new BlendRequest
        {
            Columns =
            [
                new Column("a", [0.21, 0, 0.02]), new Column("b", [0.12, 0.5, 0]), new Column("c", [0, 0.01, 0.5]), new Column("d", [0.05, 0.02, 0.01]),
            ],
            Target = [3, 1, 2],
            AtMost = 3,
        };
        return new UncertaintyRequest
        {
            Blend = blend,
            Blends = BlendSearch.Find(blend).Blends,
            Contents = [.. blend.Columns.Select(c => (IReadOnlyList<ContentRange>)[.. c.Content.Select(a => new ContentRange(a * (1 - spread), a, a * (1 + spread)))])],
            AmountError = [.. blend.Columns.Select(_ => amountError)],
            Draws = 2_000,
        };
    }

    private static double WorstCorner(UncertaintyRequest request, Blend blend)
    {
        var d = request.Blend.Target.Count;
        var variables = blend.Members.Count * (d + 1);
        double worst = 0;
        for (var corner = 0; corner < 1 << variables; corner++)
        {
            var sum = new double[d];
            for (var k = 0; k < blend.Members.Count; k++)
            {
                var i = blend.Members[k];
                var bit = k * (d + 1);
                var amount = blend.MassFractions[k] * (1 + ((corner >> bit & 1) == 0 ? -1 : 1) * request.AmountError[i]);
                for (var j = 0; j < d; j++)
                {
                    var range = request.Contents[i][j];
                    sum[j] += amount * ((corner >> (bit + 1 + j) & 1) == 0 ? range.Min : range.Max);
                }
            }

            var wanted = request.Blend.Target.Sum();
            var error = Enumerable.Range(0, d).Average(j => Math.Abs((sum[j] / sum.Sum() / (request.Blend.Target[j] / wanted)) - 1));
            worst = Math.Max(worst, error);
        }

        return worst;
    }
}
