using Ashery.Climate;
using Ashery.Gardens;

namespace Ashery.Planning.Fit;

/// <summary>The garden to fit a year to, from a day on.</summary>
/// <param name="Garden">The whole garden.</param>
/// <param name="From">First day.</param>
public sealed record FitRequest(Garden Garden, DateOnly From)
{
    public const int LeastDraws = 20, MostDraws = 5000, UsualDraws = 200;

    /// <summary>Draws the finished plan is judged on, other ones than it was fitted to.</summary>
    public int Draws { get; init; } = UsualDraws;

    public int Seed { get; init; } = 1;

    /// <summary>0 for as many as the machine has. The answer does not hang on it.</summary>
    public int Threads { get; init; }

    public PotAssumptions Assumptions { get; init; } = new();

    public FitWeights Weights { get; init; } = FitWeights.Default;

    /// <summary>What really happened; null for a new year.</summary>
    public FitReplan? Replan { get; init; }
}

/// <summary>A year that has begun: it is fitted again from today, and what was done stays.</summary>
/// <param name="Before">The fitted year that was followed.</param>
/// <param name="Today">First day that may still change.</param>
public sealed record FitReplan(FittedYear Before, DateOnly Today)
{
    /// <summary>Days of the plan on which nothing was given after all.</summary>
    public IReadOnlyCollection<DateOnly> Missed { get; init; } = [];

    /// <summary>Weather as it was, from the first day of the year on; null where nobody measured.</summary>
    public WeatherSeries? Observed { get; init; }

    /// <summary>Days of a storm or a heat wave told without an instrument; measured days go before them.</summary>
    public IReadOnlyList<ToldDay> Told { get; init; } = [];
}

/// <summary>How far a fit is.</summary>
/// <param name="Stage">What it does.</param>
/// <param name="Share">0 to 1 of all.</param>
/// <param name="First">The first plan, once there is one.</param>
public sealed record FitProgress(string Stage, double Share, YearPlan? First = null);
