using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Pots;

namespace Ashery.Tests.Pots;

public class FeedGateTests
{
    private static readonly DateOnly Today = SomePots.Day;

    public static TheoryData<string, PotState, DayWeather> Holding => new()
    {
        { "dry-medium", new() { AvailableWater = 0.3 }, new() },
        { "wilted", new() { Wilted = true }, new() },
        { "waterlogged", new() { Waterlogged = true }, new() },
        { "sick-roots", new() { SickRoots = true }, new() },
        { "repotted", new() { Repotted = true }, new() },
        { "cold", new(), new(MeanCelsius: 7) },
        { "heat-feed", new(), new(MaxCelsius: 34) },
    };

    [Theory]
    [MemberData(nameof(Holding))]
    public void Says_not_today(string ruleId, PotState state, DayWeather weather)
    {
        var gate = FeedGate.Check(SomePots.Pot(10), SomePots.Crop("bougainvillea"), FeedKind.Mineral, Today, state, weather, RuleBook.Default);
        Assert.False(gate.IsOpen);
        Assert.Equal(ruleId, Assert.Single(gate.Holds).RuleId);
    }

    [Fact]
    public void A_moist_sound_plant_on_a_mild_day_is_fed() => Assert.True(FeedGate.Check(
        SomePots.Pot(10), SomePots.Crop("bougainvillea"), FeedKind.Mineral, Today, new() { AvailableWater = 0.8 }, new(MaxCelsius: 24, MeanCelsius: 19), RuleBook.Default).IsOpen);

    // Advice pages say three to six weeks after repotting (seen); the rule waits 21 days, 35 for orchids and succulents.
    [Theory]
    [InlineData("bougainvillea", 20, false)]
    [InlineData("bougainvillea", 21, true)]
    [InlineData("moth-orchid", 34, false)]
    [InlineData("moth-orchid", 35, true)]
    public void Waits_after_repotting(string crop, int days, bool open)
    {
        var pot = SomePots.Pot(3, crop) with { LastRepotted = Today.AddDays(-days) };
        var gate = FeedGate.Check(pot, SomePots.Crop(crop), FeedKind.Mineral, Today, null, null, RuleBook.Default);
        Assert.Equal(open, gate.IsOpen);
        if (!open)
        {
            Assert.Equal(Today.AddDays(1), Assert.Single(gate.Holds).Until);
        }
    }

    [Fact]
    public void A_soft_rule_warns_and_leaves_the_gate_open()
    {
        var gate = FeedGate.Check(SomePots.Pot(10), SomePots.Crop("bougainvillea"), FeedKind.Mineral, Today, new() { MediumCelsius = 12 }, null, RuleBook.Default);
        Assert.True(gate.IsOpen);
        Assert.Equal("ammonium-cold", Assert.Single(gate.Warnings).RuleId);
    }

    [Fact]
    public void Sprays_wait_for_a_cool_hour()
    {
        GateVerdict At(double now) => FeedGate.Check(SomePots.Pot(10), SomePots.Crop("bougainvillea"), FeedKind.Foliar, Today, null, new(MaxCelsius: 31, NowCelsius: now), RuleBook.Default);
        Assert.True(At(22).IsOpen);
        Assert.False(At(29).IsOpen);
    }

    [Fact]
    public void A_rule_switched_off_holds_nothing_back() => Assert.True(FeedGate.Check(
        SomePots.Pot(10), SomePots.Crop("bougainvillea"), FeedKind.Mineral, Today, new() { AvailableWater = 0.1 }, null, SomePots.Without("dry-medium")).IsOpen);

    // Full above 20 °C daily mean, half from 15, a quarter from 10, none below base (common practice, no source).
    [Theory]
    [InlineData("bougainvillea", 22, 1)]
    [InlineData("bougainvillea", 17, 0.5)]
    [InlineData("bougainvillea", 12, 0.25)]
    [InlineData("bougainvillea", 9, 0)]
    [InlineData("cyclamen", 15, 1)]
    [InlineData("cyclamen", 11, 0.5)]
    [InlineData("cyclamen", 4, 0)]
    public void Feed_follows_temperature(string crop, double mean, double factor) =>
        Assert.Equal(factor, GrowthFactor.At(mean, SomePots.Crop(crop), RuleBook.Default).Value);

    [Theory]
    [InlineData(10, PlantStage.Seedling)]
    [InlineData(60, PlantStage.Liner)]
    [InlineData(200, PlantStage.Young)]
    [InlineData(400, PlantStage.Mature)]
    public void Stage_follows_age(int days, PlantStage stage) =>
        Assert.Equal(stage, PlantAge.StageOn(SomePots.Pot(3) with { Planted = Today.AddDays(-days) }, Today, RuleBook.Default));

    [Theory]
    [InlineData(PlantStage.Liner, PlantStage.Liner)]
    [InlineData(PlantStage.RootBound, PlantStage.RootBound)]
    [InlineData(PlantStage.Dormant, PlantStage.Dormant)]
    public void What_the_grower_says_of_an_old_plant_stands(PlantStage told, PlantStage stage) =>
        Assert.Equal(stage, PlantAge.StageOn(SomePots.Pot(3, stage: told) with { Planted = Today.AddDays(-900) }, Today, RuleBook.Default));
}
