using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Tests.Compatibility;

/// <summary>The few verdicts that no setting may override, for every pair of the catalogue they speak of.</summary>
public class HardStopTests
{
    [Fact]
    public void Nitrate_with_a_dry_organic_or_with_sulfur_or_its_coat() =>
        Each(Nitrate, m => (m.IsOrganic && m.Moisture < 0.15) || m.Id is "elemental-sulfur" or "sulfur-coated-urea", pair =>
            Assert.True(pair is { DryToday: { Verdict: Verdict.Stop, IsHardStop: true }, DryStored: { Verdict: Verdict.Stop, IsHardStop: true } }, pair.ToString()));

    [Fact]
    public void Nitrate_kept_with_moist_compost() =>
        Each(Nitrate, m => m.IsOrganic && m.Moisture >= 0.15, pair =>
            Assert.True(pair.DryStored is { Verdict: Verdict.Stop, IsHardStop: true }, pair.ToString()));

    [Fact]
    public void Ammonium_with_lime_wood_ash_or_another_strong_alkali() =>
        Each(
            m => m.Ions.Contains("ammonium"),
            m => m.CompatibilityGroup is "LIME" or "HYDL" && !m.Ions.Contains("ammonium"),
            pair => Assert.True(pair is { DryToday: { Verdict: Verdict.Stop, IsHardStop: true }, DryStored: { Verdict: Verdict.Stop, IsHardStop: true } }, pair.ToString()));

    [Fact]
    public void Ammonium_nitrate_with_urea_dry_though_not_in_solution() =>
        Each(m => m.Id is "ammonium-nitrate" or "calcium-ammonium-nitrate" or "ammonium-sulfate-nitrate", m => m.Id == "urea", pair =>
        {
            Assert.True(pair is { DryToday: { Verdict: Verdict.Stop, IsHardStop: true }, DryStored: { Verdict: Verdict.Stop, IsHardStop: true } }, pair.ToString());
            Assert.NotEqual(Verdict.Stop, pair.InSolution.Verdict);
        });

    [Fact]
    public void Calcium_with_sulfate_or_phosphate_in_a_stock_solution() =>
        Each(
            m => m.Dissolves && m.Ions.Contains("calcium"),
            m => m.Dissolves && (m.Ions.Contains("sulfate") || m.Ions.Contains("phosphate")),
            pair => Assert.True(pair.InSolution is { Verdict: Verdict.Stop, IsHardStop: true }, pair.ToString()));

    [Fact]
    public void Nitric_acid_with_urea_organics_or_thiosulfate() =>
        Each(m => m.Id == "nitric-acid", m => m.Ions.Contains("urea") || m.IsOrganic || m.Ions.Contains("thiosulfate"), pair =>
            Assert.True(pair.InSolution is { Verdict: Verdict.Stop, IsHardStop: true }, pair.ToString()));

    [Fact]
    public void Acid_with_carbonate_or_thiosulfate_in_solution() =>
        Each(m => m.Kind == MaterialKind.Acid, m => m.Ions.Contains("carbonate") || m.Ions.Contains("thiosulfate"), pair =>
            Assert.True(pair.InSolution is { Verdict: Verdict.Stop, IsHardStop: true }, pair.ToString()));

    [Fact]
    public void A_growers_own_bag_is_known_by_its_nitrogen()
    {
        var own = new Material
        {
            Id = "my-bag",
            Name = "My bag",
            Kind = MaterialKind.Straight,
            Label = LabelAnalysis.Grade(14, 0, 0),
            Nitrogen = new NitrogenForms(Ammonium: 0, Nitrate: 0.14, Urea: 0, Organic: 0, SlowSynthetic: 0),
            CompatibilityGroup = "OWN",
        };
        Assert.True(CompatibilityChart.Default.Judge(own, Find("neem-cake")).DryStored.IsHardStop);
        Assert.Equal(Verdict.Unknown, CompatibilityChart.Default.Judge(own, Find("epsom-salt")).DryStored.Verdict);
    }

    private static bool Nitrate(Material m) => m.Ions.Contains("nitrate");

    private static Material Find(string id) => MaterialCatalogue.Default.Find(id)!;

    private static void Each(Func<Material, bool> a, Func<Material, bool> b, Action<PairVerdict> check)
    {
        var seen = 0;
        foreach (var first in MaterialCatalogue.Default.All.Where(a))
        {
            foreach (var second in MaterialCatalogue.Default.All.Where(b).Where(m => m.Id != first.Id))
            {
                check(CompatibilityChart.Default.Judge(first, second));
                seen++;
            }
        }

        Assert.True(seen > 0, "no pair of the catalogue is spoken of");
    }
}
