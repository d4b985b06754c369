using Ashery.RootZone.State;
using Ashery.Solutions;
using Ashery.Solutions.Waters;

namespace Ashery.RootZone;

/// <summary>The water that is poured on.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="PerLitre">mol/L; its alkalinity is the charge its cations have over its anions.</param>
public sealed record WaterSupply(string Name, Ions PerLitre)
{
    private static readonly (int Ion, string Component)[] Components =
    [
        (Ion.Nitrate, "nitrate"), (Ion.Ammonium, "ammonium"), (Ion.Phosphate, "phosphate"), (Ion.Potassium, "potassium"), (Ion.Calcium, "calcium"),
        (Ion.Magnesium, "magnesium"), (Ion.Sulfate, "sulfate"), (Ion.Chloride, "chloride"), (Ion.Sodium, "sodium"), (Ion.Boron, "borate"),
        (Ion.Iron, "iron"), (Ion.Manganese, "manganese"), (Ion.Zinc, "zinc"), (Ion.Copper, "copper"),
    ];

    public static WaterSupply Pure { get; } = new("pure", default);

    /// <summary>Rain over land, the row of data/solutions/waters.json.</summary>
    public static WaterSupply Rain => OfRain.Value;

    private static Lazy<WaterSupply> OfRain { get; } = new(static () => SourceWaters.Default.Find("rain") is { } rain ? Of(rain) : Pure);

    /// <summary>Alkalinity, mol of charge a litre.</summary>
    public double Alkalinity => IonMath.Dot(PerLitre, Ion.Charges);

    /// <summary>The water of a solution, a kilogram taken as a litre. Urea, carbonate and what the model does not follow stay out; charge carries the alkalinity.</summary>
    public static WaterSupply Of(string name, SolutionInput water)
    {
        var ions = default(Ions);
        foreach (var (ion, component) in Components)
        {
            ions[ion] = water.Total(component);
        }

        ions[Ion.Urea] = 2 * water.Total("urea");
        return new(name, ions);
    }

    /// <summary>A source water.</summary>
    public static WaterSupply Of(SourceWater water) => Of(water.Name, water.ToInput());

    // mol/L that no chemistry can tell from none.
    private const double Nothing = 1e-14;

    /// <summary>The same water as amounts of the chemistry of solutions, carbonate not set.</summary>
    internal static SolutionInput ToInput(in Ions perLitre, double celsius)
    {
        var input = SolutionInput.Pure(celsius);
        foreach (var (ion, component) in Components)
        {
            input = input.With(component, perLitre[ion] < Nothing ? 0 : perLitre[ion]);
        }

        return input.With("urea", perLitre[Ion.Urea] / 2);
    }
}
