using System.Text.Json;
using Ashery.Solutions;
using Ashery.Solutions.Waters;

namespace Ashery.Tests.Solutions.Waters;

/// <summary>The made waters that ship against the general geochemical code that was run on them (reference file).</summary>
public class ExampleWaterTests
{
    [Theory]
    [InlineData("soft", "soft water")]
    [InlineData("moderate", "moderate water")]
    [InlineData("hard", "hard water")]
    [InlineData("saline", "very hard, saline well water")]
    public void Made_waters(string id, string reference)
    {
        var row = Reference.Root.GetProperty("source_waters").GetProperty(reference);
        var expected = row.GetProperty("expected");
        var water = SourceWaters.Default.Find(id)!;
        var solution = Speciation.Solve(water.ToInput());

        Assert.Equal(Number(expected, "pH"), solution.PH, 3);
        StandardTests.Close(Number(expected, "EC_mS_cm_25C"), Conductivity.Of(solution), 0.01);
        StandardTests.Close(Number(expected, "ionic_strength_mol_kg"), solution.IonicStrength, 0.005);
        StandardTests.Close(Number(expected, "total_inorganic_carbon_mmol_kg"), water.InorganicCarbon * 1000, 0.003);
        StandardTests.Close(Number(row, "chloride_mg_per_L_closing_the_balance"), water.Total("chloride") * 35453, 0.001);
        StandardTests.Close(Number(row.GetProperty("mg_per_L"), "Alk"), water.AlkalinityAsCalciumCarbonate, 1e-4);
        foreach (var index in expected.GetProperty("SI").EnumerateObject())
        {
            Assert.True(Math.Abs(index.Value.GetDouble() - SaturationIndex.Of(solution, Chemistry.Default.Minerals.Single(m => m.Id == index.Name))) < 0.02, index.Name);
        }

        var aired = Speciation.Solve(water.ToInput(air: Air.Open));
        Assert.True(Math.Abs(Number(expected.GetProperty("open_to_air"), "pH") - aired.PH) < 0.02);
        StandardTests.Close(Number(expected.GetProperty("open_to_air"), "EC_mS_cm"), Conductivity.Of(aired), 0.01);
    }

    [Theory]
    [InlineData("Soft")]
    [InlineData("soft water")]
    [InlineData("  HARD ")]
    [InlineData("rain")]
    public void Names_are_taken_as_people_say_them(string name) => Assert.NotNull(SourceWaters.Default.Find(name));

    [Fact]
    public void Pure_water_holds_nothing()
    {
        var pure = SourceWaters.Default.Find("pure")!;
        Assert.True(pure.IsPure);
        Assert.Equal(0, pure.ToInput().Totals.ToArray().Sum());
        Assert.Null(SourceWaters.Default.Find("treacle"));
    }

    // Rain in balance with the air is near pH 5.6 where nothing else decides (carbonic acid at 10^-3.38 atm; from memory).
    [Fact]
    public void Rain_is_slightly_acid()
    {
        var solution = Speciation.Solve(SourceWaters.Default.Find("rain")!.ToInput());
        Assert.InRange(solution.PH, 5.5, 5.8);
    }

    private static double Number(JsonElement row, string key) => row.GetProperty(key).GetDouble();
}
