using Ashery.Nutrients;

namespace Ashery.Solutions.Can;

/// <summary>How much of a nutrient the components of a solution hold. The nitrogen of a chelate feeds no plant and is not counted.</summary>
public static class IonNutrients
{
    // Components with the atoms of the nutrient each holds.
    private static readonly (Nutrient Nutrient, string Component, double Atoms)[] Held =
    [
        (Nutrient.N, "ammonium", 1), (Nutrient.N, "nitrate", 1), (Nutrient.N, "urea", 2), (Nutrient.P, "phosphate", 1), (Nutrient.K, "potassium", 1),
        (Nutrient.Ca, "calcium", 1), (Nutrient.Mg, "magnesium", 1), (Nutrient.S, "sulfate", 1), (Nutrient.S, "thiosulfate", 2),
        (Nutrient.Fe, "iron", 1), (Nutrient.Fe, "iron EDTA", 1), (Nutrient.Fe, "iron DTPA", 1), (Nutrient.Fe, "iron EDDHA", 1),
        (Nutrient.Mn, "manganese", 1), (Nutrient.Mn, "manganese EDTA", 1), (Nutrient.Zn, "zinc", 1), (Nutrient.Zn, "zinc EDTA", 1),
        (Nutrient.Cu, "copper", 1), (Nutrient.Cu, "copper EDTA", 1), (Nutrient.B, "borate", 1), (Nutrient.Mo, "molybdate", 1),
        (Nutrient.Cl, "chloride", 1), (Nutrient.Na, "sodium", 1),
    ];

    /// <summary>g of the nutrient in these amounts (mol of components), element basis.</summary>
    public static double GramsOf(Nutrient nutrient, IReadOnlyList<(int Component, double Moles)> amounts)
    {
        var sum = 0.0;
        foreach (var (component, moles) in amounts)
        {
            sum += moles * GramsPerMole(nutrient, component);
        }

        return sum;
    }

    /// <summary>g of the nutrient in totals by component index (mol/kg gives g/kg), element basis.</summary>
    public static double GramsOf(Nutrient nutrient, ReadOnlySpan<double> totals)
    {
        var sum = 0.0;
        foreach (var (held, component, atoms) in Held)
        {
            if (held == nutrient)
            {
                sum += totals[Chemistry.Default.Known(component)] * atoms * Weight(nutrient);
            }
        }

        return sum;
    }

    /// <summary>g of the nutrient a mole of a component holds; 0 where it holds none.</summary>
    public static double GramsPerMole(Nutrient nutrient, int component)
    {
        var name = Chemistry.Default.Components[component].Name;
        foreach (var (held, holder, atoms) in Held)
        {
            if (held == nutrient && holder == name)
            {
                return atoms * Weight(nutrient);
            }
        }

        return 0;
    }

    internal static double Weight(Nutrient nutrient) => AtomicWeights.Find(nutrient.ToString())!.Value;
}
