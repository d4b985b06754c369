namespace Ashery.Climate;

/// <summary>Which seasons a day falls into. Seasons may overlap and may wrap the year's end.</summary>
public sealed class SeasonCalendar
{
    // Days are looked up by month and day in a leap year, so that 29 February has a place of its own.
    private static readonly DateOnly LeapStart = new(2024, 1, 1);

    private readonly DaySeasons[] days;
    private readonly IReadOnlyList<MonthlyNormal>? normals;

    private SeasonCalendar(DaySeasons[] days, IReadOnlyList<MonthlyNormal>? normals, bool growingIsGuess)
    {
        this.days = days;
        this.normals = normals;
        GrowingIsGuess = growingIsGuess;
    }

    /// <summary>True when neither the grower nor normals said when plants grow, and latitude alone had to do.</summary>
    public bool GrowingIsGuess { get; }

    /// <summary>
    /// Seasons of a place. A kind the grower named is as named; kinds not named follow the normals; without normals plants
    /// grow whenever they do not rest, and with nothing said at all the latitude gives a first guess.
    /// </summary>
    public static SeasonCalendar For(Place place, SeasonThresholds thresholds)
    {
        var year = new DaySeasons[366];
        var named = DaySeasons.None;
        foreach (var season in place.Seasons)
        {
            named |= Flag(season.Kind);
            Mark(year, season);
        }

        var guess = false;
        if (place.Normals is { Count: 12 } normals)
        {
            FollowNormals(year, normals, thresholds, named);
        }
        else if ((named & (DaySeasons.Growing | DaySeasons.Resting)) == DaySeasons.None)
        {
            guess = true;
            foreach (var season in ByLatitude(place.Latitude))
            {
                Mark(year, season);
            }
        }
        else if ((named & DaySeasons.Growing) == DaySeasons.None)
        {
            GrowUnlessResting(year);
        }

        return new SeasonCalendar(year, place.Normals is { Count: 12 } ? place.Normals : null, guess);
    }

    /// <summary>The seasons a day is in.</summary>
    public DaySeasons Of(DateOnly day) => days[Index(day.Month, day.Day)];

    /// <summary>The month's usual weather; null when the place has none.</summary>
    public MonthlyNormal? NormalOf(DateOnly day) => normals?[day.Month - 1];

    /// <summary>The flag of a kind.</summary>
    public static DaySeasons Flag(SeasonKind kind) => (DaySeasons)(1 << (int)kind);

    private static void Mark(DaySeasons[] days, Season season)
    {
        var flag = Flag(season.Kind);
        var from = Index(season.From.Month, season.From.Day);

        // A season to the end of February takes the leap day in.
        var to = season.To is { Month: 2, Day: 28 } ? Index(2, 29) : Index(season.To.Month, season.To.Day);
        for (var i = from; ; i = (i + 1) % days.Length)
        {
            days[i] |= flag;
            if (i == to)
            {
                return;
            }
        }
    }

    private static void FollowNormals(DaySeasons[] days, IReadOnlyList<MonthlyNormal> normals, SeasonThresholds t, DaySeasons named)
    {
        for (var i = 0; i < days.Length; i++)
        {
            var month = normals[LeapStart.AddDays(i).Month - 1];
            var rests = (month.MeanMax + month.MeanMin) / 2 < t.RestingMean;
            var follow = rests ? DaySeasons.Resting : DaySeasons.Growing;
            follow |= month.MeanMax >= t.HotMeanMax ? DaySeasons.Hot : DaySeasons.None;
            follow |= month.RainMm >= t.RainyMm ? DaySeasons.Rainy : DaySeasons.None;
            days[i] |= follow & ~named;
        }
    }

    private static void GrowUnlessResting(DaySeasons[] days)
    {
        for (var i = 0; i < days.Length; i++)
        {
            days[i] |= (days[i] & DaySeasons.Resting) == DaySeasons.None ? DaySeasons.Growing : DaySeasons.None;
        }
    }

    private static Season[] ByLatitude(double latitude) => latitude switch
    {
        >= -23.5 and <= 23.5 => [new(SeasonKind.Growing, new(1, 1), new(12, 31))],
        > 0 => [new(SeasonKind.Growing, new(4, 1), new(9, 30)), new(SeasonKind.Resting, new(11, 1), new(2, 28))],
        _ => [new(SeasonKind.Growing, new(10, 1), new(3, 31)), new(SeasonKind.Resting, new(5, 1), new(8, 31))],
    };

    private static int Index(int month, int day) => new DateOnly(2024, month, day).DayNumber - LeapStart.DayNumber;
}

/// <summary>The seasons a day is in, together.</summary>
[Flags]
public enum DaySeasons
{
    None = 0,
    Growing = 1,
    Hot = 2,
    Rainy = 4,
    Resting = 8,
}
