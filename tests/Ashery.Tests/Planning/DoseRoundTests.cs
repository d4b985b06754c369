using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Planning;
using Ashery.Pots;

namespace Ashery.Tests.Planning;

public class DoseRoundTests
{
    private static readonly DateOnly Day = new(2027, 5, 10);

    private static readonly Season AllYear = new(SeasonKind.Growing, new(1, 1), new(12, 31));

    [Fact]
    public void Every_pot_has_a_number_weakest_first()
    {
        var round = DoseRound.For(new(SomeGardens.With(AllYear), Day)).Value!;
        Assert.Equal([1, 2, 3], round.Pots.Select(static p => p.Number));
        Assert.Equal(round.Pots.Select(static p => p.Dose.Grams).Order(), round.Pots.Select(static p => p.Dose.Grams));
    }

    [Fact]
    public void Only_the_pots_asked_for() =>
        Assert.Equal(["b"], DoseRound.For(new(SomeGardens.With(AllYear), Day) { PotIds = new HashSet<string> { "b" } }).Value!.Pots.Select(static p => p.Pot.Id));

    [Theory]
    [InlineData("no-such-feed", null, "feed")]
    [InlineData(null, "no-such-pot", "pot")]
    public void What_is_not_there_is_named(string? feed, string? pot, string field)
    {
        var round = DoseRound.For(new(SomeGardens.With(AllYear), Day, feed) { PotIds = pot is null ? null : new HashSet<string> { pot } });
        Assert.False(round.Ok);
        Assert.Equal(field, Assert.Single(round.Problems).Field);
    }

    [Fact]
    public void The_season_and_the_state_of_the_day_close_the_gate()
    {
        var garden = SomeGardens.With(AllYear, new(SeasonKind.Hot, new(5, 1), new(5, 31)));
        var states = new Dictionary<string, PotState> { ["a"] = new() { Wilted = true } };
        var round = DoseRound.For(new(garden, Day) { States = states }).Value!;
        Assert.All(round.Pots, static p => Assert.Contains(p.Gate.Holds, static h => h.RuleId == "mineral-hot-season"));
        Assert.Contains(round.Pots.Single(static p => p.Pot.Id == "a").Gate.Holds, static h => h.RuleId == "wilted");
        Assert.True(DoseRound.For(new(garden, Day, "meals")).Value!.Pots.All(static p => p.Gate.IsOpen));
    }

    // Common practice, no source: a quarter of the dose for a young plant, 5 g a fortnight in 10 L.
    [Fact]
    public void A_round_by_the_rule_of_thumb()
    {
        var garden = SomeGardens.With(AllYear) with { Pots = [SomeGardens.Pot("old", 10, "rose"), SomeGardens.Pot("young", 10, "rose") with { Stage = PlantStage.Young }] };
        var round = DoseRound.For(new(garden, Day) { Basis = DoseBasis.RuleOfThumb }).Value!;
        Assert.Equal([("young", 1.3), ("old", 5.0)], round.Pots.Select(static p => (p.Pot.Id, Math.Round(p.Dose.Grams, 6))));
    }

    [Fact]
    public void Too_little_to_weigh_comes_from_one_bottle_for_the_round()
    {
        var garden = SomeGardens.With(AllYear) with
        {
            Pots = [.. Enumerable.Range(1, 5).Select(static i => SomeGardens.Pot(FormattableString.Invariant($"p{i}"), 0.2 * i, "african-violet"))],
            Settings = new() { ScaleStep = 1 },
        };
        var doses = DoseRound.For(new(garden, Day)).Value!.Pots.Select(static p => p.Dose).ToList();
        var bottle = Assert.Single(doses.Select(static d => (d.Predilution!.Grams, d.Predilution.WaterMillilitres)).Distinct());
        Assert.All(doses, d =>
        {
            Assert.Equal(d.Grams, bottle.Grams * d.Predilution!.MillilitresPerPot / bottle.WaterMillilitres, 8);
            Assert.InRange(d.Grams, d.WantedGrams * 0.94, d.WantedGrams + 1e-9);
        });
        Assert.True(doses.Sum(static d => d.Grams) <= bottle.Grams);
    }
}
