using System.Globalization;

namespace Ashery.Exchange.Weather;

/// <summary>
/// Reads GHCN-Daily by-year or by-station CSV: station, day as 20260315, element, value, measurement, quality and source flag, hour; no header. A year holds all
/// stations of the world, so only the wanted one is kept while the lines run through.
/// </summary>
internal sealed class WeatherByYear
{
    private const int Width = 8;

    private readonly WeatherProblems problems;
    private readonly GhcnDays days;
    private readonly bool isWanted;
    private string? station;
    private bool told;

    public WeatherByYear(WeatherProblems problems, string? wanted)
    {
        this.problems = problems;
        days = new(problems);
        isWanted = wanted is not null;
        station = wanted;
    }

    /// <summary>Whether a first line looks like this format: eleven characters, a comma, eight digits, a comma.</summary>
    public static bool LooksLike(ReadOnlySpan<char> line) =>
        line.Length > 21 && line[11] == ',' && line[20] == ',' && !line[12..20].ContainsAnyExceptInRange('0', '9');

    public WeatherRecord Read(WeatherLines lines, bool onFirst)
    {
        while (!problems.Full && (onFirst || lines.Next()))
        {
            onFirst = false;
            if (!lines.Current.IsWhiteSpace())
            {
                Figure(lines.Current, lines.Number);
            }
        }

        var list = days.Close();
        if (list.Count == 0 && isWanted && !problems.Any)
        {
            problems.Add("station", $"The file has no figure of the station '{WeatherText.Shown(station)}'.", "Write the eleven characters of its id, as in the list of stations.");
        }

        return new(list, station);
    }

    private void Figure(ReadOnlySpan<char> line, long number)
    {
        var comma = line.IndexOf(',');
        if (comma < 0)
        {
            problems.Add(number, null, "It has no comma.", "Give the file as it was downloaded.");
            return;
        }

        var id = line[..comma];
        station ??= WeatherText.Shown(id);
        if (!id.SequenceEqual(station))
        {
            if (!isWanted && !told)
            {
                told = true;
                problems.Add(number, "station", $"The file has more than one station: '{station}' and '{WeatherText.Shown(id)}'.", "Say which with --station.");
            }

            return;
        }

        Span<Range> pieces = stackalloc Range[Width + 1];
        var count = Fields.Cut(line, ',', pieces);
        if (count is < 4 or > Width)
        {
            problems.Add(number, null, string.Create(CultureInfo.InvariantCulture, $"It has {count} fields; a figure has {Width}."), "Give the file as it was downloaded.");
            return;
        }

        var when = line[pieces[1]];
        if (when.Length != 8 || !Fields.Whole(when, out var packed) || !WeatherText.TryDate(packed / 10000, packed / 100 % 100, packed % 100, out var date))
        {
            problems.Add(number, "date", $"'{WeatherText.Shown(when)}' is not a day.", "A day is written 20260315.");
            return;
        }

        var element = GhcnDays.Known(line[pieces[2]]);
        if (element == GhcnDays.Element.Other)
        {
            return;
        }

        if (!Fields.Whole(line[pieces[3]], out var value))
        {
            problems.Add(number, "value", $"'{WeatherText.Shown(line[pieces[3]])}' is not a whole number.", "Give the file as it was downloaded.");
            return;
        }

        var quality = count > 5 && !line[pieces[5]].IsEmpty ? line[pieces[5]][0] : ' ';
        days.Add(date, element, value, quality, number);
    }
}
