using Ashery.Climate;
using Ashery.Climate.Evapotranspiration;
using Ashery.Exchange.Weather;
using Ashery.Problems;

namespace Ashery.Exchange.Tests.Weather;

/// <summary>The made fixtures (invented stations) come out as worked by hand.</summary>
public class WeatherFileTests
{
    private static readonly Place Garden = new() { Name = "x", Latitude = 42.6, ElevationMetres = 12 };

    [Fact]
    public void The_own_table_is_read_and_its_short_gaps_are_bridged()
    {
        var series = Good("made-station.csv", null);
        Assert.Equal(12, series.Days.Count);
        Assert.Equal(42.6, series.Place.Latitude);
        Assert.Equal(12, series.Place.ElevationMetres);
        Assert.Equal((12.2, 5.1, 0.0, 11.0), (series.Days[0].MaxCelsius, series.Days[0].MinCelsius, series.Days[0].RainMm, series.Days[0].RadiationMj));

        // 29 February has no maximum: between 13.3 and 9.7. 2 March is not there at all: between its neighbours, dry.
        var leap = series.Days[4];
        Assert.Equal(new DateOnly(2024, 2, 29), leap.Date);
        Assert.Equal(11.5, leap.MaxCelsius, 9);
        var absent = series.Days[6];
        Assert.Equal((new DateOnly(2024, 3, 2), 0.0), (absent.Date, absent.RainMm));
        Assert.Equal((9.7 + 14.2) / 2, absent.MaxCelsius, 9);

        // Wind at 10 m becomes wind at 2 m, humidity vapour pressure by equation 17, and all evapotranspiration.
        Assert.Equal(Wind.AtTwoMetres(3, 10), series.Days[0].WindMs, 9);
        Assert.Equal(VapourPressure.FromHumidityExtremes(12.2, 5.1, 88, 52), series.Days[0].VapourKpa, 9);
        Assert.Equal(new DayEt(42.6, 12).Of(56, 12.2, 5.1, 11, Wind.AtTwoMetres(3, 10), VapourPressure.FromHumidityExtremes(12.2, 5.1, 88, 52)), series.Days[0].ReferenceEtMm, 9);
        Assert.Equal(["maximum", "minimum", "rain", "radiation", "humidity", "wind"], series.Notes.Select(static n => n.Field));
        Assert.Contains("2 of 12 days bridged", series.Notes[0].Message, StringComparison.Ordinal);
    }

    // Worked apart from the reader when the file was made: extremes, sums of Wh/m² times 0.0036, mean wind at 10 m.
    [Fact]
    public void Hours_of_an_epw_file_become_days()
    {
        var series = Good("made-station.epw", null);
        Assert.Equal(("Tidewick (made)", 42.6, 12.0), (series.Place.Name, series.Place.Latitude, series.Place.ElevationMetres!.Value));
        Assert.Equal([29.0, 30, 31], series.Days.Select(static d => d.MaxCelsius));
        Assert.Equal([17.0, 18, 19.2], series.Days.Select(static d => d.MinCelsius));
        Assert.Equal([0.0, 7, 0], series.Days.Select(static d => Math.Round(d.RainMm, 9)));
        Assert.All(series.Days, static d => Assert.Equal(29.2824, d.RadiationMj, 9));
        Assert.Equal(2.2 * Wind.Factor(10), series.Days[0].WindMs, 9);
        Assert.Equal(2, series.Days[2].WindMs);
        Assert.Equal(VapourPressure.Saturation(15.1), series.Days[0].VapourKpa, 9);
        Assert.Contains(series.Notes, static n => n.Field == "wind" && n.Message.StartsWith("1 of 3", StringComparison.Ordinal));
    }

    [Fact]
    public void A_station_file_of_fixed_width_is_read()
    {
        var series = Good("made-station.dly", Garden);
        Assert.Equal(60, series.Days.Count);
        Assert.Equal((12.0, 3.0, 5.6), (series.Days[0].MaxCelsius, series.Days[0].MinCelsius, series.Days[0].RainMm));
        Assert.Equal((18.0, 3.0), (series.Days[29].MaxCelsius, series.Days[29].MinCelsius));

        // 11 February failed a check (99.9 °C): bridged between 14.7 and 15.3. 6 February is a trace, no rain. 21 February has no minimum.
        Assert.Equal(15.0, series.Days[10].MaxCelsius, 9);
        Assert.Equal(0, series.Days[5].RainMm);
        Assert.Equal((6.8 + 7.2) / 2, series.Days[20].MinCelsius, 9);
        Assert.Contains(series.Notes, static n => n.Field == "quality" && n.Message.StartsWith("1 ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_year_of_many_stations_is_read_for_one()
    {
        var series = Good("made-by-year.csv", Garden, "XX000MADE01");
        Assert.Equal(10, series.Days.Count);
        Assert.Equal((18.0, 9.0, 2.5), (series.Days[0].MaxCelsius, series.Days[0].MinCelsius, series.Days[0].RainMm));

        // The seventh day's rain failed a check and is taken as dry.
        Assert.Equal(0, series.Days[6].RainMm);
        var without = Read("made-by-year.csv", Garden, null);
        Assert.Equal("Say which with --station.", without.Problems[0].WayOut);
        Assert.Contains("no figure of the station", Read("made-by-year.csv", Garden, "XX000MADE09").Problems[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_gardens_latitude_goes_before_the_files_and_a_far_one_is_told()
    {
        var near = Good("made-station.epw", Garden with { Latitude = 43.0, ElevationMetres = null });
        Assert.Equal((43.0, 12.0), (near.Place.Latitude, near.Place.ElevationMetres!.Value));
        Assert.DoesNotContain(near.Notes, static n => n.Field == "latitude");
        Assert.Contains(Good("made-station.epw", Garden with { Latitude = 40 }).Notes, static n => n.Field == "latitude" && n.Severity == Severity.Warning);
    }

    private static WeatherSeries Good(string file, Place? place, string? station = null)
    {
        var read = Read(file, place, station);
        Assert.True(read.Ok, string.Join("\n", read.Problems));
        Assert.All(read.Value.Days.Select((d, i) => (d, i)), x => Assert.Equal(read.Value.Days[0].Date.AddDays(x.i), x.d.Date));
        return read.Value;
    }

    private static Result<WeatherSeries> Read(string file, Place? place, string? station)
    {
        using var stream = File.OpenRead(Path.Combine(AppContext.BaseDirectory, "Weather", file));
        return WeatherFile.Read(stream, file, place, station);
    }
}
