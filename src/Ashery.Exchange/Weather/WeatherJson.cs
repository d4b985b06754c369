using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Climate;
using Ashery.Exchange.Json;
using Ashery.Exchange.Mix;

namespace Ashery.Exchange.Weather;

/// <summary>The answer of <c>ashery weather --json</c>.</summary>
/// <remarks>Units: °C, mm, MJ/m² a day, m/s at 2 m, kPa, h. Days as YYYY-MM-DD.</remarks>
public sealed record WeatherJson
{
    /// <summary>Name of the place.</summary>
    public required string Place { get; init; }

    /// <summary>Degrees, north positive.</summary>
    public required double Latitude { get; init; }

    /// <summary>Metres above sea level; null when not known.</summary>
    public required double? Elevation { get; init; }

    /// <summary>Where the days come from.</summary>
    public required string Origin { get; init; }

    /// <summary>Months in order, or those of the mean year where there are more than 24.</summary>
    public required IReadOnlyList<WeatherMonthJson> Months { get; init; }

    /// <summary>Day after day without a gap.</summary>
    public required IReadOnlyList<WeatherDayJson> Days { get; init; }

    /// <summary>What was assumed or filled in.</summary>
    public required IReadOnlyList<ProblemJson> Problems { get; init; }

    /// <summary>The shape of a series.</summary>
    public static WeatherJson Of(WeatherSeries series) => new()
    {
        Place = series.Place.Name,
        Latitude = series.Place.Latitude,
        Elevation = series.Place.ElevationMetres,
        Origin = series.Origin,
        Months = [.. WeatherMonths.Of(series).Select(static m => new WeatherMonthJson(
            m.Year, m.Month, m.Days, Tidy(m.MeanMax, 2), Tidy(m.MeanMin, 2), Tidy(m.RainMm, 1), Tidy(m.WetDays, 1), Tidy(m.RadiationMj, 2), Tidy(m.DaylightHours, 2), Tidy(m.ReferenceEtMm, 1)))],
        Days = [.. series.Days.Select(static d => new WeatherDayJson(
            d.Date, Tidy(d.MaxCelsius, 2), Tidy(d.MinCelsius, 2), Tidy(d.RainMm, 2), Tidy(d.RadiationMj, 2), Tidy(d.WindMs, 2), Tidy(d.VapourKpa, 3), Tidy(d.ReferenceEtMm, 3)))],
        Problems = ProblemJson.From(series.Notes),
    };

    /// <summary>The JSON text of a series, field by field: a generated serialiser costs too much when a command starts; a test compares the two.</summary>
    public static string Write(WeatherSeries series) => JsonFields.Text(json => Of(series).Write(json));

    private static double Tidy(double value, int digits) => Math.Round(value, digits) + 0.0;

    private void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("place", Place);
        json.WriteNumber("latitude", Latitude);
        json.Number("elevation", Elevation);
        json.WriteString("origin", Origin);
        json.WriteStartArray("months");
        foreach (var m in Months)
        {
            json.WriteStartObject();
            json.Number("year", m.Year);
            json.WriteNumber("month", m.Month);
            json.WriteNumber("days", m.Days);
            json.WriteNumber("meanMax", m.MeanMax);
            json.WriteNumber("meanMin", m.MeanMin);
            json.WriteNumber("rain", m.Rain);
            json.WriteNumber("wetDays", m.WetDays);
            json.WriteNumber("radiation", m.Radiation);
            json.WriteNumber("daylight", m.Daylight);
            json.WriteNumber("referenceEt", m.ReferenceEt);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("days");
        foreach (var d in Days)
        {
            json.WriteStartObject();
            json.WriteString("date", WeatherText.Date(d.Date));
            json.WriteNumber("max", d.Max);
            json.WriteNumber("min", d.Min);
            json.WriteNumber("rain", d.Rain);
            json.WriteNumber("radiation", d.Radiation);
            json.WriteNumber("wind", d.Wind);
            json.WriteNumber("vapour", d.Vapour);
            json.WriteNumber("referenceEt", d.ReferenceEt);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Problems("problems", Problems);
        json.WriteEndObject();
    }
}

/// <summary>A month; <c>rain</c>, <c>wetDays</c> and <c>referenceEt</c> are sums, the rest means of days.</summary>
public sealed record WeatherMonthJson(
    int? Year, int Month, int Days, double MeanMax, double MeanMin, double Rain, double WetDays, double Radiation, double Daylight, double ReferenceEt);

/// <summary>A day.</summary>
public sealed record WeatherDayJson(DateOnly Date, double Max, double Min, double Rain, double Radiation, double Wind, double Vapour, double ReferenceEt);

/// <summary>Generated descriptions of the records of weather.</summary>
[JsonSerializable(typeof(WeatherJson))]
public sealed partial class WeatherJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static WeatherJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
