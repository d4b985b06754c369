using Ashery.Problems;

namespace Ashery.Planning.Fit;

/// <summary>A year fitted to the root zone, beside the rule of thumb. Odds and bands are the model's.</summary>
public sealed record FittedYear
{
    public required FitRequest Request { get; init; }

    /// <summary>First day counted: the first of the year, or the day it was fitted again.</summary>
    public required DateOnly Since { get; init; }

    public required YearPlan Plan { get; init; }

    /// <summary>What the calendar rule of thumb alone would do; after a replan, the plan as it was, with what really happened.</summary>
    public required YearPlan Beside { get; init; }

    /// <summary>Mean pot under the fitted plan, on draws it was not fitted to.</summary>
    public required FitMeasure Fitted { get; init; }

    /// <summary>Mean pot under the plan beside it, on the same draws.</summary>
    public required FitMeasure BesideMeasure { get; init; }

    /// <summary>Pots in the order of the garden.</summary>
    public required IReadOnlyList<FittedPot> Pots { get; init; }

    /// <summary>What became of each round of the plan beside it, and rounds that were added.</summary>
    public required IReadOnlyList<RoundChange> Changes { get; init; }

    /// <summary>False when nothing better than the plan beside it was found, which then stands.</summary>
    public required bool Gained { get; init; }

    /// <summary>Pot-days run by the search.</summary>
    public required long PotDays { get; init; }

    public required FitWeights Weights { get; init; }

    public IReadOnlyList<Problem> Problems { get; init; } = [];

    /// <summary>The search's own rounds, to go on from.</summary>
    internal IReadOnlyList<FitVisit> Visits { get; init; } = [];
}

/// <summary>A pot of a fitted year.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Fitted">Under the fitted plan.</param>
/// <param name="Beside">Under the plan beside it.</param>
/// <param name="Assumed">What the garden does not tell and was taken.</param>
/// <param name="Flush">A flush that helps; null when none does.</param>
public sealed record FittedPot(string Name, FitPotCourse Fitted, FitPotCourse Beside, IReadOnlyList<string> Assumed, FlushAdvice? Flush);

/// <summary>A flush run with and without.</summary>
/// <param name="Date">When.</param>
/// <param name="Litres">L of plain water a pot beyond what is given.</param>
/// <param name="SaltDaysBefore">Days over the EC limit without.</param>
/// <param name="SaltDaysAfter">With.</param>
/// <param name="LeachedMore">g N a litre of medium washed out besides.</param>
/// <param name="Words">The advice.</param>
public sealed record FlushAdvice(DateOnly Date, double Litres, double SaltDaysBefore, double SaltDaysAfter, double LeachedMore, string Words);

/// <summary>What became of a round.</summary>
/// <param name="Kind">Kind of feed.</param>
/// <param name="Before">The day of the plan beside it; null when it was added.</param>
/// <param name="Fitted">The day of the fitted plan; null when it was left out.</param>
/// <param name="DoseRatio">Nitrogen of all pots over what the plan beside it gives that day; 0 when left out, null when added.</param>
/// <param name="Words">What and why.</param>
public sealed record RoundChange(Feeds.FeedKind Kind, DateOnly? Before, DateOnly? Fitted, double? DoseRatio, string Words);
