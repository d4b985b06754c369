using Ashery.Trials;
using Ashery.Trials.Designs;
using CsCheck;

namespace Ashery.Tests.Trials;

public class DesignTests
{
    private static readonly Gen<TrialPot> Pots = Gen.Select(Gen.Int[0, 9999], Gen.Int[0, 4].Select(static i => new[] { 0.5, 1, 2, 3, 10 }[i]), Gen.Int[0, 3].Select(static i => new[] { "wall", "rail", "steps", null }[i])).Select(static (n, l, p) => new TrialPot(FormattableString.Invariant($"p{n}"), "plant", l, p));

    [Fact]
    public void Every_block_holds_every_feed_once_and_no_pot_twice() =>
        Gen.Select(Pots.List[0, 40], Gen.Int[2, 5], Gen.Int[1, 1000]).Sample(
            (pots, feeds, seed) =>
            {
                var trial = PowerTests.Sample(MeasureKind.Measurement, feeds, control: false) with { Pots = [.. pots.DistinctBy(static p => p.Id)], Seed = seed };
                var layout = BlockLayout.Draw(trial);
                Assert.Equal(trial.Pots.Count / feeds * feeds, layout.Count);
                Assert.Equal(layout.Count, layout.Select(static p => p.Pot).Distinct().Count());
                Assert.All(layout.GroupBy(static p => p.Block), block => Assert.Equal(trial.Treatments.Select(static t => t.Id).Order(StringComparer.Ordinal), block.Select(static p => p.Treatment).Order(StringComparer.Ordinal)));
                Assert.Equal(layout, BlockLayout.Draw(trial));
            },
            iter: 300);

    /// <summary>Every order of the feeds in a block is as likely as any other: χ² of 6 orders over 6000 draws; 20.5 is passed once in a thousand.</summary>
    [Fact]
    public void Lots_are_fair()
    {
        var trial = PowerTests.Sample(MeasureKind.Count, 3, control: true) with { Pots = [.. Enumerable.Range(0, 3).Select(static i => new TrialPot(FormattableString.Invariant($"p{i}"), "plant"))] };
        var seen = Enumerable.Range(1, 6000).GroupBy(seed => string.Concat(BlockLayout.Draw(trial with { Seed = seed }).Select(static p => p.Treatment))).Select(static g => g.Count()).ToList();
        Assert.Equal(6, seen.Count);
        Assert.True(seen.Sum(static n => (n - 1000) * (n - 1000) / 1000.0) < 20.5);
    }

    [Fact]
    public void Pots_of_a_place_and_size_stand_in_a_block()
    {
        TrialPot[] pots = [new("a", "", 1, "rail"), new("b", "", 10, "wall"), new("c", "", 1, "rail"), new("d", "", 10, "wall"), new("e", "", 3, "rail"), new("f", "", 3, "rail"), new("g", "", 5, "rail")];
        var blocks = BlockLayout.Blocks(pots, 2).Select(static b => string.Concat(b.Select(static p => p.Id))).ToList();
        Assert.Equal(["ac", "ef", "bd"], blocks);
    }

    [Theory]
    [InlineData(MeasureKind.Count)]
    [InlineData(MeasureKind.Measurement)]
    public void The_needed_number_is_the_fewest_that_reach_the_wish(MeasureKind kind)
    {
        var trial = PowerTests.Sample(kind, 2, control: true) with { Wish = new() { Difference = 0.4, Spread = 0.25, Power = 0.8 } };
        var plan = TrialDesign.Plan(trial, 4000).Value!;
        var n = plan.PotsNeeded!.Value;
        Assert.True(plan.PowerThen >= 0.8);
        Assert.Contains(plan.Curve, c => c.PotsAFeed == n - 1 && c.Power < 0.8);
    }

    /// <summary>Ten thousand simulated trials a chance; several chances. The bench says how long on a free machine.</summary>
    [Fact]
    public void A_design_is_the_same_every_time()
    {
        var trial = PowerTests.Sample(MeasureKind.Count, 2, control: true);
        Assert.Equal(TrialDesign.Plan(trial, 2000).Value!.Curve, TrialDesign.Plan(trial, 2000).Value!.Curve);
    }

    [Theory]
    [InlineData("difference", 0, 0.25, 0.8)]
    [InlineData("difference", -1.5, 0.25, 0.8)]
    [InlineData("difference", double.NaN, 0.25, 0.8)]
    [InlineData("spread", 0.3, -1, 0.8)]
    [InlineData("power", 0.3, 0.25, 1)]
    public void A_wish_that_cannot_be_is_named(string field, double difference, double spread, double power)
    {
        var trial = PowerTests.Sample(MeasureKind.Count, 2, control: true) with { Wish = new() { Difference = difference, Spread = spread, Power = power } };
        Assert.Contains(TrialDesign.Plan(trial).Problems, p => p.Field == field);
    }

    [Fact]
    public void Codes_differ_and_hide_the_order()
    {
        var trial = PowerTests.Sample(MeasureKind.Count, 4, control: true) with { Blind = true };
        var codes = TrialDesign.Plan(trial, 100).Value!.Trial.Treatments.Select(static t => t.Code).ToList();
        Assert.Equal(4, codes.OfType<string>().Distinct().Count());
        Assert.NotEqual(codes, TrialDesign.Plan(trial with { Seed = 2 }, 100).Value!.Trial.Treatments.Select(static t => t.Code));
    }
}
