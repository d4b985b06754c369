namespace Ashery.Solutions.Can;

/// <summary>Adds materials to a kilogram of water. A sum, so that the order does not matter.</summary>
internal sealed class CanContents
{
    private readonly SolutionInput water;
    private readonly double[] moles;
    private double mass = 1;

    public CanContents(SolutionInput water)
    {
        this.water = water;
        moles = water.Totals.ToArray();
    }

    /// <summary>kg of water, that of crystals and bottles included.</summary>
    public double WaterMass => mass;

    public void Add(MaterialInWater material, double grams)
    {
        foreach (var (component, amount) in material.Gives)
        {
            moles[component] += amount * grams;
        }

        mass += material.Water * grams / 1000;
    }

    /// <summary>mol per kg of all water.</summary>
    public SolutionInput Input(double celsius, Air air)
    {
        var totals = new double[moles.Length];
        for (var c = 0; c < totals.Length; c++)
        {
            totals[c] = moles[c] / mass;
        }

        return water.WithTotals(totals).At(celsius).Under(air);
    }
}
