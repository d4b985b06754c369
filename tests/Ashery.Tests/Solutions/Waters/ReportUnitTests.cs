using Ashery.Solutions;
using Ashery.Solutions.Waters;

namespace Ashery.Tests.Solutions.Waters;

/// <summary>Units and bases of reports against the tables of handbooks (degrees of hardness, nitrogen and phosphorus factors; from memory).</summary>
public class ReportUnitTests
{
    // The same calcium in every unit it is printed in: 100 mg/L Ca are 4.99 meq/L, 14.0 °dH, 25.0 °fH, 17.5 °e, 14.6 grains a US gallon.
    [Theory]
    [InlineData("Ca", 100, null)]
    [InlineData("calcium", 100, "mg/L")]
    [InlineData("Ca2+", 100000, "µg/L")]
    [InlineData("Ca", 100, "ppm")]
    [InlineData("Ca", 2.495, "mmol/L")]
    [InlineData("Ca", 4.990, "meq/l")]
    [InlineData("Ca", 4.990, "mval/L")]
    [InlineData("Ca", 249.7, "mg/L as CaCO3")]
    [InlineData("Ca", 249.7, "mg CaCO3/L")]
    [InlineData("calcium as CaCO3", 249.7, "mg/L")]
    [InlineData("calcium hardness", 249.7, null)]
    [InlineData("Ca", 139.9, "mg/L (as CaO)")]
    [InlineData("calcium hardness", 13.99, "°dH")]
    [InlineData("Ca", 24.97, "°fH")]
    [InlineData("Ca", 17.52, "grains a UK gallon")]
    [InlineData("Ca", 14.59, "gpg")]
    public void Calcium_in_every_unit(string name, double value, string? unit) => Close(2.495e-3, Moles(new(name, value, unit), "calcium"));

    [Theory]
    [InlineData("NO3", 44.27, "mg/L", "nitrate", 0.7140e-3)]
    [InlineData("NO3-N", 10, "mg/L", "nitrate", 0.7140e-3)]
    [InlineData("nitrate", 10, "mg/L as N", "nitrate", 0.7140e-3)]
    [InlineData("nitrate (as N)", 10, null, "nitrate", 0.7140e-3)]
    [InlineData("NO3", 10, "mg N/L", "nitrate", 0.7140e-3)]
    [InlineData("NH4-N", 14.007, "mg/L", "ammonium", 1e-3)]
    [InlineData("P", 30.974, null, "phosphate", 1e-3)]
    [InlineData("PO4", 94.971, "mg/L", "phosphate", 1e-3)]
    [InlineData("PO4-P", 30.974, "mg/L", "phosphate", 1e-3)]
    [InlineData("P2O5", 70.972, "mg/L", "phosphate", 1e-3)]
    [InlineData("SO4", 96.06, "mg/L", "sulfate", 1e-3)]
    [InlineData("sulphate-S", 32.06, "mg/L", "sulfate", 1e-3)]
    [InlineData("SO4 2-", 2, "meq/L", "sulfate", 1e-3)]
    [InlineData("B", 10.81, "mg/L", "borate", 1e-3)]
    [InlineData("boric acid", 61.83, "mg/L", "borate", 1e-3)]
    [InlineData("K2O", 47.10, "mg/L", "potassium", 1e-3)]
    public void Bases(string name, double value, string? unit, string component, double moles) => Close(moles, Moles(new(name, value, unit), component));

    // 1 mmol/L of HCO3 is 61.02 mg/L, 50.04 mg/L CaCO3, 2.804 °dKH, 5.004 °fH.
    [Theory]
    [InlineData("alkalinity", 50.04, null)]
    [InlineData("alkalinity", 1, "mmol/L")]
    [InlineData("alkalinity as HCO3", 61.02, "mg/L")]
    [InlineData("HCO3-", 61.02, "mg/L")]
    [InlineData("bicarbonate", 1, "meq/L")]
    [InlineData("KH", 2.804, "dKH")]
    [InlineData("carbonate hardness", 2.804, "°dH")]
    [InlineData("TAC", 5.004, "°fH")]
    public void Alkalinity_in_every_unit(string name, double value, string? unit)
    {
        var read = WaterReports.Read(Report(new(name, value, unit), new WaterLine("Ca", 20), new WaterLine("Mg", 0), new WaterLine("Na", 0), new WaterLine("SO4", 0), new WaterLine("Cl", 0)));
        Close(50.04, read.Value!.Alkalinity.Typical);
    }

    [Fact]
    public void Bicarbonate_and_carbonate_add_up()
    {
        var read = WaterReports.Read(Report(new WaterLine("HCO3", 61.02), new WaterLine("CO3", 30.005), new WaterLine("Na", 46)));
        Close(100.08, read.Value!.Alkalinity.Typical);
    }

    // ISO 7888 prints 1.116 for natural waters from 20 to 25 °C (from memory); here each water has its own.
    [Theory]
    [InlineData("moderate")]
    [InlineData("hard")]
    public void Conductivity_at_20_degrees_is_brought_to_25(string id)
    {
        var report = SourceWaters.Default.Example(id)!.Report;
        var read = WaterReports.Read(report with { Ec = new(500, "µS/cm", 20) }).Value!;
        Assert.InRange(read.MeasuredEc!.Value / 0.5, 1.116 * 0.99, 1.116 * 1.01);
    }

    [Theory]
    [InlineData(0.5, "mS/cm")]
    [InlineData(500, "uS/cm")]
    [InlineData(500, "µS / cm")]
    [InlineData(0.5, "dS/m")]
    [InlineData(50, "mS/m")]
    public void Units_of_conductivity(double value, string unit) =>
        Close(0.5, WaterReports.Read(new WaterReport { Id = "w", Name = "w", Ec = new(value, unit) }).Value!.MeasuredEc!.Value);

    private static double Moles(WaterLine line, string component)
    {
        // Enough of everything else that nothing of this component is put in.
        var read = WaterReports.Read(Report(line, new WaterLine("alkalinity", component is "calcium" or "ammonium" or "potassium" ? 50 : 0)));
        Assert.True(read.Ok, string.Join(" ", read.Problems));
        return read.Value.Water.Total(component);
    }

    private static WaterReport Report(params IReadOnlyList<WaterLine> lines) => new() { Id = "w", Name = "w", Lines = lines };

    private static void Close(double expected, double actual) => StandardTests.Close(expected, actual, 0.001);
}
