using Ashery.Solutions;
using Ashery.Solutions.Waters;
using CsCheck;

namespace Ashery.Tests.Solutions.Waters;

/// <summary>What a report comes to: what is missing, how sure it is, what the figures are.</summary>
public class ReadingTests
{
    [Theory]
    [InlineData("soft")]
    [InlineData("moderate")]
    [InlineData("hard")]
    [InlineData("saline")]
    public void A_whole_report_needs_nothing_put_in(string id)
    {
        var read = SourceWaters.Default.Example(id)!.Reading;
        Assert.Empty(read.Estimates);
        Assert.Equal(BalanceVerdict.Closes, read.Balance.Verdict);
        Assert.True(Math.Abs(read.Balance.Percent) < 0.1);
        Assert.True(read.ComputedEc.IsCertain && read.Hardness.IsCertain);
    }

    // What was left out comes back, and the true figure lies in the stated range: each ion of each made water in turn.
    [Theory]
    [InlineData("Cl")]
    [InlineData("Na")]
    [InlineData("SO4")]
    [InlineData("alkalinity")]
    [InlineData("Mg")]
    public void One_missing_ion_is_put_in_within_its_range(string missing)
    {
        foreach (var example in SourceWaters.Default.All.Where(static w => w.Report.Id is not "rain"))
        {
            var whole = example.Reading;
            var quantity = whole.Report.Lines.Single(l => l.Name == missing);
            var part = WaterReports.Read(whole.Report with { Lines = [.. whole.Report.Lines.Where(l => l.Name != missing)] }).Value!;
            var estimate = part.Estimates.Single();
            Assert.True(estimate.MgPerLitre.Low <= quantity.Value && estimate.MgPerLitre.High >= quantity.Value, FormattableString.Invariant($"{whole.Report.Id} {missing}: {estimate.MgPerLitre} for {quantity.Value}"));
            Assert.True(part.ComputedEc.Low <= whole.ComputedEc.Typical && part.ComputedEc.High >= whole.ComputedEc.Typical, $"{whole.Report.Id} {missing}: {part.ComputedEc} for {whole.ComputedEc}");
            Assert.True(part.Hardness.Low <= whole.Hardness.Typical + 1e-9 && part.Hardness.High >= whole.Hardness.Typical - 1e-9);
        }
    }

    // Hardness, alkalinity and conductivity, as many waterworks print no more.
    [Fact]
    public void Hardness_alkalinity_and_conductivity_alone()
    {
        foreach (var example in SourceWaters.Default.All.Where(static w => w.Report.Id is not "rain"))
        {
            var whole = example.Reading;
            var read = WaterReports.Read(new WaterReport
            {
                Id = "w", Name = "w", PH = whole.Report.PH, Ec = new(whole.ComputedEc.Typical),
                Lines = [new("hardness", whole.Hardness.Typical), new("alkalinity", whole.Alkalinity.Typical)],
            }).Value!;
            StandardTests.Close(whole.ComputedEc.Typical, read.ComputedEc.Typical, 0.01, whole.Report.Id);
            StandardTests.Close(whole.Hardness.Typical, read.Hardness.Typical, 1e-4);
            foreach (var estimate in read.Estimates)
            {
                var truth = whole.MgPerLitre(estimate.Quantity);
                Assert.True(estimate.MgPerLitre.Low <= truth + 1e-6 && estimate.MgPerLitre.High >= truth - 1e-6, FormattableString.Invariant($"{whole.Report.Id} {estimate.Quantity}: {estimate.MgPerLitre} for {truth}"));
            }
        }
    }

    [Fact]
    public void Conductivity_alone_gives_a_guess_that_meets_it_and_says_so()
    {
        var read = WaterReports.Read(new WaterReport { Id = "w", Name = "w", Ec = new(0.6) }).Value!;
        StandardTests.Close(0.6, read.ComputedEc.Typical, 0.001);
        Assert.All(read.Estimates, static e => Assert.Contains("a guess", e.How, StringComparison.Ordinal));
        Assert.True(read.Hardness.High > 1.5 * read.Hardness.Low);
    }

    [Fact]
    public void Dissolved_solids_alone_are_met()
    {
        var read = WaterReports.Read(new WaterReport { Id = "w", Name = "w", Lines = [new("TDS", 400)] }).Value!;
        StandardTests.Close(400, read.Solids, 0.05);
    }

    [Fact]
    public void A_measured_conductivity_that_does_not_fit_is_told()
    {
        var report = SourceWaters.Default.Example("moderate")!.Report;
        Assert.Contains("they agree", WaterReports.Read(report with { Ec = new(0.42) }).Value!.EcWords, StringComparison.Ordinal);
        Assert.Contains("not accounted for", WaterReports.Read(report with { Ec = new(0.6) }).Value!.EcWords, StringComparison.Ordinal);
        Assert.Contains("printed too high", WaterReports.Read(report with { Ec = new(0.3) }).Value!.EcWords, StringComparison.Ordinal);
    }

    // By hand for the saline water: Na 6.09, Ca 5.99, Mg 3.29 meq/L; SAR 6.09/sqrt(4.64) = 2.83; hardness 464 mg/L; alkalinity 6.39 − 9.28 = −2.89 meq/L.
    [Fact]
    public void Figures_worked_by_hand()
    {
        var read = SourceWaters.Default.Example("saline")!.Reading;
        StandardTests.Close(2.83, read.Sar!.Value.Typical, 0.003);
        StandardTests.Close(464.4, read.Hardness.Typical, 0.002);
        Assert.Equal(-2.89, read.ResidualAlkalinity, 2);
        Assert.True(read.AdjustedSar > read.Sar.Value.Typical);
    }

    // FAO Irrigation and Drainage Paper 29, table 11 (from memory): calcium in meq/L by the ratio HCO3/Ca (meq) and EC 0.5 dS/m, ionic strength about 0.006.
    [Theory]
    [InlineData(0.05, 14.40)]
    [InlineData(1.00, 1.96)]
    public void Calcium_in_soil_water(double ratio, double expected) => StandardTests.Close(expected, 2000 * AdjustedSar.Calcium(2 * ratio, 0.006), 0.04);

    // Sea water of salinity 35 (Millero 2008, Deep-Sea Res. I 55:50; from memory) balances, and conducts 53 mS/cm at 25 °C; beyond the good range, so to 10 %.
    [Fact]
    public void Sea_water()
    {
        var read = WaterReports.Read(new WaterReport
        {
            Id = "sea", Name = "sea", PH = 8.1,
            Lines = [new("Na", 11036), new("Mg", 1314), new("Ca", 422), new("K", 409), new("Cl", 19815), new("SO4", 2775), new("alkalinity", 2.36, "meq/L"), new("NO3", 0)],
        }).Value!;
        Assert.Equal(BalanceVerdict.Closes, read.Balance.Verdict);
        Assert.True(read.Solution.BeyondGoodRange);
        StandardTests.Close(53, read.ComputedEc.Typical, 0.1);
    }

    [Fact]
    public void Acid_rain_has_its_acid_as_a_cation()
    {
        var read = WaterReports.Read(new WaterReport { Id = "r", Name = "r", PH = 4.2, Lines = [new("SO4", 3), new("NO3", 2), new("Ca", 0.4), new("Mg", 0.1), new("Na", 0.4), new("Cl", 0.6), new("NH4", 0.5)] }).Value!;
        Assert.Contains(read.Sides.Cations, static i => i.Symbol == "H");
        Assert.InRange(read.Solution.PH, 4.0, 4.4);
    }

    [Fact]
    public void No_ph_is_balance_with_the_air()
    {
        var report = SourceWaters.Default.Example("hard")!.Report with { PH = null };
        var read = WaterReports.Read(report).Value!;
        Assert.NotNull(read.PhWords);
        var open = Speciation.Solve(read.Water.ToInput(air: Air.Open));
        Assert.Equal(open.PH, read.Solution.PH, 6);
    }

    /// <summary>Whatever is left out of whatever water, the water is neutral, holds its alkalinity and no amount is below nothing.</summary>
    [Fact]
    public void Every_reading_is_a_water() => Gen.Select(Gen.Double[0, 8].Array[4], Gen.Double[0, 8].Array[3], Gen.Bool.Array[8], Gen.Double[5, 9], Gen.Double[0.05, 4], Gen.Bool).Sample(
        (cations, anions, kept, pH, ec, withEc) =>
        {
            string[] names = ["Ca", "Mg", "Na", "K", "alkalinity", "SO4", "Cl"];
            var lines = names.Zip([.. cations, .. anions], static (n, v) => new WaterLine(n, v, "meq/L")).Where((_, i) => kept[i]).ToList();
            var read = WaterReports.Read(new WaterReport { Id = "w", Name = "w", Lines = lines, PH = kept[7] ? pH : null, Ec = withEc ? new(ec) : null });
            if (!read.Ok)
            {
                Assert.All(read.Problems, static p => Assert.True(p.Field is "balance" or "water", p.ToString()));
                return;
            }

            var sides = read.Value.Sides;
            Assert.Equal(sides.Cations.Sum(static i => i.Charge), sides.Anions.Sum(static i => i.Charge), 6);
            Assert.All(read.Value.Estimates, static e => Assert.True(e.Moles.Low <= e.Moles.Typical + 1e-12 && e.Moles.Typical <= e.Moles.High + 1e-12 && e.Moles.Low >= 0, e.ToString()));
            Assert.True(read.Value.Solution.Certificate.Holds);
            Assert.True(read.Value.ComputedEc.Low <= read.Value.ComputedEc.High);
        },
        iter: 400, seed: "0000000000000");
}
