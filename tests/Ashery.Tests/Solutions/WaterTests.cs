using System.Text.Json;
using Ashery.Solutions;

namespace Ashery.Tests.Solutions;

/// <summary>Four waters and acids into three of them, against the reference code; salts and solids alone.</summary>
public class WaterTests
{
    [Theory]
    [InlineData("soft water")]
    [InlineData("moderate water")]
    [InlineData("hard water")]
    [InlineData("very hard, saline well water")]
    public void Waters(string name)
    {
        var expected = Reference.Root.GetProperty("source_waters").GetProperty(name).GetProperty("expected");
        var solution = Speciation.Solve(Reference.WaterNamed(name));
        Assert.Equal(Number(expected, "pH"), solution.PH, 3);
        StandardTests.Close(Number(expected, "EC_mS_cm_25C"), Conductivity.Of(solution), 0.01);
        StandardTests.Close(Number(expected, "ionic_strength_mol_kg"), solution.IonicStrength, 0.005);
        StandardTests.Close(Number(expected, "total_inorganic_carbon_mmol_kg"), solution.Total("carbonate") * 1000, 0.003);
        foreach (var index in expected.GetProperty("SI").EnumerateObject())
        {
            Assert.True(Math.Abs(index.Value.GetDouble() - SaturationIndex.Of(solution, Solid(index.Name))) < 0.02);
        }

        var open = Reference.WaterNamed(name).Under(Air.Open);
        var aired = Speciation.Solve(open);
        Assert.True(Math.Abs(Number(expected.GetProperty("open_to_air"), "pH") - aired.PH) < 0.02);
        StandardTests.Close(Number(expected.GetProperty("open_to_air"), "EC_mS_cm"), Conductivity.Of(aired), 0.01);
        Assert.True(Math.Abs(Number(expected.GetProperty("open_to_air"), "SI_calcite") - SaturationIndex.Of(aired, Solid("calcite"))) < 0.03);

        var after = expected.GetProperty("open_to_air_after_calcite_settles");
        var settled = Precipitation.Settle(open, [Solid("calcite")]);
        Assert.True(settled.Converged);
        Assert.True(Math.Abs(Number(after, "pH") - settled.After.PH) < 0.02);
        StandardTests.Close(Number(after, "EC_mS_cm"), Conductivity.Of(settled.After), 0.015);
        Assert.True(Math.Abs(Number(after, "calcite_mg_per_L") - (settled.Amount("calcite") * 100087)) < 1);
    }

    [Fact]
    public void Acids_to_a_ph()
    {
        var count = 0;
        foreach (var dose in Reference.Root.GetProperty("acid_to_target_pH").EnumerateArray())
        {
            var acid = Reference.Salt(dose.GetProperty("acid").GetString() switch { "nitric" => "HNO3", "phosphoric" => "H3PO4", "sulfuric" => "H2SO4", _ => "C6H8O7" });
            var water = Reference.WaterNamed(dose.GetProperty("water").GetString()!).At(dose.GetProperty("temperature_C").GetDouble());
            foreach (var air in new[] { Air.Closed, Air.Open })
            {
                var expected = dose.GetProperty(air == Air.Closed ? "closed" : "open");
                var found = AcidDose.ToPh(water.Under(air), acid, Number(dose, "target_pH")).Value!;
                StandardTests.Close(Number(expected, "acid_mmol_per_kg_water"), found.Moles * 1000, 0.01, $"{dose.GetProperty("id")} {air}");
                StandardTests.Close(Number(expected, "EC_mS_cm"), Conductivity.Of(found.After), 0.02, $"{dose.GetProperty("id")} {air} EC");
                Assert.True(Math.Abs(Number(expected, "alkalinity_left_mg_L_CaCO3") - SolutionMeasures.AlkalinityAsCalciumCarbonate(found.After)) < 0.5);
                count++;

                // Back by the sum of amounts.
                var again = AcidDose.ToAlkalinity(water.Under(air), acid, SolutionMeasures.Alkalinity(found.After)).Value!;
                Assert.Equal(found.Moles, again.Moles, 9);
            }
        }

        Assert.True(count >= 24, FormattableString.Invariant($"{count}"));
    }

    [Fact]
    public void Solids_alone_in_water()
    {
        var alone = Reference.Root.GetProperty("minerals_alone_in_water");
        foreach (var value in alone.GetProperty("gypsum_in_pure_water_g_CaSO4.2H2O_per_kg").EnumerateObject())
        {
            var rich = SolutionInput.Pure(double.Parse(value.Name, System.Globalization.CultureInfo.InvariantCulture)).With("Ca+2", 0.03).With("SO4-2", 0.03);
            StandardTests.Close(value.Value.GetDouble(), Precipitation.Settle(rich).After.Total("calcium") * 172.17, 0.01);
        }

        foreach (var value in alone.GetProperty("calcite_open_to_air").EnumerateObject())
        {
            var rich = SolutionInput.Pure(double.Parse(value.Name, System.Globalization.CultureInfo.InvariantCulture), Air.Open).With("Ca+2", 0.03);
            var after = Precipitation.Settle(rich, [Solid("calcite")]).After;
            Assert.True(Math.Abs(Number(value.Value, "pH") - after.PH) < 0.02);
            StandardTests.Close(Number(value.Value, "alkalinity_mg_L_CaCO3"), SolutionMeasures.AlkalinityAsCalciumCarbonate(after), 0.01);
            StandardTests.Close(Number(value.Value, "EC_mS_cm"), Conductivity.Of(after), 0.03);
        }

        var struvite = Precipitation.Settle(SolutionInput.Pure().With("Mg+2", 0.01).With("NH4+", 0.01).With("PO4-3", 0.01), [Solid("struvite")]).After;
        StandardTests.Close(251.4, struvite.Total("magnesium") * 245406, 0.02);
        Assert.True(Math.Abs(9.29 - struvite.PH) < 0.03);
        var brushite = Precipitation.Settle(SolutionInput.Pure().With("Ca+2", 0.01).With("PO4-3", 0.01), [Solid("brushite")]).After;
        StandardTests.Close(147.1, brushite.Total("calcium") * 172087, 0.02);
        Assert.True(Math.Abs(8.18 - brushite.PH) < 0.03);
    }

    [Fact]
    public void What_settles_from_feeds_and_stocks()
    {
        var count = 0;
        foreach (var c in Reference.Cases)
        {
            var expected = c.GetProperty("expected");
            var settled = Precipitation.Settle(Reference.Input(c));

            // Stocks are beyond the good range: syngenite there is 5.2 % low, the rest closer. The reference's amounts are those of the batch, a kilogram of added water; ours are per kilogram of all water, that of crystals included.
            var added = Reference.WaterMass(c);
            Assert.True(settled.Converged, c.GetProperty("id").GetString());
            var names = settled.Amounts.Select(a => a.Mineral.Id).Order(StringComparer.Ordinal);
            Assert.True(names.SequenceEqual(expected.GetProperty("precipitates").EnumerateArray().Select(p => p.GetString()!).Order(StringComparer.Ordinal)),
                $"{c.GetProperty("id")}: {string.Join(", ", settled.Amounts.Select(static a => FormattableString.Invariant($"{a.Mineral.Id} {a.Amount}")))}");
            if (expected.TryGetProperty("precipitates_at_equilibrium_mmol_L", out var amounts))
            {
                var stock = Number(expected, "ionic_strength_mol_kg") > 0.5;
                foreach (var amount in amounts.EnumerateObject())
                {
                    StandardTests.Close(amount.Value.GetDouble(), settled.Amount(amount.Name) * added * 1000, stock ? 0.1 : 0.02, $"{c.GetProperty("id")} {amount.Name}");
                    count++;
                }
            }
        }

        Assert.Equal(12, count);
    }

    // 100 g of each a kilogram of water: 0.356 mol by the reference code, 0.361 by a Pitzer model with chloride standing for nitrate.
    [Fact]
    public void Gypsum_from_calcium_nitrate_and_magnesium_sulfate()
    {
        var can = new Dissolving(SolutionInput.Pure()).Add(Reference.Salt("Ca(NO3)2·4H2O"), 100).Add(Reference.Salt("MgSO4·7H2O"), 100);
        var settled = Precipitation.Settle(can.Input());
        Assert.InRange(settled.Amount("gypsum") * can.WaterMass, 0.34, 0.38);
        Assert.True(settled.After.BeyondGoodRange);
        Assert.Single(settled.Amounts);
    }

    [Fact]
    public void Whether_a_salt_dissolves()
    {
        foreach (var row in Reference.Root.GetProperty("does_it_dissolve").EnumerateArray())
        {
            var limit = SaltSolubility.Limit(Reference.Salt(row.GetProperty("salt").GetString()!), Number(row, "temperature_C"))!.Value;
            StandardTests.Close(Number(row, "limit_g_per_kg_water"), limit, 0.003, row.GetProperty("id").GetString()!);
            Assert.Equal(row.GetProperty("dissolves").GetBoolean(), Number(row, "g_per_kg_water") <= limit);
        }
    }

    private static double Number(JsonElement row, string key) => row.GetProperty(key).GetDouble();

    private static Mineral Solid(string id) => Chemistry.Default.Minerals.Single(m => m.Id == id);
}
