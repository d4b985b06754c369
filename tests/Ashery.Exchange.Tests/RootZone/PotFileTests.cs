using Ashery.Exchange.RootZone;
using Ashery.RootZone;
using Ashery.RootZone.State;

namespace Ashery.Exchange.Tests.RootZone;

public class PotFileTests
{
    internal const string Whole = """
        {
          "name": "Bougainvillea by the steps",
          "pot": { "diameter": 30, "height": 28 },
          "medium": "bark-mix",
          "plant": { "crop": "bougainvillea", "grown": 0.5, "flowering": 0.7 },
          "water": "moderate",
          "watering": { "rule": "weight", "trigger": 0.5, "leachingFraction": 0.2 },
          "exposure": { "rainKeptOff": 0.3, "shade": 0.1, "warming": 1.5 },
          "start": { "pH": 6.1, "strength": 1.0, "lime": 1.5 },
          "events": [
            { "date": "2026-03-10", "feed": "blood-meal", "grams": 12 },
            { "date": "2026-04-02", "feed": "potassium-nitrate", "gramsPerLitre": 0.8, "litres": 1.5 },
            { "date": "2026-05-02", "feed": "calcium-nitrate-double", "nitrogen": 120, "litres": 1.5 },
            { "date": "2026-06-01", "coated": { "n": 18, "p2O5": 6, "k2O": 8, "days": 180 }, "grams": 20 },
            { "date": "2026-07-01", "flush": 8 },
            { "date": "2026-08-15", "prune": 0.3 },
            { "date": "2026-09-01", "repot": { "litres": 20 }, "medium": "peat-mix", "oldKept": 0.8 }
          ]
        }
        """;

    [Fact]
    public void A_whole_file_is_read()
    {
        var read = PotFile.Read(Whole);
        Assert.True(read.Ok, string.Join("\n", read.Problems));
        var scenario = read.Value;
        Assert.Equal("bark-mix", scenario.Medium.Id);
        Assert.InRange(scenario.Shape.Litres, 12, 16);
        Assert.Equal(7, scenario.Events.Count);
        Assert.Equal(0.7, scenario.Plant.FlowerLoad);
        Assert.True(scenario.Water.PerLitre[Ion.Calcium] > 0);
        var can = Assert.IsType<LiquidFeedEvent>(scenario.Events[2]);
        Assert.Equal(0.120, can.PerLitre.Nitrogen * 14.007, 9);
        Assert.Equal(20, Assert.IsType<RepotEvent>(scenario.Events[6]).Shape.Litres);
    }

    [Fact]
    public void The_least_file_is_read()
    {
        var read = PotFile.Read("""{ "pot": { "litres": 5 } }""");
        Assert.True(read.Ok);
        Assert.Equal("peat-mix", read.Value.Medium.Id);
        Assert.Equal(5, read.Value.Shape.Litres);
    }

    [Theory]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"medium\": \"moss\" }", "medium")]
    [InlineData("{ \"medium\": \"peat-mix\" }", "pot")]
    [InlineData("{ \"pot\": { \"litres\": -1 } }", "pot.litres")]
    [InlineData("{ \"pot\": { \"diameter\": 20 } }", "pot.height")]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"plant\": { \"crop\": \"triffid\" } }", "plant.crop")]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"water\": \"sea\" }", "water")]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"watering\": { \"rule\": \"often\" } }", "watering.rule")]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"events\": [ { \"date\": \"1.4.2026\", \"flush\": 2 } ] }", "events[0].date")]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"events\": [ { \"date\": \"2026-04-01\" } ] }", "events[0].feed")]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"events\": [ { \"date\": \"2026-04-01\", \"feed\": \"moonshine\", \"grams\": 2 } ] }", "events[0].feed")]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"events\": [ 4 ] }", "events[0]")]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"colour\": \"red\" }", "colour")]
    [InlineData("{ \"pot\": { \"litres\": 5, \"litres\": 6 } }", "pot.litres")]
    [InlineData("[ 1 ]", "pot")]
    [InlineData("{ \"pot\": ", "pot, line 1")]
    public void What_is_wrong_is_named(string text, string field)
    {
        var read = PotFile.Read(text);
        Assert.False(read.Ok);
        Assert.Contains(read.Problems, p => p.Field == field);
        Assert.All(read.Problems, static p => Assert.NotEmpty(p.WayOut));
    }

    [Fact]
    public void Any_cut_of_a_file_gives_problems_and_no_exception()
    {
        for (var i = 0; i < Whole.Length; i += 3)
        {
            Assert.False(PotFile.Read(Whole[..i]).Ok);
        }
    }
}
