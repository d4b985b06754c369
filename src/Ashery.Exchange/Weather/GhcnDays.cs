using System.Globalization;
using Ashery.Climate.Evapotranspiration;
using Ashery.Climate.Observed;
using Ashery.Problems;

namespace Ashery.Exchange.Weather;

/// <summary>
/// Days of a GHCN-Daily station put together of elements that come on lines of their own: TMAX, TMIN and ADPT in tenths of °C, PRCP in tenths of mm, AWND in tenths of
/// m/s, TSUN in minutes, RHAV, RHMX and RHMN in % (elements and units from the network's readme; from memory). A figure that failed a quality check counts as missing.
/// </summary>
internal sealed class GhcnDays(WeatherProblems problems)
{
    private readonly SortedDictionary<DateOnly, ObservedDay> days = [];
    private readonly Dictionary<(DateOnly, Element), long> lines = [];
    private int failed;

    internal enum Element
    {
        Other,
        Max,
        Min,
        Rain,
        Wind,
        Sunshine,
        DewPoint,
        Humidity,
        HighestHumidity,
        LowestHumidity,
    }

    public static Element Known(ReadOnlySpan<char> code) => code switch
    {
        "TMAX" => Element.Max,
        "TMIN" => Element.Min,
        "PRCP" => Element.Rain,
        "AWND" => Element.Wind,
        "TSUN" => Element.Sunshine,
        "ADPT" => Element.DewPoint,
        "RHAV" => Element.Humidity,
        "RHMX" => Element.HighestHumidity,
        "RHMN" => Element.LowestHumidity,
        _ => Element.Other,
    };

    public void Add(DateOnly date, Element element, int value, char quality, long line)
    {
        if (value == -9999)
        {
            return;
        }

        if (!lines.TryAdd((date, element), line))
        {
            problems.Add(line, null, $"It has {WeatherText.Date(date)} again, which is on {WeatherProblems.Place(lines[(date, element)])} already.", "Leave one of the two.");
            return;
        }

        if (quality != ' ')
        {
            failed++;
            return;
        }

        if (days.Count >= ObservedWeather.MostDays)
        {
            problems.Add(line, "date", FormattableString.Invariant($"There are more than {ObservedWeather.MostDays} days."), "Take a part of the file.");
            return;
        }

        var day = days.GetValueOrDefault(date, new(date));
        days[date] = element switch
        {
            Element.Max => day with { Max = value / 10.0 },
            Element.Min => day with { Min = value / 10.0 },
            Element.Rain => day with { Rain = value / 10.0 },
            Element.Wind => day with { Wind = Wind.AtTwoMetres(value / 10.0, 10) },
            Element.Sunshine => day with { Sunshine = value / 60.0 },
            Element.DewPoint => day with { DewPoint = value / 10.0 },
            Element.Humidity => day with { Humidity = value },
            Element.HighestHumidity => day with { HighestHumidity = value },
            _ => day with { LowestHumidity = value },
        };
    }

    /// <summary>All days in order, each checked; problems name the line of the maximum, or of whatever the day has.</summary>
    public IReadOnlyList<ObservedDay> Close()
    {
        var list = new List<ObservedDay>(days.Count);
        foreach (var (date, day) in days)
        {
            if (problems.Full)
            {
                break;
            }

            list.Add(problems.Checked(day, LineOf(date, day)));
        }

        if (failed > 0)
        {
            problems.Add("quality", string.Create(CultureInfo.InvariantCulture, $"{failed} figures failed the network's quality checks and count as missing."), "Nothing to do.", Severity.Note);
        }

        return list;
    }

    private long LineOf(DateOnly date, ObservedDay day)
    {
        var wrong = day.Rain is < 0 or > DayLimits.MostRain ? Element.Rain : day.Wind is < 0 or > DayLimits.MostWind ? Element.Wind : Element.Max;
        if (lines.TryGetValue((date, wrong), out var line))
        {
            return line;
        }

        foreach (var element in Enum.GetValues<Element>())
        {
            if (lines.TryGetValue((date, element), out line))
            {
                return line;
            }
        }

        return 0;
    }
}
