namespace Ashery.Planning.Fit;

/// <summary>
/// What a year of a pot is judged by, in days: a hungry day and a day of usual growth lost count one each, everything else as many as it is worth. Growth is
/// counted beside hunger because a plant that is kept small is hungry less often. All figures are ours; docs/science/fitted-year.md says why.
/// </summary>
public sealed record FitWeights
{
    /// <summary>
    /// Nitrogen in the plant over what it wants, below which a growing day is hungry. The ratio is a nitrogen nutrition index: at 1 growth is
    /// not held back, below it is.
    /// </summary>
    public double LowStatus { get; init; } = 0.9;

    /// <summary>Half the width of the ramp on which a hungry day counts from 0 to 1.</summary>
    public double StatusRamp { get; init; } = 0.05;

    /// <summary>Half the width of the ramp about the top of the crop's liquid range, as a share of it.</summary>
    public double StrongRamp { get; init; } = 0.1;

    /// <summary>Share of the EC limit at which a salty day begins to count; at the limit it counts one.</summary>
    public double SaltFrom { get; init; } = 0.9;

    /// <summary>Days a day over the EC limit is worth.</summary>
    public double Salt { get; init; } = 3;

    /// <summary>Days a gram of leached nitrogen a litre of medium is worth.</summary>
    public double Leached { get; init; } = 50;

    /// <summary>Days a gram of nitrogen given a litre of medium is worth: no more feed than helps.</summary>
    public double Given { get; init; } = 10;

    /// <summary>Days of the average pot that a round of the garden must save.</summary>
    public double Round { get; init; } = 1;

    /// <summary>A day counts at most so many times.</summary>
    public double MostADay { get; init; } = 3;

    /// <summary>Chance with which the EC limit may be passed on a day.</summary>
    public double Risk { get; init; } = 0.05;

    public static FitWeights Default { get; } = new();
}
