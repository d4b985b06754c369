using Ashery.Climate;
using Ashery.Crops;

namespace Ashery.Planning.Fit;

/// <summary>The days on which a crop grows: of the growing season, and not below its base temperature in a usual year; with the weeks after it.</summary>
internal static class FitGrowing
{
    /// <summary>
    /// Days after the year that are run and judged too, without feed: else the last feeds of a year would have nothing to feed.
    /// </summary>
    public const int Tail = 56;

    public static bool[] Of(PlanContext context, Crop crop)
    {
        var days = new bool[context.To.DayNumber - context.From.DayNumber + 1 + Tail];
        for (var i = 0; i < days.Length; i++)
        {
            var day = context.From.AddDays(i);
            var normal = context.Seasons.Calendar.NormalOf(day);
            days[i] = context.Seasons.Calendar.Of(day).HasFlag(DaySeasons.Growing)
                && (crop.BaseCelsius is not { } least || normal is null || (normal.MeanMax + normal.MeanMin) / 2 >= least);
        }

        return days;
    }
}
