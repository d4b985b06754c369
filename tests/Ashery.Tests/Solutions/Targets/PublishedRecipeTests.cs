using Ashery.Solutions;
using Ashery.Solutions.Targets;

namespace Ashery.Tests.Solutions.Targets;

/// <summary>
/// The two solutions of Hoagland and Arnon (1950), The water-culture method for growing plants without soil, California Agricultural Experiment Station Circular 347.
/// The circular itself was not seen; its recipe of the second (mM: NH4H2PO4 1, KNO3 6, Ca(NO3)2 4, MgSO4 2) and the composition of the first (mg/L: N 210, P 31, K 235, Ca 200, S 64,
/// Mg 48.6) were seen in retellings; the recipe of the first (mM: KH2PO4 1, KNO3 5, Ca(NO3)2 5, MgSO4 2) is from memory.
/// </summary>
public class PublishedRecipeTests
{
    private static readonly string[] Shelf = ["NH4H2PO4", "KH2PO4", "KNO3", "Ca(NO3)2·4H2O", "MgSO4·7H2O", "K2SO4", "NH4NO3", "(NH4)2SO4", "Mg(NO3)2·6H2O"];

    [Fact]
    public void The_second_solution_is_found_to_the_millimole()
    {
        var first = TargetKit.Find(TargetKit.Request("NO3-N=196.1 NH4-N=14.01 P=30.97 K=234.6 Ca=160.3 Mg=48.61 S=64.12", "pure", Shelf) with { AtMost = 4 }).Recipes[0];
        Assert.True(first.Error < 5e-4, first.Error.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(4, first.Parts.Count);
        Recipe(first, ("NH4H2PO4", 1), ("KNO3", 6), ("Ca(NO3)2·4H2O", 4), ("MgSO4·7H2O", 2));
    }

    [Fact]
    public void The_first_solution_is_found_from_its_composition()
    {
        // Printed to whole mg/L, so that the millimoles come out within a hundredth.
        var first = TargetKit.Find(TargetKit.Request("NO3-N=210 NH4-N<=1 P=31 K=235 Ca=200 Mg=48.6 S=64", "pure", Shelf) with { AtMost = 4 }).Recipes[0];
        Assert.True(first.Error < 0.002);
        Recipe(first, ("KH2PO4", 1), ("KNO3", 5), ("Ca(NO3)2·4H2O", 5), ("MgSO4·7H2O", 2));
    }

    private static void Recipe(TargetRecipe recipe, params (string Formula, double Millimoles)[] published)
    {
        foreach (var (formula, millimoles) in published)
        {
            Assert.True(Salt.TryFind(formula, out var salt));
            var part = Assert.Single(recipe.Parts, p => p.Material.Id == formula);
            Assert.Equal(millimoles, part.GramsPerLitre / salt.MolarMass * 1000, 0.015 * millimoles);
        }
    }
}
