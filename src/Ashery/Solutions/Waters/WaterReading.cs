using Ashery.Problems;

namespace Ashery.Solutions.Waters;

/// <summary>What a report comes to.</summary>
public sealed record WaterReading
{
    public required WaterReport Report { get; init; }

    /// <summary>The water, neutral and complete, to dissolve things in.</summary>
    public required SourceWater Water { get; init; }

    /// <summary>At its pH, 25 °C, closed.</summary>
    public required Solution Solution { get; init; }

    /// <summary>Cations against anions as reported.</summary>
    public required IonBalance Balance { get; init; }

    /// <summary>The two sides after everything was put in, largest first, meq/L: equal sums.</summary>
    public required (IReadOnlyList<BalanceIon> Cations, IReadOnlyList<BalanceIon> Anions) Sides { get; init; }

    /// <summary>What the report leaves out and what was taken for it.</summary>
    public required IReadOnlyList<WaterEstimate> Estimates { get; init; }

    /// <summary>What was added to make the sides equal where no ion was missing: plain name and mol/L; null when nothing was.</summary>
    public (string Quantity, double Moles)? Closing { get; init; }

    /// <summary>Conductivity of these ions by the model, mS/cm at 25 °C.</summary>
    public required WaterRange ComputedEc { get; init; }

    /// <summary>Measured conductivity brought to 25 °C, mS/cm; null when not reported.</summary>
    public double? MeasuredEc => Water.MeasuredEc;

    /// <summary>What the measured conductivity says about the ions; null when not reported.</summary>
    public string? EcWords { get; init; }

    /// <summary>The one to go by: measured where there is one.</summary>
    public double Ec => MeasuredEc ?? ComputedEc.Typical;

    /// <summary>Calcium and magnesium as mg/L CaCO3.</summary>
    public required WaterRange Hardness { get; init; }

    /// <summary>mg/L CaCO3; below zero for free acid.</summary>
    public required WaterRange Alkalinity { get; init; }

    /// <summary>Sodium adsorption ratio, (meq/L)^½; null without calcium and magnesium.</summary>
    public WaterRange? Sar { get; init; }

    /// <summary>The same with the calcium that stays dissolved in soil; null where <see cref="Sar"/> is.</summary>
    public double? AdjustedSar { get; init; }

    /// <summary>Alkalinity beyond calcium and magnesium, meq/L (residual sodium carbonate): above zero sodium wins as the water dries.</summary>
    public required double ResidualAlkalinity { get; init; }

    /// <summary>Dry residue of these ions, mg/L.</summary>
    public required double Solids { get; init; }

    /// <summary>Where the inorganic carbon was taken from when there is no pH.</summary>
    public string? PhWords { get; init; }

    /// <summary>Warnings and notes: they are with the result of the reading too.</summary>
    public IReadOnlyList<Problem> Notes { get; init; } = [];

    /// <summary>mg/L of a quantity as files name it (Ca, NO3, P as PO4, B).</summary>
    public double MgPerLitre(string quantity)
    {
        var row = WaterDraft.QuantityOf(quantity);
        return (quantity == "alkalinity" ? Water.Alkalinity : Water.Total(row.Component!)) * row.MassOf(row.Names[0].Basis) * 1000;
    }

    /// <summary>Charge of a component that alkalinity has to balance: protons counted from its reference level.</summary>
    internal static int ChargeOf(Component component) => component.Charge + component.AlkalinityProtons;
}
