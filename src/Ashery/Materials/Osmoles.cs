using Ashery.Nutrients;

namespace Ashery.Materials;

/// <summary>
/// Particles set free in dilute solution, counted as if every salt fell apart fully and ideally (osmotic coefficient 1):
/// good for comparing materials, some 5 to 10 % high at feed strength for salts of doubly charged ions.
/// </summary>
public static class Osmoles
{
    /// <summary>Osmoles a kg of a pure substance that sets free so many particles for each formula unit.</summary>
    public static double PerKg(double particles, double molarMass, double purity) => particles * 1000 / molarMass * purity;

    /// <summary>
    /// Osmoles a kg from the label alone: each nutrient as the ion it dissolves to (ammonium, nitrate, urea with two N, phosphate,
    /// sulfate, or thiosulfate with two S). Calcium and magnesium present as carbonate stay undissolved and do not count.
    /// </summary>
    public static double FromLabel(LabelAnalysis label, NitrogenForms nitrogen, IReadOnlySet<string> ions)
    {
        var e = label.ToElements();
        var moles = (nitrogen.Ammonium / 14.007) + (nitrogen.Nitrate / 14.007) + (nitrogen.Urea / 28.014)
            + (e[Nutrient.P] / 30.974) + (e[Nutrient.K] / 39.098)
            + (e[Nutrient.S] / (ions.Contains("thiosulfate") ? 64.12 : 32.06))
            + (e[Nutrient.Cl] / 35.45) + (e[Nutrient.Na] / 22.99)
            + (e[Nutrient.Fe] / 55.845) + (e[Nutrient.Mn] / 54.938) + (e[Nutrient.Zn] / 65.38) + (e[Nutrient.Cu] / 63.546)
            + (e[Nutrient.B] / 10.81) + (e[Nutrient.Mo] / 95.95);
        if (!ions.Contains("carbonate"))
        {
            moles += (e[Nutrient.Ca] / 40.078) + (e[Nutrient.Mg] / 24.305);
        }

        return moles * 1000;
    }
}
