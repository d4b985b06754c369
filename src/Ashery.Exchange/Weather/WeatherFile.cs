using System.Globalization;
using Ashery.Climate;
using Ashery.Climate.Observed;
using Ashery.Problems;

namespace Ashery.Exchange.Weather;

/// <summary>Reads weather files: the own table (.csv), EPW (.epw), GHCN-Daily station files (.dly) and its by-year tables. docs/weather-file.md has the formats.</summary>
public static class WeatherFile
{
    /// <summary>Columns of the own table; the first four are needed.</summary>
    public static IReadOnlyList<string> Columns => WeatherCsv.Columns;

    /// <summary>The series in a file.</summary>
    /// <param name="stream">The file; read once, never held whole.</param>
    /// <param name="fileName">Its name, whose ending tells the format.</param>
    /// <param name="place">Where the garden is; null takes the place from the file. Its latitude and height go before the file's, its normals fill long gaps.</param>
    /// <param name="station">Which station of a file with many; null when there is one.</param>
    public static Result<WeatherSeries> Read(Stream stream, string fileName, Place? place, string? station = null)
    {
        using var lines = new WeatherLines(stream);
        var problems = new WeatherProblems();
        if (Record(lines, fileName, station, problems) is not { } record)
        {
            return Result.Fail<WeatherSeries>(problems.All);
        }

        if (lines.Broken)
        {
            problems.Add(
                lines.Number,
                null,
                string.Create(CultureInfo.InvariantCulture, $"It is longer than {WeatherLines.LongestLine} characters or not text."),
                "Unpack the file if it is an archive; in a spreadsheet, save it as CSV UTF-8.");
        }

        if (problems.Any)
        {
            return Result.Fail<WeatherSeries>([.. problems.All.Where(static p => p.Severity == Severity.Error)]);
        }

        if (record.Days.Count == 0)
        {
            return Result.Fail<WeatherSeries>("file", "There is no day in it.", "Give a file with one line a day, or hourly in EPW.");
        }

        var notes = problems.All.ToList();
        if (Where(place, record, notes) is not { } there)
        {
            return Result.Fail<WeatherSeries>("latitude", "The file does not say where it was measured.", "Give --latitude, and --elevation if you know it, or a garden.");
        }

        var series = ObservedWeather.Series(there, record.Days, record.Name is { } name ? $"{fileName}, {name}" : fileName);
        return series.Ok ? Result.Of(series.Value with { Notes = [.. notes, .. series.Value.Notes] }) : series;
    }

    private static WeatherRecord? Record(WeatherLines lines, string fileName, string? station, WeatherProblems problems)
    {
        var ending = Path.GetExtension(fileName);
        if (ending.Equals(".epw", StringComparison.OrdinalIgnoreCase))
        {
            return new WeatherEpw(problems).Read(lines);
        }

        if (ending.Equals(".dly", StringComparison.OrdinalIgnoreCase))
        {
            return new WeatherDly(problems).Read(lines);
        }

        if (!ending.Equals(".csv", StringComparison.OrdinalIgnoreCase) && !ending.Equals(".txt", StringComparison.OrdinalIgnoreCase))
        {
            problems.Add("file", $"'{WeatherText.Shown(fileName)}' ends in none of .csv, .epw and .dly.", "Give it the ending of its format.");
            return null;
        }

        if (!lines.Next())
        {
            return new([]);
        }

        return WeatherByYear.LooksLike(lines.Current)
            ? new WeatherByYear(problems, station).Read(lines, onFirst: true)
            : new WeatherCsv(problems).Read(lines, onFirst: true);
    }

    private static Place? Where(Place? place, WeatherRecord record, List<Problem> notes)
    {
        if (place is null)
        {
            return record.Latitude is { } latitude
                ? new Place { Name = record.Name ?? "station", Latitude = latitude, ElevationMetres = record.Elevation }
                : null;
        }

        if (record.Latitude is { } there && Math.Abs(there - place.Latitude) > 1)
        {
            notes.Add(new(
                "latitude",
                string.Create(CultureInfo.InvariantCulture, $"The file was measured at {there:0.##}°, the garden is at {place.Latitude:0.##}°; the garden's is used."),
                "Take a nearer station if there is one.",
                Severity.Warning));
        }

        return place.ElevationMetres is null && record.Elevation is { } height ? place with { ElevationMetres = height } : place;
    }
}
