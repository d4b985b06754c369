namespace Ashery.Planning.Fit;

/// <summary>A year of a pot, or the mean pot of a garden, in the mean of the made years.</summary>
/// <param name="LostDays">Days of usual growth lost, against the same plant with all it wants to eat.</param>
/// <param name="HungryDays">Growing days with less nitrogen in the plant than the low bound.</param>
/// <param name="StrongDays">Days with more nitrogen in the pore water than the top of the crop's liquid range, mg N/L.</param>
/// <param name="SaltDays">Days with a saturated extract above the crop's limit.</param>
/// <param name="LeachedN">g N a litre of medium run out below.</param>
/// <param name="GivenN">g N a litre of medium given.</param>
/// <param name="ReleasedN">g N a litre of medium that organic matter set free, less what microbes took up while it rotted.</param>
/// <param name="Rounds">Days on which the garden is fed.</param>
/// <param name="Score">All of it in days, graded about the bounds; smaller is better.</param>
public sealed record FitMeasure(double LostDays, double HungryDays, double StrongDays, double SaltDays, double LeachedN, double GivenN, double ReleasedN, int Rounds, double Score)
{
    /// <summary>The mean of pots; rounds count once.</summary>
    public static FitMeasure Mean(IReadOnlyList<FitMeasure> pots, int rounds, double roundWeight)
    {
        if (pots.Count == 0)
        {
            return new(0, 0, 0, 0, 0, 0, 0, rounds, roundWeight * rounds);
        }

        return new(
            pots.Average(static p => p.LostDays),
            pots.Average(static p => p.HungryDays),
            pots.Average(static p => p.StrongDays),
            pots.Average(static p => p.SaltDays),
            pots.Average(static p => p.LeachedN),
            pots.Average(static p => p.GivenN),
            pots.Average(static p => p.ReleasedN),
            rounds,
            pots.Average(static p => p.Score) + (roundWeight * rounds));
    }
}
