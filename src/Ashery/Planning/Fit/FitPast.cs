namespace Ashery.Planning.Fit;

/// <summary>What is behind when a year is fitted: nothing for a new year.</summary>
/// <param name="Today">Days since the first of the year; rounds before it stay as they are.</param>
internal sealed record FitPast(int Today)
{
    public static FitPast None { get; } = new(0);
}
