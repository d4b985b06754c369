using Ashery.Sources;

namespace Ashery.Solutions;

/// <summary>What a solution is added up from: an ion or molecule in which total amounts are counted.</summary>
/// <param name="Index">Place in the list of components and in totals.</param>
/// <param name="Id">Formula with its charge, as <c>SO4-2</c>.</param>
/// <param name="Name">Plain name, as <c>sulfate</c>.</param>
/// <param name="Charge">Charge number.</param>
/// <param name="AlkalinityProtons">Protons it holds at the reference level of alkalinity.</param>
/// <param name="MolarMass">g/mol.</param>
public sealed record Component(int Index, string Id, string Name, int Charge, int AlkalinityProtons, double MolarMass);

/// <summary>A dissolved ion, molecule or ion pair.</summary>
public sealed record AqueousSpecies
{
    public required string Id { get; init; }

    public required int Charge { get; init; }

    /// <summary>Components it is made of: index and number.</summary>
    public required IReadOnlyList<(int Component, double Number)> Parts { get; init; }

    /// <summary>Protons taken up when it forms from its components; negative where it gives them off.</summary>
    public required double Protons { get; init; }

    /// <summary>Constants that add up to its formation from components, each with its factor. Empty for a component itself.</summary>
    public required IReadOnlyList<(EquilibriumConstant Constant, double Factor)> Formation { get; init; }

    /// <summary>Ion size (Å) of the Debye-Hückel term; null for a neutral species or where Davies' equation stands in.</summary>
    public double? Size { get; init; }

    /// <summary>Coefficient of the term linear in ionic strength.</summary>
    public double Linear { get; init; }

    /// <summary>True when Davies' equation is used for want of parameters.</summary>
    public bool ByDavies => Size is null && Charge != 0;

    /// <summary>How it carries current; null for a neutral species.</summary>
    public IonMobility? Mobility { get; init; }

    public double LogFormation(double celsius) => EquilibriumSums.At(Formation, celsius);
}

/// <summary>Diffusion of an ion, from which its conductivity follows.</summary>
/// <param name="Diffusion25">1e-9 m²/s at 25 °C and infinite dilution.</param>
/// <param name="TemperatureFactor">Kelvin, in D(T) = D25 exp(dT (1/T - 1/298.15)) η25/η(T).</param>
/// <param name="Size">Å, in the relaxation and electrophoretic terms.</param>
/// <param name="SourceId">Key of its source.</param>
/// <param name="Provenance">How the figure came into the data.</param>
public sealed record IonMobility(double Diffusion25, double TemperatureFactor, double Size, string SourceId, Provenance Provenance);

/// <summary>A solid that may come out of solution.</summary>
public sealed record Mineral
{
    public required string Id { get; init; }

    public required string Formula { get; init; }

    /// <summary>Components it gives to the solution.</summary>
    public required IReadOnlyList<(int Component, double Number)> Parts { get; init; }

    /// <summary>Protons it gives off on dissolving; negative where it takes them up.</summary>
    public required double Protons { get; init; }

    /// <summary>Water molecules set free.</summary>
    public required double Water { get; init; }

    /// <summary>Often supersaturated for hours or days without settling.</summary>
    public required bool Slow { get; init; }

    /// <summary>Constants that add up to its solubility product in components.</summary>
    public required IReadOnlyList<(EquilibriumConstant Constant, double Factor)> Solubility { get; init; }

    /// <summary>What to know about the constant, in the data's own words.</summary>
    public string? Note { get; init; }

    public double LogSolubility(double celsius) => EquilibriumSums.At(Solubility, celsius);
}

internal static class EquilibriumSums
{
    public static double At(IReadOnlyList<(EquilibriumConstant Constant, double Factor)> terms, double celsius)
    {
        var sum = 0.0;
        foreach (var (constant, factor) in terms)
        {
            sum += factor * constant.At(celsius);
        }

        return sum;
    }
}
