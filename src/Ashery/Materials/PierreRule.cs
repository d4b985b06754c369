using Ashery.Nutrients;

namespace Ashery.Materials;

/// <summary>
/// Equivalent acidity after Pierre (1933, Ind. Eng. Chem. Anal. Ed. 5:229; the rule is recalled, not read): a plant takes
/// up half the nitrogen as base-forming, so that a product's acidity in equivalents is 0.5 N + 2 S + Cl + P - K - Na - 2 Ca - 2 Mg
/// (moles). Trace metals are not counted. Against a printed table it is within 2.5 % for ammonium sulfate, urea, ammonium nitrate and sodium
/// nitrate, but 5 to 8 % off for the ammonium phosphates, potassium and calcium nitrate: a printed figure goes before it.
/// </summary>
public static class PierreRule
{
    /// <summary>g CaCO3 for each equivalent of acid: half a mole.</summary>
    public const double GramsPerEquivalent = 100.086 / 2;

    /// <summary>kg CaCO3 a kg of product; positive acidifies.</summary>
    public static double LimeEquivalent(LabelAnalysis label)
    {
        var element = label.ToElements();
        return GramsPerEquivalent * (
            (0.5 * Moles(Nutrient.N, 14.007))
            + (2 * Moles(Nutrient.S, 32.06))
            + Moles(Nutrient.Cl, 35.45)
            + Moles(Nutrient.P, 30.974)
            - Moles(Nutrient.K, 39.098)
            - Moles(Nutrient.Na, 22.99)
            - (2 * Moles(Nutrient.Ca, 40.078))
            - (2 * Moles(Nutrient.Mg, 24.305)));

        // Moles a gram of product.
        double Moles(Nutrient nutrient, double weight) => element[nutrient] / weight;
    }
}
