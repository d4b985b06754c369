using Ashery.Climate.Observed;

namespace Ashery.Exchange.Weather;

/// <summary>Days of a file in their order: no day twice, none before the one above it.</summary>
internal sealed class DayBook(WeatherProblems problems)
{
    private readonly List<ObservedDay> days = [];
    private long lastLine;

    public IReadOnlyList<ObservedDay> Days => days;

    public void Add(ObservedDay day, long line)
    {
        if (days.Count > 0 && day.Date <= days[^1].Date)
        {
            var last = WeatherText.Date(days[^1].Date);
            problems.Add(
                line,
                "date",
                day.Date == days[^1].Date ? $"{last} is on {WeatherProblems.Place(lastLine)} already." : $"{WeatherText.Date(day.Date)} comes after {last} on {WeatherProblems.Place(lastLine)}.",
                "Put the days in order, each once.");
            return;
        }

        if (days.Count >= ObservedWeather.MostDays)
        {
            problems.Add(line, "date", FormattableString.Invariant($"There are more than {ObservedWeather.MostDays} days."), "Take a part of the file.");
            return;
        }

        days.Add(problems.Checked(day, line));
        lastLine = line;
    }
}
