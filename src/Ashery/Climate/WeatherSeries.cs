using Ashery.Problems;

namespace Ashery.Climate;

/// <summary>The weather of a place, day after day without a gap.</summary>
/// <param name="Place">Where.</param>
/// <param name="Days">Consecutive days, earliest first.</param>
/// <param name="Origin">Where the days come from, in words: <c>made from monthly normals, seed 1</c>.</param>
public sealed record WeatherSeries(Place Place, IReadOnlyList<DailyWeather> Days, string Origin)
{
    /// <summary>What was assumed or filled in, as notes and warnings.</summary>
    public IReadOnlyList<Problem> Notes { get; init; } = [];
}
