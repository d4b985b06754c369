namespace Ashery.Solutions;

/// <summary>Grams into a kilogram of water: adds salts to a water and gives the totals per kg of all water, that of crystals included.</summary>
public sealed class Dissolving
{
    private const double WaterMolarMass = 0.018015;

    private readonly double[] moles;
    private readonly SolutionInput water;

    /// <param name="water">The water it is dissolved in, of which one kilogram is taken.</param>
    public Dissolving(SolutionInput water)
    {
        this.water = water;
        moles = water.Totals.ToArray();
    }

    /// <summary>kg of water, crystal water included.</summary>
    public double WaterMass { get; private set; } = 1;

    /// <summary>Adds grams of a salt.</summary>
    public Dissolving Add(Salt salt, double grams)
    {
        var n = grams / salt.MolarMass;
        foreach (var (component, number) in salt.Gives)
        {
            moles[component] += n * number;
        }

        WaterMass += n * salt.CrystalWater * WaterMolarMass;
        return this;
    }

    /// <summary>Adds a component by itself (an ion of an unlisted salt), mol.</summary>
    public Dissolving AddMoles(string component, double amount)
    {
        moles[water.Chemistry.Known(component)] += amount;
        return this;
    }

    /// <summary>Adds kilograms of pure water.</summary>
    public Dissolving Dilute(double kilograms)
    {
        WaterMass += kilograms;
        return this;
    }

    /// <summary>The solution to be solved.</summary>
    public SolutionInput Input()
    {
        var totals = new double[moles.Length];
        for (var c = 0; c < totals.Length; c++)
        {
            totals[c] = moles[c] / WaterMass;
        }

        return water.WithTotals(totals);
    }
}
