using Ashery.Sources;

namespace Ashery.Solutions;

/// <summary>The components, species, minerals and salts of data/solutions, read at first use.</summary>
public sealed class Chemistry
{
    private static readonly Lazy<Chemistry> Shipped = new(static () => ChemistryReader.Read());

    private readonly Dictionary<string, int> byId = new(StringComparer.Ordinal);

    internal Chemistry(
        IReadOnlyList<Component> components, IReadOnlyList<AqueousSpecies> species, IReadOnlyList<Mineral> minerals, EquilibriumConstant carbonDioxide, double logCarbonDioxideInAir)
    {
        Components = components;
        Species = species;
        Minerals = minerals;
        CarbonDioxide = carbonDioxide;
        LogCarbonDioxideInAir = logCarbonDioxideInAir;
        foreach (var component in components)
        {
            byId.Add(component.Id, component.Index);
            byId.Add(component.Name, component.Index);
        }
    }

    public static Chemistry Default => Shipped.Value;

    public IReadOnlyList<Component> Components { get; }

    /// <summary>All species, first H+, then the components themselves in their order, then what they form.</summary>
    public IReadOnlyList<AqueousSpecies> Species { get; }

    public IReadOnlyList<Mineral> Minerals { get; }

    /// <summary>CO2(g) = CO2(aq), mol/kg/atm.</summary>
    public EquilibriumConstant CarbonDioxide { get; }

    /// <summary>log10 of the partial pressure of carbon dioxide in air, atm.</summary>
    public double LogCarbonDioxideInAir { get; }

    /// <summary>Index of a component by its id or plain name, or -1.</summary>
    public int IndexOf(string idOrName) => byId.TryGetValue(idOrName, out var i) ? i : -1;

    /// <summary>Index of a component the library itself names; absent is our own mistake.</summary>
    internal int Known(string idOrName) => byId.TryGetValue(idOrName, out var i) ? i : throw DataRows.Unknown(idOrName);
}
