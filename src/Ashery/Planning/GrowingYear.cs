using Ashery.Climate;

namespace Ashery.Planning;

/// <summary>
/// Where a garden's year of feeds begins, so that a plan made today and one made tomorrow name the same days: on the first growing day after
/// the longest pause. Where plants grow all the year, on 1 January north of the equator and on 1 July south of it.
/// </summary>
public static class GrowingYear
{
    /// <summary>The latest beginning on or before a day.</summary>
    public static DateOnly StartOf(SeasonCalendar calendar, double latitude, DateOnly day)
    {
        var (month, first) = Beginning(calendar) ?? (latitude < 0 ? 7 : 1, 1);
        var start = On(day.Year, month, first);
        return start <= day ? start : On(day.Year - 1, month, first);
    }

    /// <summary>The beginning after one.</summary>
    public static DateOnly Next(SeasonCalendar calendar, double latitude, DateOnly start) => StartOf(calendar, latitude, start.AddDays(366 + 30)) is var next && next > start
        ? next
        : start.AddYears(1);

    // A leap year, so that 29 February is looked at too.
    private static (int Month, int Day)? Beginning(SeasonCalendar calendar)
    {
        var first = new DateOnly(2024, 1, 1);
        const int days = 366;
        var (longest, pause, beginning) = (0, 0, (DateOnly?)null);
        for (var i = 0; i < 2 * days; i++)
        {
            var day = first.AddDays(i % days);
            if (!calendar.Of(day).HasFlag(DaySeasons.Growing))
            {
                pause++;
                continue;
            }

            // The pause that began before the first day is whole only on the second time round.
            if (pause > longest && pause < days)
            {
                (longest, beginning) = (pause, day);
            }

            pause = 0;
        }

        return beginning is { } found ? (found.Month, found.Day) : null;
    }

    private static DateOnly On(int year, int month, int day) => new(year, month, Math.Min(day, DateTime.DaysInMonth(year, month)));
}
