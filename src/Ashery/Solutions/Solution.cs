namespace Ashery.Solutions;

/// <summary>A species in a solution.</summary>
/// <param name="Species">Which.</param>
/// <param name="Molality">mol/kg water.</param>
/// <param name="Log10Activity">log10 of its activity.</param>
public readonly record struct SpeciesAmount(AqueousSpecies Species, double Molality, double Log10Activity);

/// <summary>How well the balances close, each as a part of its own total: the proof that the answer is one.</summary>
/// <param name="Mass">Worst of the components.</param>
/// <param name="Charge">Net charge over the sum of all charges.</param>
public readonly record struct BalanceCertificate(double Mass, double Charge)
{
    /// <summary>What every answer meets.</summary>
    public const double Limit = 1e-10;

    public bool Holds => Mass < Limit && Math.Abs(Charge) < Limit;
}

/// <summary>A solution at equilibrium, nothing settling.</summary>
public sealed record Solution
{
    /// <summary>Ionic strength above which the activity model leaves its good range, mol/kg.</summary>
    public const double GoodRange = 0.5;

    public required SolutionInput Input { get; init; }

    public double Celsius => Input.Celsius;

    /// <summary>-log10 of the activity of H+.</summary>
    public required double PH { get; init; }

    /// <summary>mol/kg.</summary>
    public required double IonicStrength { get; init; }

    /// <summary>Every species with an amount, in the order of the data.</summary>
    public required IReadOnlyList<SpeciesAmount> Species { get; init; }

    /// <summary>mol/kg by component; open to the air, carbonate as found.</summary>
    public required IReadOnlyList<double> Totals { get; init; }

    /// <summary>log10 activity of each component; negative infinity where absent.</summary>
    public required IReadOnlyList<double> Log10Activities { get; init; }

    public required double WaterActivity { get; init; }

    public required BalanceCertificate Certificate { get; init; }

    /// <summary>Iterations the solver took.</summary>
    public required int Iterations { get; init; }

    /// <summary>True when figures are an order of magnitude rather than a prediction.</summary>
    public bool BeyondGoodRange => IonicStrength > GoodRange;

    /// <summary>mol/kg of a species by id; 0 when absent.</summary>
    public double Molality(string id)
    {
        foreach (var amount in Species)
        {
            if (amount.Species.Id == id)
            {
                return amount.Molality;
            }
        }

        return 0;
    }

    /// <summary>mol/kg of a component, all its species together.</summary>
    public double Total(string component) => Totals[Input.Chemistry.Known(component)];
}
