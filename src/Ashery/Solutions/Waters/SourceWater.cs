namespace Ashery.Solutions.Waters;

/// <summary>
/// A water to dissolve things in: total amounts in mol/kg by component, electrically neutral together with its alkalinity, so that the
/// inorganic carbon follows from the pH. A litre is taken as a kilogram.
/// </summary>
public sealed class SourceWater
{
    private const double Equivalent = 50.0435;

    private readonly double[] totals;
    private readonly Lazy<double> carbonate;

    /// <param name="id">Short key.</param>
    /// <param name="name">As the grower calls it.</param>
    /// <param name="totals">mol/kg by component index; carbonate is ignored, it is found from the pH.</param>
    /// <param name="pH">As reported; null to take the water in balance with the carbon dioxide of the air.</param>
    /// <param name="celsius">Temperature at which the pH was read.</param>
    public SourceWater(string id, string name, ReadOnlySpan<double> totals, double? pH, double celsius = 25)
    {
        Id = id;
        Name = name;
        PH = pH;
        Celsius = celsius;
        this.totals = totals.ToArray();
        this.totals[Chemistry.Default.Known("carbonate")] = 0;
        carbonate = new(FindCarbonate);
    }

    public string Id { get; }

    public string Name { get; }

    /// <summary>As reported; null when the report does not say.</summary>
    public double? PH { get; }

    /// <summary>Temperature at which the pH was read, °C.</summary>
    public double Celsius { get; }

    /// <summary>Measured conductivity, mS/cm at 25 °C; null when the report does not say.</summary>
    public double? MeasuredEc { get; init; }

    /// <summary>Plain names of the components that were estimated rather than reported.</summary>
    public IReadOnlyList<string> Estimated { get; init; } = [];

    /// <summary>True for water with nothing in it, not even carbon dioxide.</summary>
    public bool IsPure => totals.AsSpan().IndexOfAnyExcept(0) < 0 && PH is null;

    /// <summary>Water with nothing in it, not even carbon dioxide: distilled or demineralised, kept from the air.</summary>
    public static SourceWater Pure { get; } = new("pure", "pure water", new double[Chemistry.Default.Components.Count], null);

    /// <summary>
    /// Charge of the ions that are neither carbonate nor protons, mol/kg: the alkalinity by its reference levels, which carbon dioxide
    /// does not change.
    /// </summary>
    public double Alkalinity
    {
        get
        {
            var sum = 0.0;
            foreach (var component in Chemistry.Default.Components)
            {
                sum += (component.AlkalinityProtons + component.Charge) * totals[component.Index];
            }

            return sum;
        }
    }

    /// <summary>Alkalinity as mg/L CaCO3.</summary>
    public double AlkalinityAsCalciumCarbonate => Alkalinity * Equivalent * 1000;

    /// <summary>Inorganic carbon, mol/kg, as the pH tells.</summary>
    public double InorganicCarbon => carbonate.Value;

    /// <summary>mol/kg of a component by id or plain name; inorganic carbon included.</summary>
    public double Total(string component)
    {
        var index = Chemistry.Default.Known(component);
        return index == Chemistry.Default.Known("carbonate") ? InorganicCarbon : totals[index];
    }

    /// <summary>What the speciation starts from.</summary>
    public SolutionInput ToInput(double celsius = 25, Air air = Air.Closed) =>
        SolutionInput.Pure(celsius, air).WithTotals(totals).With("carbonate", InorganicCarbon);

    private double FindCarbonate()
    {
        if (IsPure)
        {
            return 0;
        }

        var input = SolutionInput.Pure(Celsius).WithTotals(totals);
        return PH is { } pH
            ? CarbonateFromPh.Find(input, pH).Carbonate
            : Speciation.Solve(input.Under(Air.Open)).Total("carbonate");
    }
}
