using Ashery.Exchange.RootZone;
using Ashery.RootZone;
using Ashery.RootZone.Calibration;
using Ashery.RootZone.Draws;

namespace Ashery.Exchange.Tests.RootZone;

public class PotFileTests
{
    private const string Full = """
        {
          "name": "made", "from": "2027-02-01", "days": 90,
          "pot": { "litres": 5, "heightCm": 17, "mouthCm": 22 }, "medium": "bark",
          "plant": { "crop": "fuchsia", "filled": 0.4, "flowerLoad": 0.7, "vigour": 0.9 },
          "watering": { "rule": "byDay", "everyDays": 2, "litres": 0.4 },
          "standing": { "rainKeptOff": 1, "shade": 0.4, "warming": 0.5, "drying": 1.2 },
          "water": { "name": "own", "ions": { "Ca": 40, "Cl": 12 }, "alkalinity": 85, "pH": 7.4 },
          "start": { "pH": 6, "ec": 1.1, "water": 0.8, "lime": 0.5 },
          "place": { "name": "made", "latitude": -33, "elevation": 50, "normals": [
            { "meanMax": 28, "meanMin": 18, "rain": 20 }, { "meanMax": 28, "meanMin": 18, "rain": 20 }, { "meanMax": 26, "meanMin": 16, "rain": 30, "wind": 3, "humidity": 60, "radiation": 18 },
            { "meanMax": 23, "meanMin": 13, "rain": 50 }, { "meanMax": 20, "meanMin": 10, "rain": 70 }, { "meanMax": 17, "meanMin": 8, "rain": 80 },
            { "meanMax": 17, "meanMin": 7, "rain": 80 }, { "meanMax": 18, "meanMin": 8, "rain": 70 }, { "meanMax": 20, "meanMin": 10, "rain": 50 },
            { "meanMax": 23, "meanMin": 12, "rain": 40 }, { "meanMax": 25, "meanMin": 15, "rain": 25 }, { "meanMax": 27, "meanMin": 17, "rain": 20 } ] },
          "events": [
            { "date": "2027-02-05", "feed": { "neem-cake": 8, "potassium-sulfate": 1 } },
            { "date": "2027-02-20", "can": { "potassium-nitrate": 0.8 }, "litres": 0.6 },
            { "date": "2027-02-25", "coated": { "N": 16, "P2O5": 7, "K2O": 9, "days": 150 }, "grams": 6 },
            { "date": "2027-03-01", "prune": 0.25 },
            { "date": "2027-03-10", "repot": { "litres": 8, "medium": "coir-mix", "oldKept": 0.6 } },
            { "date": "2027-04-01", "flush": 2 } ],
          "readings": [ { "date": "2027-02-10", "leachateEc": 1.2, "error": 0.1 }, { "date": "2027-02-11", "kgBelowFull": 0.4 } ]
        }
        """;

    [Fact]
    public void A_pot_is_written_and_read_back_the_same()
    {
        foreach (var text in new[] { Full, PotFile.Sample() })
        {
            var read = PotFile.Read(text);
            Assert.True(read.Ok, string.Join(' ', read.Problems));
            var written = PotFile.Write(read.Value);
            var again = PotFile.Read(written).Value!;
            Assert.Equal(written, PotFile.Write(again));
            Assert.Equal(read.Value.Readings, again.Readings);
            Assert.Equal(read.Value.Watering.ToString(), again.Watering.ToString());
            Assert.Equal(read.Value.Plant, again.Plant);
            Assert.Equal(read.Value.Start, again.Start);
            Assert.Equal(read.Value.Events.Select(static e => (e.Date, e.Kind, e.Litres, e.Share, e.Medium)), again.Events.Select(static e => (e.Date, e.Kind, e.Litres, e.Share, e.Medium)));
            Assert.Equal(read.Value.Events.SelectMany(static e => e.Parts), again.Events.SelectMany(static e => e.Parts));
            Assert.Equal(read.Value.Place!.Normals, again.Place!.Normals);
        }
    }

    [Fact]
    public void A_pot_by_its_width_a_bag_with_its_label_and_a_can_by_its_nitrogen()
    {
        var text = Full.Replace("\"litres\": 5, \"heightCm\": 17, \"mouthCm\": 22", "\"mouthCm\": 24", StringComparison.Ordinal)
            .Replace("\"days\": 90", "\"days\": 90, \"stepsPerDay\": 2", StringComparison.Ordinal)
            .Replace("\"vigour\": 0.9", "\"vigour\": 0.9, \"saltSlope\": 20", StringComparison.Ordinal)
            .Replace("{ \"potassium-nitrate\": 0.8 }, ", "{ \"potassium-nitrate=13-0-46\": 2, \"urea\": 1 }, \"mgNPerLitre\": 120, ", StringComparison.Ordinal)
            .Replace("\"neem-cake\": 8", "\"neem-cake=4-1-1\": 8", StringComparison.Ordinal);
        var read = PotFile.Read(text);
        Assert.True(read.Ok, string.Join(' ', read.Problems));
        var again = PotFile.Read(PotFile.Write(read.Value)).Value!;
        Assert.Equal(PotFile.Write(read.Value), PotFile.Write(again));

        var scenario = PotBuild.Forecast(read.Value, null, 3).Value!.Scenario;

        // The trade's 24 cm pot holds 7 to 8 L (from memory); 22.08 cm high, filled to 0.92, tapered to three quarters, by hand: 7.08 L.
        Assert.Equal(7.08, scenario.Shape.Litres, 0.01);
        Assert.Equal((2, 20.0), (scenario.StepsPerDay, scenario.Plant.SaltSlope));

        // 120 mg N/L, all of its forms.
        var can = scenario.Events.OfType<LiquidFeedEvent>().Single();
        Assert.Equal(120, can.PerLitre.Nitrogen * 14.007 * 1000, 0.01);

        // 8 g at 4 %.
        var neem = scenario.Events.OfType<DryFeedEvent>().First();
        Assert.Equal(0.32, neem.Feed.Nitrogen * 14.007 * neem.Grams, 0.001);
    }

    [Theory]
    [InlineData("\"litres\": 5, \"heightCm\": 17, \"mouthCm\": 22", "\"heightCm\": 17", "pot.litres")]
    [InlineData("{ \"potassium-nitrate\": 0.8 }, ", "{ \"potassium-sulfate\": 0.8 }, \"mgNPerLitre\": 120, ", "events[1].mgNPerLitre")]
    [InlineData("\"neem-cake\": 8", "\"neem-cake=4-1\": 8", "events[0].feed")]
    public void What_cannot_be_is_told_at_its_field(string told, string instead, string field)
    {
        var wrong = PotFile.Read(Full.Replace(told, instead, StringComparison.Ordinal));
        Assert.Contains(field, wrong.Problems.Select(static p => p.Field));
    }

    [Fact]
    public void A_full_file_becomes_what_it_says_and_runs()
    {
        var built = PotBuild.Forecast(PotFile.Read(Full).Value!, null, 3);
        Assert.True(built.Ok, string.Join(' ', built.Problems));
        var scenario = built.Value.Scenario;
        Assert.Equal(new PotShape(5, 17, 22), scenario.Shape);
        Assert.Equal("bark", scenario.Medium.Id);
        Assert.Equal((IrrigationKind.ByDay, 2, 0.4), (scenario.Irrigation.Kind, scenario.Irrigation.EveryDays, scenario.Irrigation.Litres));
        Assert.Equal(7, scenario.Events.Count);

        // 40 mg Ca/L over 40.078 g/mol.
        Assert.Equal(40 / 40.078e3, scenario.Water.PerLitre[Ashery.RootZone.State.Ion.Calcium], 2e-5);

        // 8 g of neem cake and 1 g of potassium sulfate, two events of one day; 6 g of a coated feed, 16 % N.
        Assert.Equal([8, 1, 6], scenario.Events.OfType<DryFeedEvent>().Select(static e => e.Grams));
        Assert.Equal(0.16, scenario.Events.OfType<DryFeedEvent>().Last().Feed.NitrogenGrams, 1e-9);
        var outlook = PotOutlook.Run(built.Value with { Draws = 60 }, PotFile.Read(Full).Value!.Readings, 20);
        Assert.True(outlook.Ok, string.Join(' ', outlook.Problems));
        Assert.Equal([28, 31, 30, 1], outlook.Value.Months.Select(static m => m.Days));
        Assert.Equal(2, outlook.Value.Calibration!.Taken.Count);
        Assert.True(outlook.Value.Budget.Residual < 1e-9);

        // The neem cake's own market spread stands in place of the usual one.
        var neem = outlook.Value.Forecast.Space.Figures.Single(static f => f.Id == "feed-1");
        Assert.True(neem.Low < 1 && neem.High > 1);
        Assert.Contains("eem", neem.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_cut_of_a_file_gives_problems_and_no_exception()
    {
        for (var i = 0; i < Full.Length - 1; i += 7)
        {
            Assert.False(PotFile.Read(Full[..i]).Ok);
        }
    }

    [Fact]
    public void Everything_wrong_comes_back_at_once()
    {
        var read = PotFile.Read("{ \"pot\": { \"litres\": -1 }, \"medium\": \"moss\", \"days\": \"x\", \"strange\": 1 }");
        Assert.False(read.Ok);
        Assert.Superset(new HashSet<string> { "pot.litres", "medium", "days", "strange", "from", "place" }, read.Problems.Select(static p => p.Field).ToHashSet());
    }
}
