using Ashery.Problems;

namespace Ashery.Solutions.Can;

/// <summary>What the can holds. Amounts in the solution are per kilogram of all water; a litre is taken as a kilogram.</summary>
public sealed record CanReport
{
    public required CanRequest Request { get; init; }

    /// <summary>kg of water in the can for each kg of added water: crystals and bottles bring some.</summary>
    public required double WaterMass { get; init; }

    /// <summary>With everything that can dissolve dissolved and nothing settled, in the air asked for.</summary>
    public required CanState State { get; init; }

    /// <summary>The same just made, nothing lost to the air.</summary>
    public required CanState Closed { get; init; }

    /// <summary>The same in balance with the carbon dioxide of the air.</summary>
    public required CanState Open { get; init; }

    /// <summary>Nutrients in solution, mg/L.</summary>
    public required CanNutrients Nutrients { get; init; }

    /// <summary>Solids that are near coming out or past it, highest index first.</summary>
    public required IReadOnlyList<MineralState> Minerals { get; init; }

    /// <summary>The clear part once the quick solids have settled; the same as <see cref="State"/> when none does.</summary>
    public required CanState Settled { get; init; }

    /// <summary>Each material against its solubility at the temperature.</summary>
    public required IReadOnlyList<SaltLimit> Limits { get; init; }

    /// <summary>Salts that crystallise in the cold, highest index first.</summary>
    public required IReadOnlyList<SaltIndexOfCan> Salts { get; init; }

    /// <summary>In which order to dissolve, with the reasons.</summary>
    public required DissolvingOrder Order { get; init; }

    public required ColdLimit Cold { get; init; }

    /// <summary>°C by which dissolving warms (positive) or cools the water; null where a heat is not known.</summary>
    public required double? Warming { get; init; }

    /// <summary>True where figures are an order of magnitude: ionic strength above 0.5 mol/kg.</summary>
    public bool BeyondGoodRange => State.Solution.BeyondGoodRange;

    /// <summary>Keys of the cautions that go with it.</summary>
    public required IReadOnlyList<string> CautionIds { get; init; }

    /// <summary>Warnings and notes.</summary>
    public required IReadOnlyList<Problem> Notes { get; init; }

    /// <summary>What was assumed, in a grower's words.</summary>
    public required IReadOnlyList<string> Assumed { get; init; }
}

/// <summary>A solution with the figures a grower reads off it.</summary>
/// <param name="Solution">Ions, pairs, pH, ionic strength.</param>
/// <param name="Ec25">mS/cm at 25 °C.</param>
/// <param name="Ec">mS/cm at its temperature.</param>
/// <param name="Alkalinity">mg/L as CaCO3.</param>
/// <param name="FreeAmmonia">mg/L of N as NH3.</param>
/// <param name="OsmoticPotential">MPa, negative.</param>
public sealed record CanState(Solution Solution, double Ec25, double Ec, double Alkalinity, double FreeAmmonia, double OsmoticPotential)
{
    public double PH => Solution.PH;

    public static CanState Of(Solution solution) => new(
        solution,
        Conductivity.At25(solution),
        Conductivity.Of(solution),
        SolutionMeasures.AlkalinityAsCalciumCarbonate(solution),
        SolutionMeasures.FreeAmmoniaNitrogen(solution),
        SolutionMeasures.OsmoticPotential(solution));
}

/// <summary>A solid and how near it is.</summary>
/// <param name="Mineral">Which; <see cref="Solutions.Mineral.Slow"/> ones may stay away for days.</param>
/// <param name="Index">log10 of the ion activity product over the solubility product, nothing settled; above 0 it may come out.</param>
/// <param name="Millimoles">mmol per kg of added water that settle at equilibrium; 0 for slow ones, which are judged by their index.</param>
/// <param name="Grams">g of it per kg of added water.</param>
/// <param name="MayMillimoles">mmol of a slow solid per kg of added water that would be out if it alone reached equilibrium: the most that may come; 0 for quick ones.</param>
/// <param name="MayGrams">g of that.</param>
public sealed record MineralState(Mineral Mineral, double Index, double Millimoles, double Grams, double MayMillimoles, double MayGrams);

/// <summary>A material against its solubility alone in pure water.</summary>
/// <param name="Addition">What was asked.</param>
/// <param name="Limit">g of product that dissolve in a kg of added water; infinite where its own crystal water dissolves it, null where not known.</param>
/// <param name="Undissolved">g per kg of added water left on the bottom: beyond the limit, and what never dissolves.</param>
public sealed record SaltLimit(CanAddition Addition, double? Limit, double Undissolved);

/// <summary>How near a salt is to crystallising.</summary>
/// <param name="Formula">Without crystal water.</param>
/// <param name="Name">As a grower says it.</param>
/// <param name="Index">log10 of its ion activity product over that of its saturated solution; above 0 it crystallises.</param>
public sealed record SaltIndexOfCan(string Formula, string Name, double Index);

/// <summary>How cold it may get.</summary>
/// <param name="Celsius">Lowest whole temperature of 0 to 40 °C down to which nothing quick comes out; null when something does at the can's own.</param>
/// <param name="First">What comes out first a degree colder; null when nothing does down to 0 °C.</param>
/// <param name="FromCelsius">The can's own temperature, where the search started.</param>
public sealed record ColdLimit(double? Celsius, string? First, double FromCelsius);

/// <summary>An order in which to dissolve.</summary>
/// <param name="Steps">First to last.</param>
/// <param name="Worst">Highest index of a quick solid on the way, the finished can left out; negative infinity when none can form.</param>
/// <param name="Basis">Why this order.</param>
public sealed record DissolvingOrder(IReadOnlyList<DissolvingStep> Steps, double Worst, string Basis);

/// <summary>One step.</summary>
/// <param name="Addition">What goes in.</param>
/// <param name="Reason">Why here.</param>
public sealed record DissolvingStep(CanAddition Addition, string Reason)
{
    /// <summary>The solid nearest to coming out once it is in; null when none can form.</summary>
    public string? Nearest { get; init; }

    /// <summary>Its saturation index.</summary>
    public double Index { get; init; } = double.NegativeInfinity;
}
