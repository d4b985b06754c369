using Ashery.Nutrients;
using Ashery.Solutions.Can;

namespace Ashery.Solutions.Targets;

/// <summary>Something a solution may be wanted to hold: a nutrient as the element, or one form of nitrogen as N.</summary>
/// <param name="Symbol">As written: <c>N</c>, <c>NO3-N</c>, <c>Ca</c>.</param>
/// <param name="Name">As said: <c>nitrate nitrogen</c>.</param>
/// <param name="Nutrient">Of which element.</param>
/// <param name="Component">The one component counted; null for all that hold the element.</param>
public sealed record TargetItem(string Symbol, string Name, Nutrient Nutrient, string? Component = null)
{
    /// <summary>In the order they are shown.</summary>
    public static IReadOnlyList<TargetItem> All { get; } =
    [
        new("N", "nitrogen", Nutrient.N), new("NO3-N", "nitrate nitrogen", Nutrient.N, "nitrate"), new("NH4-N", "ammonium nitrogen", Nutrient.N, "ammonium"),
        new("urea-N", "urea nitrogen", Nutrient.N, "urea"), new("P", "phosphorus", Nutrient.P), new("K", "potassium", Nutrient.K), new("Ca", "calcium", Nutrient.Ca),
        new("Mg", "magnesium", Nutrient.Mg), new("S", "sulfur", Nutrient.S), new("Fe", "iron", Nutrient.Fe), new("Mn", "manganese", Nutrient.Mn), new("Zn", "zinc", Nutrient.Zn),
        new("Cu", "copper", Nutrient.Cu), new("B", "boron", Nutrient.B), new("Mo", "molybdenum", Nutrient.Mo), new("Cl", "chloride", Nutrient.Cl), new("Na", "sodium", Nutrient.Na),
    ];

    /// <summary>True for a form of nitrogen, of which a per cent of all nitrogen may be asked.</summary>
    public bool IsForm => Component is not null;

    public static TargetItem Of(string symbol)
    {
        foreach (var item in All)
        {
            if (item.Symbol == symbol)
            {
                return item;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(symbol), symbol, "No item of a target.");
    }

    /// <summary>g of it in a gram of product.</summary>
    public double Content(MaterialInWater material)
    {
        var sum = 0.0;
        foreach (var (component, moles) in material.Gives)
        {
            sum += moles * PerMole(component);
        }

        return sum;
    }

    /// <summary>g/kg of it in totals by component (mol/kg).</summary>
    public double Grams(ReadOnlySpan<double> totals)
    {
        var sum = 0.0;
        for (var c = 0; c < totals.Length; c++)
        {
            sum += totals[c] > 0 ? totals[c] * PerMole(c) : 0;
        }

        return sum;
    }

    private double PerMole(int component) =>
        Component is null || Chemistry.Default.Components[component].Name == Component ? IonNutrients.GramsPerMole(Nutrient, component) : 0;
}
