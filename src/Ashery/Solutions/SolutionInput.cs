namespace Ashery.Solutions;

/// <summary>What is in the water: total amounts by component, mol per kg of water. Protons and hydroxide follow from the charge.</summary>
public sealed class SolutionInput
{
    private readonly double[] totals;

    private SolutionInput(Chemistry chemistry, double[] totals, double celsius, Air air)
    {
        Chemistry = chemistry;
        this.totals = totals;
        Celsius = celsius;
        Air = air;
    }

    public Chemistry Chemistry { get; }

    /// <summary>mol/kg water by component index.</summary>
    public ReadOnlySpan<double> Totals => totals;

    public double Celsius { get; }

    public Air Air { get; }

    /// <summary>Pure water without carbon dioxide.</summary>
    public static SolutionInput Pure(double celsius = 25, Air air = Air.Closed) =>
        new(Chemistry.Default, new double[Chemistry.Default.Components.Count], celsius, air);

    /// <summary>The same with more of a component (id or plain name), mol/kg water.</summary>
    public SolutionInput With(string component, double amount)
    {
        var sum = totals.AsSpan().ToArray();
        sum[Chemistry.Known(component)] += amount;
        return new(Chemistry, sum, Celsius, Air);
    }

    public SolutionInput WithTotals(ReadOnlySpan<double> amounts) => new(Chemistry, amounts.ToArray(), Celsius, Air);

    public SolutionInput At(double celsius) => new(Chemistry, totals, celsius, Air);

    public SolutionInput Under(Air air) => new(Chemistry, totals, Celsius, air);

    /// <summary>Total of a component, mol/kg water.</summary>
    public double Total(string component) => totals[Chemistry.Known(component)];
}
