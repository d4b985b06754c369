using System.Text.Json;
using Ashery.Crops;
using Ashery.Materials;
using Ashery.Solutions;
using Ashery.Solutions.Can;
using Ashery.Solutions.Foliar;
using Ashery.Solutions.Waters;
using Ashery.Sources;

namespace Ashery.Tests.Solutions;

/// <summary>Leaf sprays against printed strengths, and as a whole.</summary>
public class SprayTests
{
    [Fact]
    public void Two_grams_of_epsom_salt_are_fine_and_said_to_be_custom()
    {
        var report = Judge([("epsom-salt", 2)], "soft");
        var salt = report.Findings.Single(static f => f.What == "Epsom salt");
        Assert.Equal(SprayLevel.Fine, salt.Level);
        Assert.Equal(2, salt.Value, 6);
        Assert.Equal(20, salt.Limit);
        var usual = salt.Beside.Single(static b => b.Kind == SprayLimitKind.Usual);
        Assert.Equal(2, usual.GramsPerLitre);
        Assert.Equal(Provenance.CommonPractice, usual.Provenance);
        Assert.Equal(SprayLevel.Fine, report.Worst);
        Assert.Equal(1, report.Weaken);
    }

    // Other grades count by what they give: 1 g of anhydrous magnesium sulfate stands for 246.47/120.37 = 2.0476 g of Epsom salt (atomic weights).
    [Fact]
    public void Other_grades_of_a_salt_count_by_their_element()
    {
        Assert.Equal(2.0476, Judge([("magnesium-sulfate-anhydrous", 1)], "pure").Findings.Single(static f => f.What == "Epsom salt").Value, 3);
        Assert.Equal(3 + 2.0476, Judge([("magnesium-sulfate-anhydrous", 1), ("epsom-salt", 3)], "pure").Findings.Single(static f => f.What == "Epsom salt").Value, 3);
    }

    // Iron EDTA at 240 mg/L of iron came with dead spots (abstract of a calibrachoa trial, seen): 240/0.1326 = 1.81 g/L.
    [Theory]
    [InlineData("iron-edta", 0.4, "general", SprayLevel.Fine)]
    [InlineData("iron-edta", 2, "general", SprayLevel.Over)]
    [InlineData("urea", 6, "general", SprayLevel.Over)]
    [InlineData("urea", 6, "citrus", SprayLevel.Fine)]
    [InlineData("urea", 8, "citrus", SprayLevel.Mind)]
    [InlineData("calcium-chloride-dihydrate", 2, "general", SprayLevel.Fine)]
    [InlineData("calcium-chloride-dihydrate", 2, "poinsettia", SprayLevel.Over)]
    [InlineData("iron-sulfate-heptahydrate", 0.8, "azalea-rhododendron", SprayLevel.Over)]
    [InlineData("mkp", 6, "general", SprayLevel.Over)]
    [InlineData("boric-acid", 0.1, "general", SprayLevel.Over)]
    [InlineData("potassium-nitrate", 5, "general", SprayLevel.Fine)]
    [InlineData("dap-technical", 2, "general", SprayLevel.Mind)]
    public void A_salt_against_its_printed_strength(string id, double grams, string crop, SprayLevel level)
    {
        var report = Judge([(id, grams)], "soft", crop);
        Assert.Equal(level, report.Findings[0].Level);
        Assert.True(report.Findings[0].SourceId is null || SourceIndex.Default.Find(report.Findings[0].SourceId!) is not null);
    }

    [Fact]
    public void The_burn_that_was_seen_is_told()
    {
        var finding = Judge([("iron-edta", 2)], "soft").Findings.Single(static f => f.What == "iron chelate");
        Assert.Contains("dead spots", finding.Words, StringComparison.Ordinal);
    }

    // Conductivity and pH are those of the can, which is held to the reference code; here only that they are judged.
    [Fact]
    public void Strong_sprays_are_over_by_conductivity_and_pull_and_the_way_back_is_said()
    {
        var report = Judge([("potassium-nitrate", 9), ("urea", 4)], "moderate");
        Assert.Equal(SprayLevel.Over, Finding(report, "EC of the spray").Level);
        Assert.Equal(SprayLevel.Over, Finding(report, "osmotic potential").Level);
        Assert.InRange(report.Weaken, 0.1, 0.5);
        StandardTests.Close(2 / report.Can.State.Ec25, report.Weaken, 1e-9);
    }

    // Urea has no EC but pulls water: 30 g/L is 0.5 mol/kg, van 't Hoff's R T m = -1.2 MPa.
    [Fact]
    public void Urea_counts_by_its_pull()
    {
        var report = Judge([("urea", 30)], "pure");
        Assert.Equal(SprayLevel.Fine, Finding(report, "EC of the spray").Level);
        StandardTests.Close(-8.314 * 293.15 * 0.4995 * 1e-3, Finding(report, "osmotic potential").Value, 0.06);
        Assert.Equal(SprayLevel.Over, Finding(report, "osmotic potential").Level);
    }

    [Fact]
    public void Biuret_is_judged_by_the_bag_and_more_strictly_for_citrus()
    {
        Assert.Equal(SprayLevel.Mind, Finding(Judge([("urea", 3)], "pure"), "biuret of the urea").Level);
        Assert.Equal(SprayLevel.Over, Finding(Judge([("urea", 3)], "pure", biuret: 0.8), "biuret of the urea").Level);
        Assert.Equal(SprayLevel.Fine, Finding(Judge([("urea", 3)], "pure", biuret: 0.3), "biuret of the urea").Level);
        Assert.Equal(SprayLevel.Over, Finding(Judge([("urea", 3)], "pure", "citrus", 0.3), "biuret of the urea").Level);
    }

    [Fact]
    public void What_comes_out_in_the_sprayer_is_told()
    {
        var report = Judge([("calcium-nitrate-tetrahydrate", 5), ("mkp", 3)], "hard");
        Assert.Contains(report.Findings, static f => f.What.StartsWith("brushite", StringComparison.Ordinal) && f.Level == SprayLevel.Over);
    }

    [Fact]
    public void Acid_and_chloride_are_judged()
    {
        Assert.Equal(SprayLevel.Over, Finding(Judge([("citric-acid-anhydrous", 2)], "pure"), "pH of the spray").Level);
        Assert.Equal(SprayLevel.Mind, Finding(Judge([("calcium-chloride-dihydrate", 3)], "soft"), "chloride").Level);
        var sensitive = CropCatalogue.Default.All.First(static c => c.ChlorideSensitive);
        Assert.Equal(SprayLevel.Over, Finding(Judge([("calcium-chloride-dihydrate", 3)], "soft", sensitive.Id), "chloride").Level);
    }

    [Fact]
    public void The_volume_follows_the_pot_or_the_plant()
    {
        var additions = Additions([("epsom-salt", 2)]);
        var pot = SprayCheck.Judge(new() { Additions = additions, PotLitres = 4, Pots = 10 }).Value!.Volume!;
        Assert.Equal(60, pot.MillilitresPerPot, 9);
        Assert.Equal(0.6, pot.Litres, 9);

        // A plant 30 cm wide covers 0.0707 m²; 0.3 L/m² are 21 mL.
        var plant = SprayCheck.Judge(new() { Additions = additions, PlantWidthCm = 30, PotLitres = 4 }).Value!.Volume!;
        Assert.Equal(21.2, plant.MillilitresPerPot, 1);
        Assert.Null(SprayCheck.Judge(new() { Additions = additions }).Value!.Volume);
    }

    [Fact]
    public void Heat_and_cold_hold_a_spray_back_and_a_test_leaf_comes_first()
    {
        var rose = CropCatalogue.Default.All.Single(static c => c.Id == "rose");
        var hot = SprayCheck.Judge(new() { Additions = Additions([("epsom-salt", 2)]), AirCelsius = 31, Crop = rose }).Value!;
        Assert.True(hot.Gates.Single(static g => g.RuleId == "heat-spray").Holds);
        Assert.False(hot.Gates.Single(static g => g.RuleId == "cold").Holds);
        Assert.Contains(hot.Gates, static g => g.RuleId == "one-spray-test");
        Assert.Contains("spray-cool-morning", hot.Cautions);
        Assert.Contains("spray-mask", hot.Cautions);
        Assert.Equal("label-first", hot.Cautions[0]);
        Assert.DoesNotContain("leaf-burn", hot.Cautions);
    }

    [Fact]
    public void A_rule_the_grower_changed_is_the_limit()
    {
        var rules = RuleBook.Default.With(new Dictionary<string, string>(StringComparer.Ordinal) { ["spray-epsom"] = "gramsPerLitre=1" }).Value!;
        var report = SprayCheck.Judge(new() { Additions = Additions([("epsom-salt", 2)]), Rules = rules }).Value!;
        Assert.Equal(SprayLevel.Over, report.Findings[0].Level);
        Assert.Equal(0.5, report.Weaken, 9);
    }

    [Fact]
    public void What_cannot_be_says_why()
    {
        var good = new SprayRequest { Additions = Additions([("epsom-salt", 2)]) };
        string Field(SprayRequest request) => SprayCheck.Judge(request).Problems[0].Field;
        Assert.Equal("add", Field(good with { Additions = [] }));
        Assert.Equal("add epsom-salt", Field(good with { Additions = [new(good.Additions[0].Material, -2)] }));
        Assert.Equal("add epsom-salt", Field(good with { Additions = [new(good.Additions[0].Material, 300)] }));
        Assert.Equal("celsius", Field(good with { Celsius = 60 }));
        Assert.Equal("pot", Field(good with { PotLitres = 0 }));
        Assert.Equal("width", Field(good with { PlantWidthCm = double.NaN }));
        Assert.Equal("pots", Field(good with { Pots = 0 }));
        Assert.Equal("biuret", Field(good with { BiuretPercent = 20 }));
        Assert.Equal("air", Field(good with { AirCelsius = 99 }));
    }

    [Fact]
    public void Every_row_has_a_source_and_a_crop_that_is()
    {
        foreach (var file in new[] { "limits", "loads" })
        {
            using var document = JsonDocument.Parse(EmbeddedData.Read($"data/foliar/{file}.json"));
            foreach (var row in document.RootElement.GetProperty("rows").EnumerateArray().Where(static r => !r.TryGetProperty("rule", out _)))
            {
                var source = SourceIndex.Default.Find(row.Text("source"));
                Assert.True(source is not null && (row.Provenance() != Provenance.Seen || source.LookedUp), row.ToString());
            }
        }

        Assert.All(SprayLimit.All, static row =>
        {
            Assert.All(row.Crops, static crop => Assert.Contains(CropCatalogue.Default.All, c => c.Id == crop));
            Assert.True(MaterialInWater.OfFormula(row.Salt).Ok, row.Salt);
        });
    }

    private static SprayFinding Finding(SprayReport report, string what) => report.Findings.Single(f => f.What == what);

    private static SprayReport Judge((string Id, double Grams)[] additions, string water, string crop = "general", double? biuret = null) => SprayCheck.Judge(new()
    {
        Additions = Additions(additions),
        Water = SourceWaters.Default.Find(water)!.ToInput(),
        Crop = crop == "general" ? null : CropCatalogue.Default.All.Single(c => c.Id == crop),
        BiuretPercent = biuret,
    }).Value!;

    private static IReadOnlyList<CanAddition> Additions((string Id, double Grams)[] additions) =>
        [.. additions.Select(static a => new CanAddition(MaterialInWater.Of(MaterialCatalogue.Default.Find(a.Id)!).Value!, a.Grams))];
}
