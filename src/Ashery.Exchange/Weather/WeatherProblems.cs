using System.Globalization;
using Ashery.Climate.Observed;
using Ashery.Problems;

namespace Ashery.Exchange.Weather;

/// <summary>What is wrong with a weather file, each with its line; after a while the rest is not read.</summary>
internal sealed class WeatherProblems
{
    /// <summary>After so many the file is plainly another one.</summary>
    private const int Most = 50;

    private readonly List<Problem> problems = [];

    public IReadOnlyList<Problem> All => problems;

    public bool Any => problems.Exists(static p => p.Severity == Severity.Error);

    public bool Full => problems.Count >= Most;

    public static string Place(long line, string? column = null) => column is null
        ? string.Create(CultureInfo.InvariantCulture, $"line {line}")
        : string.Create(CultureInfo.InvariantCulture, $"line {line}, {column}");

    public void Add(string field, string message, string wayOut, Severity severity = Severity.Error)
    {
        if (problems.Count == Most)
        {
            return;
        }

        problems.Add(problems.Count == Most - 1
            ? new(field, string.Create(CultureInfo.InvariantCulture, $"There are {Most - 1} problems up to here; the rest was not read."), "Put these right first.")
            : new(field, message, wayOut, severity));
    }

    public void Add(long line, string? column, string message, string wayOut) => Add(Place(line, column), message, wayOut);

    /// <summary>The figure if a day can bring it, else NaN and a problem.</summary>
    public double Within(double value, long line, string column, double low, double high, string unit)
    {
        if (double.IsNaN(value) || (value >= low && value <= high))
        {
            return value;
        }

        Add(line, column, value < low && low == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{value:0.###} {unit} is negative.")
            : string.Create(CultureInfo.InvariantCulture, $"{value:0.###} is outside {low:0.#} to {high:0.#} {unit}."), "Correct it, check the unit, or leave it empty if it is missing.");
        return double.NaN;
    }

    /// <summary>Checks a day whole: limits and that the minimum is not above the maximum.</summary>
    public ObservedDay Checked(ObservedDay d, long line)
    {
        var day = d with
        {
            Max = Within(d.Max, line, "max", DayLimits.Coldest, DayLimits.Hottest, "°C"),
            Min = Within(d.Min, line, "min", DayLimits.Coldest, DayLimits.Hottest, "°C"),
            Rain = Within(d.Rain, line, "rain", 0, DayLimits.MostRain, "mm"),
            Radiation = Within(d.Radiation, line, "radiation", 0, DayLimits.MostRadiation, "MJ/m²"),
            Sunshine = Within(d.Sunshine, line, "sunshine", 0, 24, "h"),
            Wind = Within(d.Wind, line, "wind", 0, DayLimits.MostWind, "m/s"),
            DewPoint = Within(d.DewPoint, line, "dewpoint", DayLimits.Coldest, 40, "°C"),
            Humidity = Humid(d.Humidity, line, "humidity"),
            HighestHumidity = Humid(d.HighestHumidity, line, "humidity-max"),
            LowestHumidity = Humid(d.LowestHumidity, line, "humidity-min"),
        };
        if (day.Min > day.Max)
        {
            Add(line, null, string.Create(CultureInfo.InvariantCulture, $"The minimum, {day.Min:0.##} °C, is above the maximum, {day.Max:0.##} °C."), "Check whether the two were swapped.");
        }

        return day;
    }

    private double Humid(double value, long line, string column) => Math.Min(100, Within(value, line, column, 0, DayLimits.MostHumidity, "%"));
}
