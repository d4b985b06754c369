using System.Globalization;
using Ashery.Climate.Evapotranspiration;
using Ashery.Climate.Observed;

namespace Ashery.Exchange.Weather;

/// <summary>
/// Reads a weather table: a header with the columns of <see cref="Columns"/> in any order, a line a day. Fields are apart by commas, semicolons or tabs; with
/// semicolons a comma may be the decimal mark. Empty, NA, - and -9999 are missing. Lines that start with # are remarks; <c># latitude: 42.6</c> and <c># elevation: 30</c> tell the place.
/// </summary>
internal sealed class WeatherCsv(WeatherProblems problems)
{
    /// <summary>Names of the columns; the first four are needed.</summary>
    public static readonly string[] Columns =
        ["date", "max", "min", "rain", "radiation", "sunshine", "wind", "wind10", "humidity", "humidity-max", "humidity-min", "dewpoint"];

    private const int MostColumns = 64;

    private readonly int[] places = new int[MostColumns];
    private int columns;
    private char separator = ',';
    private double? latitude;
    private double? elevation;

    public WeatherRecord Read(WeatherLines lines, bool onFirst)
    {
        var book = new DayBook(problems);
        var headed = false;
        while (!problems.Full && (onFirst || lines.Next()))
        {
            onFirst = false;
            var line = lines.Current;
            if (line.IsWhiteSpace())
            {
                continue;
            }

            if (line[0] == '#')
            {
                Remark(line[1..], lines.Number);
            }
            else if (!headed)
            {
                headed = true;
                Header(line, lines.Number);
                if (problems.Any)
                {
                    break;
                }
            }
            else
            {
                Row(line, lines.Number, book);
            }
        }

        return new(book.Days, Latitude: latitude, Elevation: elevation);
    }

    private void Remark(ReadOnlySpan<char> text, long line)
    {
        var at = text.IndexOf(':');
        if (at < 0)
        {
            return;
        }

        var name = text[..at].Trim();
        var (isLatitude, isHeight) = (name.Equals("latitude", StringComparison.OrdinalIgnoreCase), name.Equals("elevation", StringComparison.OrdinalIgnoreCase));
        if (!isLatitude && !isHeight)
        {
            return;
        }

        if (!Fields.Number(text[(at + 1)..].Trim(), out var value))
        {
            problems.Add(line, isLatitude ? "latitude" : "elevation", $"'{WeatherText.Shown(text[(at + 1)..].Trim())}' is not a number.", "Write degrees or metres with a point for decimals, as in # latitude: 42.6.");
            return;
        }

        value = isLatitude ? problems.Within(value, line, "latitude", -90, 90, "degrees") : problems.Within(value, line, "elevation", Air.LowestPlace, Air.HighestPlace, "m");
        if (isLatitude)
        {
            latitude = value;
        }
        else
        {
            elevation = value;
        }
    }

    private void Header(ReadOnlySpan<char> line, long number)
    {
        separator = line.Contains(';') ? ';' : line.Contains('\t') ? '\t' : ',';
        Span<Range> pieces = stackalloc Range[MostColumns + 1];
        columns = Fields.Cut(line, separator, pieces);
        if (columns > MostColumns)
        {
            problems.Add(number, null, "It has more than 64 columns.", "Leave those that are needed.");
            return;
        }

        for (var i = 0; i < columns; i++)
        {
            var name = line[pieces[i]].Trim();
            places[i] = Find(name);
            if (places[i] < 0)
            {
                problems.Add(number, null, $"The column '{WeatherText.Shown(name)}' is not known.", $"Columns are {string.Join(", ", Columns)}.");
            }
            else if (places.AsSpan(0, i).Contains(places[i]))
            {
                problems.Add(number, null, $"The column '{Columns[places[i]]}' is there twice.", "Leave one of the two.");
            }
        }

        for (var needed = 0; needed < 4; needed++)
        {
            if (!places.AsSpan(0, columns).Contains(needed))
            {
                problems.Add(number, null, $"There is no column '{Columns[needed]}'.", "Start the file with a header, such as date,max,min,rain.");
            }
        }
    }

    private static int Find(ReadOnlySpan<char> name)
    {
        for (var i = 0; i < Columns.Length; i++)
        {
            if (name.Equals(Columns[i], StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return -1;
    }

    private void Row(ReadOnlySpan<char> line, long number, DayBook book)
    {
        Span<Range> pieces = stackalloc Range[MostColumns + 1];
        var count = Fields.Cut(line, separator, pieces);
        if (count != columns)
        {
            problems.Add(number, null, string.Create(CultureInfo.InvariantCulture, $"It has {count} fields, the header has {columns}."), "Leave a missing figure empty, and write decimals with a point where commas part the fields.");
            return;
        }

        Span<double> values = stackalloc double[12];
        values.Fill(double.NaN);
        DateOnly date = default;
        for (var i = 0; i < columns; i++)
        {
            var piece = line[pieces[i]].Trim();
            if (places[i] == 0)
            {
                if (!DateOnly.TryParseExact(piece, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out date) || date.Year is < WeatherText.FirstYear or > WeatherText.LastYear)
                {
                    problems.Add(number, "date", $"'{WeatherText.Shown(piece)}' is not a day.", "Write year, month and day as 2026-03-15.");
                    return;
                }
            }
            else if (!Missing(piece) && !Figure(piece, out values[places[i]]))
            {
                problems.Add(number, Columns[places[i]], $"'{WeatherText.Shown(piece)}' is not a number.", "Write digits with a point for decimals, or leave it empty if it is missing.");
            }
        }

        book.Add(
            new(date)
            {
                Max = values[1],
                Min = values[2],
                Rain = values[3],
                Radiation = values[4],
                Sunshine = values[5],
                Wind = double.IsNaN(values[6]) ? Wind.AtTwoMetres(values[7], 10) : values[6],
                Humidity = values[8],
                HighestHumidity = values[9],
                LowestHumidity = values[10],
                DewPoint = values[11],
            },
            number);
    }

    private static bool Missing(ReadOnlySpan<char> piece) =>
        piece.IsEmpty || piece is "-" || piece.Equals("NA", StringComparison.OrdinalIgnoreCase) || piece is "-9999";

    private bool Figure(ReadOnlySpan<char> piece, out double value)
    {
        if (separator != ';' || !piece.Contains(',') || piece.Length > 40)
        {
            return Fields.Number(piece, out value);
        }

        Span<char> pointed = stackalloc char[piece.Length];
        piece.Replace(pointed, ',', '.');
        return Fields.Number(pointed, out value);
    }
}
