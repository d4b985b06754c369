using Ashery.Quantities;
using Ashery.Recipes;
using static Ashery.Tests.Recipes.Shelf;

namespace Ashery.Tests.Recipes;

public class TradeTests
{
    private static readonly MixRequest Request = new()
    {
        Wish = Wish("17:5:24"),
        Offers =
        [
            Bag("ammonium-sulfate", 21, 0, 0, price: 0.6), Bag("map-granular", 12, 61, 0, price: 1.4), Bag("potassium-sulfate", 0, 0, 50, price: 1.6),
            Bag("urea", 46, 0, 0, price: 0.8), Bag("dap-granular", 18, 46, 0, price: 1.1), Bag("potassium-chloride", 0, 0, 60, price: 0.7),
        ],
    };

    [Fact]
    public void No_blend_of_the_trade_is_beaten_by_another() => AssertUnbeaten(Mix(Request).Trade);

    [Fact]
    public void No_blend_of_the_trade_is_beaten_in_whole_steps() =>
        AssertUnbeaten(Mix(Request with { Batch = Batch("15g"), Measuring = new Measuring.ByScale(new Mass(1)) }).Trade);

    [Fact]
    public void The_trade_holds_the_best_and_the_strongest()
    {
        var answer = Mix(Request);
        Assert.Contains(answer.Trade, r => Math.Abs(r.RatioError - answer.Blends[0].RatioError) < 1e-9);
        Assert.Contains(answer.Trade, r => r.RatioError < 1e-9 && Math.Abs(r.Strength - answer.AtExactRatio!.Strength) < 1e-6);
        Assert.True(answer.TradeExact);
    }

    [Fact]
    public void Fewer_materials_are_traded_for_more_error()
    {
        var trade = Mix(Request with { Batch = Batch("15g"), Measuring = new Measuring.ByScale(new Mass(1)) }).Trade;
        foreach (var count in trade.Select(r => r.Parts.Count).Distinct().Order())
        {
            var best = trade.Where(r => r.Parts.Count <= count).Min(r => r.RatioError);
            Assert.Equal(Mix(Request with { AtMost = count, Best = 1, Batch = Batch("15g"), Measuring = new Measuring.ByScale(new Mass(1)) }).Blends[0].RatioError, best, 1e-9);
        }
    }

    private static void AssertUnbeaten(IReadOnlyList<Recipe> trade)
    {
        Assert.True(trade.Count > 1);
        foreach (var a in trade)
        {
            foreach (var b in trade)
            {
                var beaten = b.RatioError < a.RatioError - 1e-5 && b.Parts.Count <= a.Parts.Count && b.Strength >= a.Strength && b.CostPerKgNutrient <= a.CostPerKgNutrient;
                Assert.False(beaten);
            }
        }
    }
}
