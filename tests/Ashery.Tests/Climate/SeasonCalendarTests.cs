using Ashery.Climate;
using Ashery.Crops;
using CsCheck;

namespace Ashery.Tests.Climate;

public class SeasonCalendarTests
{
    private static readonly SeasonThresholds Thresholds = SeasonThresholds.From(RuleBook.Default);

    [Fact]
    public void A_season_may_wrap_the_years_end()
    {
        var calendar = SeasonCalendar.For(Place(new Season(SeasonKind.Resting, new(11, 15), new(2, 10))), Thresholds);
        Assert.True(calendar.Of(new(2026, 12, 31)).HasFlag(DaySeasons.Resting));
        Assert.True(calendar.Of(new(2027, 1, 1)).HasFlag(DaySeasons.Resting));
        Assert.True(calendar.Of(new(2027, 2, 10)).HasFlag(DaySeasons.Resting));
        Assert.False(calendar.Of(new(2027, 2, 11)).HasFlag(DaySeasons.Resting));
        Assert.True(calendar.Of(new(2027, 6, 1)).HasFlag(DaySeasons.Growing));
    }

    [Fact]
    public void A_season_to_the_end_of_february_takes_the_leap_day_in()
    {
        var calendar = SeasonCalendar.For(Place(new Season(SeasonKind.Hot, new(2, 1), new(2, 28))), Thresholds);
        Assert.True(calendar.Of(new(2028, 2, 29)).HasFlag(DaySeasons.Hot));
        Assert.False(calendar.Of(new(2028, 3, 1)).HasFlag(DaySeasons.Hot));
    }

    // Counted by hand the slow way: a day is in a season when stepping from its first day, day by day, meets it before the last.
    [Fact]
    public void Any_season_covers_just_its_days() =>
        Gen.Select(Gen.Int[0, 364], Gen.Int[0, 364], Gen.Int[0, 364]).Sample((a, b, d) =>
        {
            var start = new DateOnly(2027, 1, 1);
            var (from, to, day) = (start.AddDays(a), start.AddDays(b), start.AddDays(d));
            if (to is { Month: 2, Day: 28 })
            {
                return true;
            }

            var inside = from <= to ? day >= from && day <= to : day >= from || day <= to;
            var calendar = SeasonCalendar.For(Place(new Season(SeasonKind.Rainy, new(from.Month, from.Day), new(to.Month, to.Day))), Thresholds);
            return calendar.Of(day).HasFlag(DaySeasons.Rainy) == inside;
        });

    // The same weather half a year later is the same seasons half a year later: southern hemisphere.
    [Fact]
    public void Both_hemispheres_follow_their_normals()
    {
        MonthlyNormal[] north = [.. Enumerable.Range(0, 12).Select(m => new MonthlyNormal(20 - (14 * Math.Cos(m * Math.PI / 6)), 8 - (10 * Math.Cos(m * Math.PI / 6)), m == 9 ? 200 : 40))];
        MonthlyNormal[] south = [.. Enumerable.Range(0, 12).Select(m => north[(m + 6) % 12])];
        var (up, down) = (Calendar(north, 45), Calendar(south, -45));
        for (var month = 1; month <= 12; month++)
        {
            Assert.Equal(up.Of(new(2027, month, 15)), down.Of(new DateOnly(2027, month, 15).AddMonths(6)));
        }

        Assert.Equal(DaySeasons.Resting, up.Of(new(2027, 1, 15)));
        Assert.Equal(DaySeasons.Growing | DaySeasons.Hot, up.Of(new(2027, 7, 15)));
        Assert.Equal(DaySeasons.Growing | DaySeasons.Rainy, up.Of(new(2027, 10, 15)));
        Assert.Equal(DaySeasons.Resting, down.Of(new(2027, 7, 15)));
    }

    [Fact]
    public void A_named_kind_wins_over_the_normals_and_leaves_the_others()
    {
        MonthlyNormal[] warm = [.. Enumerable.Range(0, 12).Select(_ => new MonthlyNormal(36, 24, 10))];
        var calendar = SeasonCalendar.For(new Place { Name = "x", Latitude = 10, Normals = warm, Seasons = [new(SeasonKind.Hot, new(5, 1), new(5, 31))] }, Thresholds);
        Assert.True(calendar.Of(new(2027, 5, 10)).HasFlag(DaySeasons.Hot));
        Assert.False(calendar.Of(new(2027, 7, 10)).HasFlag(DaySeasons.Hot));
        Assert.True(calendar.Of(new(2027, 7, 10)).HasFlag(DaySeasons.Growing));
    }

    [Theory]
    [InlineData(50, 7, DaySeasons.Growing)]
    [InlineData(50, 1, DaySeasons.Resting)]
    [InlineData(-35, 7, DaySeasons.Resting)]
    [InlineData(-35, 1, DaySeasons.Growing)]
    [InlineData(5, 1, DaySeasons.Growing)]
    public void With_nothing_told_latitude_gives_a_guess_that_says_so(double latitude, int month, DaySeasons seasons)
    {
        var calendar = SeasonCalendar.For(new Place { Name = "x", Latitude = latitude }, Thresholds);
        Assert.True(calendar.GrowingIsGuess);
        Assert.Equal(seasons, calendar.Of(new(2027, month, 15)));
    }

    private static Place Place(params Season[] seasons) => new()
    {
        Name = "x",
        Latitude = 45,
        Seasons = seasons.Any(static s => s.Kind is SeasonKind.Growing or SeasonKind.Resting) ? seasons : [.. seasons, new(SeasonKind.Growing, new(1, 1), new(12, 31))],
    };

    private static SeasonCalendar Calendar(MonthlyNormal[] normals, double latitude) =>
        SeasonCalendar.For(new Place { Name = "x", Latitude = latitude, Normals = normals }, Thresholds);
}
