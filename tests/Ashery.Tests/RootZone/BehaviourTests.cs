using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.RootZone;
using Ashery.RootZone.Feeding;
using Ashery.RootZone.State;
using Ashery.Solutions.Waters;

namespace Ashery.Tests.RootZone;

/// <summary>What a grower would expect of a pot whatever the constants are (common sense, no publication), and FAO-56 example 37.</summary>
public class BehaviourTests
{
    private static readonly DateOnly Start = RandomScenarios.Start;

    private static PotScenario Usual { get; } = new()
    {
        Name = "usual",
        Shape = PotShape.OfLitres(5),
        Medium = Medium.Find("peat-mix")!,
        Plant = new() { CanopyStart = 0.06, CanopyMost = 0.14 },
        Water = WaterSupply.Of(SourceWaters.Default.Find("moderate")!),
        Exposure = Exposure.UnderRoof,
    };

    private static WeatherSeries Summer { get; } = Trials.Steady(120, 24, 18, 4.5);

    [Fact]
    public void More_feed_is_more_salt_and_more_nitrogen_lost()
    {
        PotRun? before = null;
        foreach (var grams in new[] { 0.0, 2, 5, 10 })
        {
            var run = Run(Usual with { Events = [new DryFeedEvent(Start.AddDays(5), Trials.Feed("calcium-nitrate-double"), grams)] });
            if (before is not null)
            {
                Assert.True(run.Days[20].ExtractEc > before.Days[20].ExtractEc);
                Assert.True(run.Ledger.Leached.Nitrogen > before.Ledger.Leached.Nitrogen);
                Assert.True(run.End.Biomass <= 1.0001 * before.End.Biomass || grams < 5);
            }

            before = run;
        }
    }

    [Fact]
    public void A_flush_brings_the_salt_down()
    {
        var salty = Usual with { Start = new(SolutionStrength: 5) };
        var flushed = Run(salty with { Events = [new FlushEvent(Start.AddDays(10), 10)] });
        var left = Run(salty);
        Assert.True(flushed.Days[10].ExtractEc < 0.7 * left.Days[10].ExtractEc);
        Assert.True(flushed.Days[10].Drained > 9);
    }

    [Fact]
    public void Pruning_takes_a_share_of_the_plant_and_of_its_thirst()
    {
        var pruned = Run(Usual with { Events = [new PruneEvent(Start.AddDays(50), 0.5)] });
        Assert.InRange(pruned.Days[50].Biomass / pruned.Days[49].Biomass, 0.5, 0.53);
        Assert.True(pruned.Days[50].Transpired < 0.6 * pruned.Days[49].Transpired);
    }

    [Fact]
    public void Repotting_changes_the_pot_and_keeps_the_books()
    {
        var run = Run(Usual with { Events = [new RepotEvent(Start.AddDays(30), PotShape.OfLitres(10), Medium.Find("bark-mix")!, 0.8)] });
        Assert.True(run.Days[31].Water > 1.3 * run.Days[29].Water);
        Assert.True(run.Ledger.Removed.Nitrogen > 0 && run.Ledger.Fed[Ion.Calcium] > 0);
        Assert.True(run.Balance.Hold);
    }

    [Fact]
    public void Feed_from_the_can_stands_for_the_water_of_the_day()
    {
        var strength = FeedBuilder.LiquidByNitrogen(Trials.Feed("potassium-nitrate"), 150);
        var run = Run(Usual with { Events = [new LiquidFeedEvent(Start.AddDays(20), strength, 1.2)] });
        Assert.Equal(1.2, run.Days[20].Irrigation, 12);
        Assert.Equal(0.150 * 1.2, run.Ledger.Fed.Nitrogen * 14.007, 9);
    }

    [Fact]
    public void Hard_water_raises_the_pH_and_acid_feed_lowers_it()
    {
        var soft = Run(Usual with { Water = WaterSupply.Of(SourceWaters.Default.Find("soft")!) }).End.PH;
        var hard = Run(Usual with { Water = WaterSupply.Of(SourceWaters.Default.Find("hard")!) }).End.PH;
        Assert.True(hard > soft + 0.3, FormattableString.Invariant($"{soft} {hard}"));
        Assert.InRange(hard, 6, 8.5);
    }

    [Fact]
    public void Cold_stops_growth_and_slows_release()
    {
        var warm = RootZoneModel.Run(Usual with { Events = [new DryFeedEvent(Start, Trials.Feed("neem-cake"), 20)] }, Trials.Steady(20, 22, 12, 2)).Value!;
        var cold = RootZoneModel.Run(Usual with { Events = [new DryFeedEvent(Start, Trials.Feed("neem-cake"), 20)] }, Trials.Steady(20, 6, 12, 1)).Value!;
        Assert.True(cold.Ledger.MineralisedN < 0.6 * warm.Ledger.MineralisedN);
        Assert.Equal(cold.Start.Biomass, cold.End.Biomass, 12);
    }

    [Fact]
    public void Without_water_the_plant_runs_dry_at_wilting_and_not_below()
    {
        var run = Run(Usual with { Irrigation = IrrigationRule.RainOnly });
        var held = WaterHeld.Of(Usual.Shape, Usual.Medium, RootZoneConstants.Default);
        Assert.InRange(run.End.Water, held.Wilting, held.Wilting + 0.02);
        Assert.True(run.Days[^1].WaterStress < 0.01);
        Assert.True(run.Ledger.DryDays > 100);
    }

    /// <summary>FAO-56 example 37 (seen): Ks and depletion of ten dry days, to the printed digits; it takes Ks at the beginning of each day.</summary>
    [Fact]
    public void Ten_dry_days_of_the_handbook()
    {
        double[] printed = [61.0, 67.0, 72.8, 78.3, 83.4, 88.2, 92.6, 96.9, 100.8, 104.5];
        const double Taw = 160, Raw = 64;
        var depletion = 55.0;
        foreach (var day in printed)
        {
            depletion += 1.2 * 5 * Math.Min(1, (Taw - depletion) / (Taw - Raw));
            Assert.Equal(day, depletion, 0.1);
        }

        // The same by the model, which integrates over the day: a pot of 160 L to wilting, 64 L of it easy, one plant of 1 m² and no bare soil.
        var p = new PotParameters { Capacity = 200, Strained = 136, Wilting = 40, MouthArea = 1e-9, CanopyCoefficient = 1.2, SurfaceCoefficient = 0, SaltThreshold = 100, Steps = 1 };
        var s = new PotPools { Water = 200 - 55, Canopy = 1 };
        PotLedger ledger = default;
        for (var day = 0; day < 10; day++)
        {
            Ashery.RootZone.Water.WaterUse.Take(ref s, ref ledger, p, 5);
        }

        Assert.Equal(104.5, 200 - s.Water, 1.0);
    }

    [Fact]
    public void A_feed_gives_the_nitrogen_of_its_label_and_no_charge_that_is_not_there()
    {
        List<string> charged = [];
        foreach (var material in MaterialCatalogue.Default.All)
        {
            var contents = FeedBuilder.Of(material);
            Assert.Equal(material.Nitrogen.Total, contents.NitrogenGrams, 6);
            var charge = IonMath.Dot(contents.Soluble, Ion.Charges);

            // Bases and acids in truth: carbonates, hydroxides, di-phosphates, acids; the potassium of organic matter, which comes with organic acids that rot; metals, which take
            // the place of protons on humic sites, and borates.
            var truly = material.CompatibilityGroup is "HYDL" or "KHC" or "LIQ" or "DKP" or "DAP" or "ACID" || material.IsOrganic || material.Kind is MaterialKind.Acid or MaterialKind.TraceElement;
            if (!truly && Math.Abs(charge) > 5e-4)
            {
                charged.Add(FormattableString.Invariant($"{material.Id} {charge * 1000:0.00} mmol/g"));
            }
        }

        Assert.True(charged.Count == 0, string.Join(", ", charged));
    }

    [Fact]
    public void A_mixed_feed_is_the_sum_of_its_parts()
    {
        var parts = new Dictionary<string, double> { ["blood-meal"] = 0.6, ["potassium-sulfate"] = 0.4 };
        var feed = FeedMaker.FromParts("mix", "mix", FeedKind.Organic, parts, MaterialCatalogue.Default.Find, "feed").Value!;
        var whole = FeedBuilder.Of(feed, MaterialCatalogue.Default.Find);
        Assert.Equal(feed.Nitrogen.Total, whole.NitrogenGrams, 9);
        Assert.Equal((0.4 * 0.5 * 0.8302 / 39.098) + (0.6 * 0.007 * 0.8302 / 39.098), whole.Soluble[Ion.Potassium], 6);
    }

    [Fact]
    public void Waters_keep_their_alkalinity()
    {
        foreach (var name in new[] { "soft", "moderate", "hard", "saline" })
        {
            var water = SourceWaters.Default.Find(name)!;
            Assert.Equal(water.Alkalinity, WaterSupply.Of(water).Alkalinity, 1e-4);
        }
    }

    [Theory]
    [InlineData(-1, 20, 20)]
    [InlineData(5, 0, 20)]
    [InlineData(5, 20, 400)]
    public void What_cannot_be_is_named(double litres, double height, double mouth)
    {
        var run = RootZoneModel.Run(Usual with { Shape = new(litres, height, mouth) }, Summer);
        Assert.False(run.Ok);
        Assert.All(run.Problems, static p => Assert.Equal(Severity.Error, p.Severity));
    }

    [Fact]
    public void Events_outside_the_weather_are_left_out_and_said()
    {
        var run = RootZoneModel.Run(Usual with { Events = [new FlushEvent(Start.AddDays(-3), 2), new FlushEvent(Start.AddDays(500), 2)] }, Summer);
        Assert.True(run.Ok);
        Assert.Contains(run.Problems, static p => p.Severity == Severity.Note && p.Field == "events");
    }

    private static PotRun Run(PotScenario scenario)
    {
        var run = RootZoneModel.Run(scenario, Summer);
        Assert.True(run.Ok, string.Join("\n", run.Problems));
        Assert.True(run.Value.Balance.Hold);
        return run.Value;
    }
}
