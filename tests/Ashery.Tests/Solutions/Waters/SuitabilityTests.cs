using Ashery.Crops;
using Ashery.Solutions.Waters;
using Ashery.Sources;

namespace Ashery.Tests.Solutions.Waters;

/// <summary>Waters against limits: FAO's table of guidelines for irrigation, as reprinted (seen), and what follows from it.</summary>
public class SuitabilityTests
{
    // The table's own figures, in its units; meq/L brought to mg/L (Na 22.990, Cl 35.45, CaCO3 50.04).
    [Theory]
    [InlineData("ec", WaterSensitivity.Moderate, "watch", 0.7)]
    [InlineData("ec", WaterSensitivity.Tolerant, "trouble", 3.0)]
    [InlineData("sodium", WaterSensitivity.Moderate, "watch", 3 * 22.990)]
    [InlineData("chloride", WaterSensitivity.Moderate, "watch", 4 * 35.45)]
    [InlineData("chloride", WaterSensitivity.Moderate, "trouble", 10 * 35.45)]
    [InlineData("boron", WaterSensitivity.Moderate, "watch", 0.7)]
    [InlineData("boron", WaterSensitivity.Tolerant, "trouble", 3.0)]
    [InlineData("sar", WaterSensitivity.Moderate, "watch", 3)]
    [InlineData("sar", WaterSensitivity.Moderate, "trouble", 9)]
    [InlineData("leaf-spots", WaterSensitivity.Moderate, "watch", 1.5 * 50.04)]
    [InlineData("leaf-spots", WaterSensitivity.Moderate, "trouble", 8.5 * 50.04)]
    [InlineData("nitrate", WaterSensitivity.Moderate, "watch", 5)]
    [InlineData("nitrate", WaterSensitivity.Moderate, "trouble", 30)]
    [InlineData("ph", WaterSensitivity.Moderate, "watch", 8.4)]
    public void Limits_of_the_published_table(string figure, WaterSensitivity sensitivity, string level, double printed)
    {
        var report = SourceWaters.Default.Example("saline")!.Report with { Lines = [.. SourceWaters.Default.Example("saline")!.Report.Lines, new("B", 0.1)] };
        var finding = WaterSuitability.Judge(WaterReports.Read(report).Value!, sensitivity).Single(f => f.Kind.Id == figure);
        var limit = (level == "watch" ? finding.Watch : finding.Trouble)!;
        StandardTests.Close(printed, limit.Value, 0.006, figure);
        Assert.Equal(Provenance.Seen, limit.Provenance);
        Assert.True(SourceIndex.Default.Find(limit.SourceId)!.LookedUp);
    }

    [Fact]
    public void Soft_water_troubles_nobody_and_saline_water_many()
    {
        Assert.NotEqual(WaterLevel.Trouble, WaterSuitability.Worst(WaterSuitability.Judge(SourceWaters.Default.Example("soft")!.Reading, WaterSensitivity.Sensitive)));
        var saline = WaterSuitability.Judge(SourceWaters.Default.Example("saline")!.Reading, WaterSensitivity.Moderate);
        Assert.Equal(WaterLevel.Trouble, saline[0].Level);
        Assert.Contains(saline, static f => f.Kind.Id == "alkalinity" && f.Level == WaterLevel.Trouble);
        Assert.Equal(saline.Select(static f => (int)f.Level).OrderDescending(), saline.Select(static f => (int)f.Level));
    }

    [Fact]
    public void Rain_wants_an_eye_on_its_buffer() => Assert.Contains(
        WaterSuitability.Judge(SourceWaters.Default.Example("rain")!.Reading, WaterSensitivity.Moderate), static f => f.Kind.Id == "buffer" && f.Level == WaterLevel.Watch);

    // Limits fall with sensitivity, and trouble lies beyond watch.
    [Fact]
    public void Limits_are_in_order()
    {
        foreach (var kind in WaterFigureKind.All)
        {
            double before = 0, beforeTrouble = 0;
            foreach (var sensitivity in new[] { "sensitive", "moderate", "tolerant" })
            {
                var watch = WaterLimit.Of(kind.Id, sensitivity, "watch")!.Value;
                Assert.True(watch >= before, $"{kind.Id} {sensitivity}");
                before = watch;
                if (WaterLimit.Of(kind.Id, sensitivity, "trouble") is { } trouble)
                {
                    Assert.True(trouble.Value > watch && trouble.Value >= beforeTrouble, $"{kind.Id} {sensitivity}");
                    beforeTrouble = trouble.Value;
                }
            }
        }
    }

    [Fact]
    public void A_crop_brings_its_own_classes()
    {
        var camellia = WaterNeeds.Of(CropCatalogue.Default.Find("camellia")!);
        Assert.Equal(WaterSensitivity.Sensitive, camellia.Alkalinity);
        var citrus = WaterNeeds.Of(CropCatalogue.Default.Find("citrus")!);
        Assert.Equal((WaterSensitivity.Moderate, WaterSensitivity.Sensitive), (citrus.Salts, citrus.Chloride));
        Assert.Equal(WaterSensitivity.Tolerant, WaterNeeds.Of(CropCatalogue.Default.Find("rose")!).Salts);
    }

    // Thinned as told, the figure stands at its limit.
    [Fact]
    public void The_share_of_rain_brings_it_to_the_limit()
    {
        var example = SourceWaters.Default.Example("saline")!;
        foreach (var finding in WaterSuitability.Judge(example.Reading, WaterSensitivity.Moderate).Where(static f => f.RainShare is not null && f.Kind.Id is not "ec"))
        {
            var thinned = WaterReports.Read(example.Report with { Lines = [.. example.Report.Lines.Select(l => l with { Value = l.Value * (1 - finding.RainShare!.Value) })] }).Value!;
            var after = WaterSuitability.Judge(thinned, WaterSensitivity.Moderate).Single(f => f.Kind.Id == finding.Kind.Id);
            StandardTests.Close(finding.Watch!.Value, after.Value.Typical, 1e-6, finding.Kind.Id);
        }
    }

    [Fact]
    public void An_estimate_says_what_it_may_be()
    {
        var read = WaterReports.Read(new WaterReport { Id = "w", Name = "w", Lines = [new("hardness", 14, "°dH"), new("alkalinity", 200)], PH = 7.5 }).Value!;
        var chloride = WaterSuitability.Judge(read, WaterSensitivity.Sensitive).Single(static f => f.Kind.Id == "chloride");
        Assert.True(chloride.Estimated);
        Assert.True(chloride.Worst >= chloride.Level);
        Assert.DoesNotContain(WaterSuitability.Judge(read, WaterSensitivity.Sensitive), static f => f.Kind.Id == "boron");
    }

    /// <summary>The table of docs/science/waters.md is that of the data.</summary>
    [Theory]
    [InlineData("EC, mS/cm", "ec", "0.0")]
    [InlineData("sodium, mg/L", "sodium", "0")]
    [InlineData("chloride, mg/L", "chloride", "0")]
    [InlineData("boron, mg/L", "boron", "0.0")]
    [InlineData("alkalinity, mg/L CaCO3", "alkalinity", "0")]
    [InlineData("hardness, mg/L CaCO3", "hardness", "0")]
    [InlineData("SAR", "sar", "0")]
    [InlineData("hydrogen carbonate on leaves, mg/L CaCO3", "leaf-spots", "0")]
    public void The_table_of_the_page_is_that_of_the_data(string row, string figure, string format)
    {
        string Cell(string sensitivity) => string.Join(" / ", new[] { "watch", "trouble" }.Select(level =>
            WaterLimit.Of(figure, sensitivity, level)!.Value.ToString(format, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Contains($"| {row} | {Cell("sensitive")} | {Cell("moderate")} | {Cell("tolerant")} |", RepositoryFile.Read("docs/science/waters.md"), StringComparison.Ordinal);
    }
}
