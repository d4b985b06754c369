using Ashery.Problems;
using Ashery.RootZone.State;

namespace Ashery.RootZone;

/// <summary>What a run gives: each day, the sums, and how well the balances closed.</summary>
public sealed record PotRun
{
    public required PotScenario Scenario { get; init; }

    public required IReadOnlyList<PotDay> Days { get; init; }

    /// <summary>State on the first morning.</summary>
    public required PotPools Start;

    /// <summary>State on the last evening; a run may go on from it.</summary>
    public required PotPools End;

    public required PotLedger Ledger { get; init; }

    /// <summary>Input = stored + taken up + lost, worst over all days and elements.</summary>
    public required BalanceResiduals Balance { get; init; }

    /// <summary>What was assumed or left out.</summary>
    public IReadOnlyList<Problem> Notes { get; init; } = [];
}

/// <summary>Worst relative residuals of a run.</summary>
/// <param name="Water">Of water.</param>
/// <param name="Elements">Of the worst element.</param>
/// <param name="WorstElement">Which.</param>
public readonly record struct BalanceResiduals(double Water, double Elements, string WorstElement)
{
    /// <summary>What every day meets.</summary>
    public const double Limit = 1e-9;

    public bool Hold => Water <= Limit && Elements <= Limit;
}
