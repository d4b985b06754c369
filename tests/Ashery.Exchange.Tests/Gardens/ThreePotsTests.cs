using Ashery.Exchange.Gardens;
using Ashery.Gardens;
using Ashery.Planning;

namespace Ashery.Exchange.Tests.Gardens;

/// <summary>The committed garden file against the doses worked out by hand in three-pots.md.</summary>
public class ThreePotsTests
{
    private static readonly DateOnly FirstOfMarch = new(2027, 3, 1);

    private static Garden Garden()
    {
        var read = GardenFile.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Gardens", "three-pots.garden.json")));
        Assert.True(read.Ok, string.Join("\n", read.Problems));
        return read.Value;
    }

    [Theory]
    [InlineData("ten", 5.142857, 5.0, 0.875, 35)]
    [InlineData("one", 0.342857, 0.3, 0.525, 2.1)]
    [InlineData("cone", 2.80015, 2.2, 0.82500, 15.4)]
    public void Doses_are_those_worked_by_hand(string pot, double wanted, double grams, double nitrogen, double lime)
    {
        var plan = YearPlanner.Plan(new(Garden(), FirstOfMarch));
        var doses = plan.Feeds.SelectMany(static f => f.Doses).Where(d => d.PotId == pot).ToList();
        Assert.Equal(14, doses.Count);
        Assert.All(doses, d =>
        {
            Assert.Equal(wanted, d.WantedGrams, 4);
            Assert.Equal(grams, d.Grams, 9);
        });
        Assert.Equal(nitrogen, plan.Supply.Single(s => s.PotId == pot).Season, 3);
        Assert.Equal(lime, plan.LimeDebts.Single(d => d.PotId == pot).Grams, 6);
    }

    [Fact]
    public void Dates_and_total_are_those_worked_by_hand()
    {
        var plan = YearPlanner.Plan(new(Garden(), FirstOfMarch));
        var dates = plan.Feeds.Select(static f => f.Date).Distinct().ToList();
        Assert.Equal(Enumerable.Range(0, 14).Select(static i => FirstOfMarch.AddDays(14 * i)), dates);
        Assert.Equal(new DateOnly(2027, 8, 30), dates[^1]);
        Assert.Equal(105, Assert.Single(plan.Shopping).NeededGrams, 6);
    }

    [Fact]
    public void Todays_round_gives_the_same_doses()
    {
        var round = DoseRound.For(new(Garden(), FirstOfMarch)).Value!;
        Assert.Equal(["one", "cone", "ten"], round.Pots.Select(static p => p.Pot.Id));
        Assert.Equal([0.3, 2.2, 5.0], round.Pots.Select(static p => p.Dose.Grams));
        Assert.All(round.Pots, static p => Assert.True(p.Gate.IsOpen));
    }
}
