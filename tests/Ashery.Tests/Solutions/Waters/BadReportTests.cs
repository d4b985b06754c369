using Ashery.Problems;
using Ashery.Solutions.Waters;

namespace Ashery.Tests.Solutions.Waters;

/// <summary>Every way a report can be wrong is answered with the field, what is wrong and what to do.</summary>
public class BadReportTests
{
    /// <summary>Less than no alkalinity, as water of a low pH has it, is not less than no hardness: nothing is below nil.</summary>
    [Theory]
    [InlineData(4.2, "alkalinity", 0)]
    [InlineData(2.5, "Fe", 500)]
    [InlineData(3, "SO4", 20)]
    public void Acid_water_without_hardness(double pH, string name, double value)
    {
        var read = WaterReports.Read(new WaterReport { Id = "w", Name = "w", PH = pH, Lines = [new(name, value)] });
        Assert.All(read.Value!.Water.ToInput().Totals.ToArray(), static total => Assert.True(total >= 0));
        Assert.True(read.Value!.Hardness.Low >= 0);
    }

    [Fact]
    public void A_negative_figure() => Says("Ca", "negative", new WaterLine("Ca", -4));

    [Fact]
    public void No_number() => Says("Ca", "not a number", new WaterLine("Ca", double.NaN));

    [Fact]
    public void An_unknown_unit() => Says("Ca", "\"furlongs\" is not a unit", new WaterLine("Ca", 40, "furlongs"));

    [Fact]
    public void Degrees_of_hardness_for_sodium() => Says("Na", "sodium is neither", new WaterLine("Na", 4, "°dH"));

    [Fact]
    public void Equivalents_of_phosphorus() => Says("P", "hangs on the pH", new WaterLine("P", 1, "meq/L"));

    [Fact]
    public void A_basis_that_is_none() => Says("Na", "not reported as N", new WaterLine("Na", 4, "mg/L as N"));

    [Fact]
    public void Name_and_unit_contradict() => Says("NO3-N", "The name says N, the unit says NO3", new WaterLine("NO3-N", 4, "mg/L as NO3"));

    [Fact]
    public void An_ion_twice() => Says("calcium", "calcium is there twice", new WaterLine("Ca", 40), new WaterLine("calcium", 41));

    [Fact]
    public void Nitrate_twice_in_two_bases() => Says("NO3-N", "nitrate is there twice: NO3 44.3 mg/L and NO3-N 10 mg/L", new WaterLine("NO3", 44.3), new WaterLine("NO3-N", 10));

    [Fact]
    public void Alkalinity_twice() => Says("HCO3", "is there twice", new WaterLine("alkalinity", 100), new WaterLine("HCO3", 122));

    [Fact]
    public void Something_that_is_no_ion() => Says("glitter", "nothing a water report is read for", new WaterLine("glitter", 1));

    [Fact]
    public void Gigantic() => Says("Na", "more than a mole", new WaterLine("Na", 400000));

    [Fact]
    public void Hardness_below_calcium_and_magnesium() => Says("hardness", "less than the calcium and magnesium listed, 250 mg/L", new WaterLine("hardness", 5, "°dH"), new WaterLine("Ca", 80), new WaterLine("Mg", 12.2));

    [Fact]
    public void Empty() => Says("water", "empty");

    [Fact]
    public void Only_traces() => Says("water", "None of the ions", new WaterLine("B", 0.1));

    [Fact]
    public void Ph_15()
    {
        var read = WaterReports.Read(Report(new WaterLine("Ca", 40)) with { PH = 15 });
        Assert.Contains(read.Problems, static p => p.Field == "pH" && p.Message.Contains("outside 2 to 12", StringComparison.Ordinal));
    }

    [Fact]
    public void Alkalinity_below_ph_4_5()
    {
        var read = WaterReports.Read(Report(new WaterLine("Ca", 40), new WaterLine("alkalinity", 80)) with { PH = 4.1 });
        Assert.Contains(read.Problems, static p => p.Field == "alkalinity" && p.Message.Contains("no alkalinity", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(-1, "mS/cm", 25, "negative")]
    [InlineData(0.5, "bushels", 25, "not a unit of conductivity")]
    [InlineData(0.5, "mS/cm", 60, "outside 0 to 40")]
    [InlineData(900, "mS/cm", 25, "four times sea water")]
    public void Conductivity(double value, string unit, double celsius, string words)
    {
        var read = WaterReports.Read(Report(new WaterLine("Ca", 40)) with { Ec = new(value, unit, celsius) });
        Assert.Contains(read.Problems, p => p.Field == "ec" && p.Message.Contains(words, StringComparison.Ordinal));
    }

    // Complete, and the anions are far too few: nitrate as N was printed under NO3.
    [Fact]
    public void A_balance_off_by_40_percent_names_the_heavy_side()
    {
        var read = WaterReports.Read(Report(new WaterLine("Ca", 80), new WaterLine("Mg", 20), new WaterLine("Na", 40), new WaterLine("K", 4), new WaterLine("alkalinity", 80), new WaterLine("SO4", 30), new WaterLine("Cl", 10), new WaterLine("NO3", 5)));
        Assert.False(read.Ok);
        var problem = Assert.Single(read.Problems);
        Assert.Equal("balance", problem.Field);
        Assert.Contains("The cations are heavy", problem.Message, StringComparison.Ordinal);
        Assert.Matches("(4[0-9]) % apart", problem.Message);
    }

    // 20 mg/L of magnesium as CaCO3 and 80 of calcium as CaCO3 were printed as if they were the ions: read so, it closes.
    [Fact]
    public void A_slip_of_the_basis_is_found()
    {
        var moderate = SourceWaters.Default.Example("moderate")!.Report;
        var slipped = moderate with { Lines = [.. moderate.Lines.Select(static l => l.Name == "Ca" ? l with { Value = 112.4 } : l)] };
        var read = WaterReports.Read(slipped);
        Assert.False(read.Ok);
        Assert.Contains("closes when calcium 112.4 is read as mg/L CaCO3 instead of mg/L Ca", Assert.Single(read.Problems).Message, StringComparison.Ordinal);
    }

    // Eight per cent apart: used, closed and warned of.
    [Fact]
    public void A_balance_a_little_off_is_a_warning()
    {
        var moderate = SourceWaters.Default.Example("moderate")!.Report;
        var read = WaterReports.Read(moderate with { Lines = [.. moderate.Lines.Select(static l => l.Name == "Na" ? l with { Value = 34 } : l)] });
        Assert.True(read.Ok);
        Assert.Equal(BalanceVerdict.Off, read.Value.Balance.Verdict);
        Assert.Equal("chloride", read.Value.Closing!.Value.Quantity);
        Assert.Contains(read.Problems, static p => p.Field == "balance" && p.Severity == Severity.Warning);
    }

    [Fact]
    public void All_faults_at_once() =>
        Assert.Equal(3, WaterReports.Read(Report(new WaterLine("Ca", -1), new WaterLine("Mg", 4, "spoons"), new WaterLine("Na", 1)) with { PH = 15 }).Problems.Count);

    [Theory]
    [InlineData("4,5", "Write 4.5 for a decimal, 45 for thousands")]
    [InlineData("1,250.5", "without marks of thousands")]
    [InlineData("plenty", "with a point")]
    [InlineData("1e999", "Give the figure")]
    [InlineData("-3", "Check the sign")]
    [InlineData("NaN", "Give the figure")]
    public void Figures_as_typed(string text, string wayOut)
    {
        var read = WaterNumber.Read(text, "Ca");
        Assert.Contains(wayOut, Assert.Single(read.Problems).WayOut, StringComparison.Ordinal);
    }

    [Fact]
    public void Less_than_is_half_of_it_with_its_range()
    {
        Assert.True(WaterNumber.Read(" < 0.5 ", "NO3").Value!.Below);
        var moderate = SourceWaters.Default.Example("moderate")!.Report;
        var read = WaterReports.Read(moderate with { Lines = [.. moderate.Lines.Where(static l => l.Name != "NO3"), new("NO3", 0.5, null, Below: true)] }).Value!;
        var nitrate = Assert.Single(read.Estimates, static e => e.Quantity == "nitrate").MgPerLitre;
        Assert.Equal(0.25, nitrate.Typical, 9);
        Assert.Equal((0, 0.5), (nitrate.Low, Math.Round(nitrate.High, 9)));
    }

    private static void Says(string field, string words, params IReadOnlyList<WaterLine> lines)
    {
        var read = WaterReports.Read(Report(lines));
        Assert.False(read.Ok);
        Assert.True(read.Problems.Any(p => p.Field == field && p.Message.Contains(words, StringComparison.Ordinal) && p.WayOut.Length > 10), string.Join("\n", read.Problems));
    }

    private static WaterReport Report(params IReadOnlyList<WaterLine> lines) => new() { Id = "w", Name = "w", Lines = lines };
}
