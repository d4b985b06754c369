using System.Globalization;
using Ashery.Climate;
using Ashery.Climate.Evapotranspiration;

namespace Ashery.Exchange.Gardens;

/// <summary>Reads where the garden is: latitude, usual weather, named seasons.</summary>
internal sealed class PlaceReader(FieldReader fields)
{
    public Place Read(PlaceDto? dto)
    {
        if (dto is null)
        {
            fields.Missing("place", "Give name and latitude, such as { \"name\": \"Terrace\", \"latitude\": 41.2 }.");
            dto = new() { Name = "?", Latitude = 0 };
        }

        var normals = dto.Normals is { } months
            ? fields.All(months, "place.normals", ReadMonth)
            : null;
        if (normals is not null && normals.Count != 12 && !fields.HasErrors)
        {
            fields.Add(new("place.normals", FormattableString.Invariant($"There are {normals.Count} months."), "Give twelve, January first, or leave them out."));
        }

        return new Place
        {
            Name = fields.Text(dto.Name, "place.name", 120),
            Latitude = fields.Number(dto.Latitude, "place.latitude", -90, 90, "degrees"),
            ElevationMetres = fields.Optional(dto.Elevation, "place.elevation", Air.LowestPlace, Air.HighestPlace, "m"),
            NearCoast = dto.Coast ?? false,
            Normals = normals,
            Seasons = fields.All(dto.Seasons, "place.seasons", ReadSeason),
        };
    }

    private MonthlyNormal ReadMonth(MonthDto m, string path)
    {
        var max = fields.Number(m.MeanMax, path + ".meanMax", -60, 60, "°C");
        var min = fields.Number(m.MeanMin, path + ".meanMin", -60, 60, "°C");
        if (min > max)
        {
            fields.Add(new(path, "The mean minimum is above the mean maximum.", "Check whether the two were swapped."));
        }

        return new(max, min, fields.Number(m.Rain, path + ".rain", 0, 3000, "mm"))
        {
            WetDays = fields.Optional(m.WetDays, path + ".wetDays", 0, 31, "days"),
            WindMs = fields.Optional(m.Wind, path + ".wind", 0, 30, "m/s"),
            Humidity = fields.Optional(m.Humidity, path + ".humidity", 1, 100, "%"),
            RadiationMj = fields.Optional(m.Radiation, path + ".radiation", 0, 45, "MJ/m²"),
        };
    }

    private Season ReadSeason(SeasonDto s, string path) =>
        new(fields.Word<SeasonKind>(s.Kind, path + ".kind"), ReadDay(s.From, path + ".from"), ReadDay(s.To, path + ".to"));

    private MonthDay ReadDay(string? text, string path)
    {
        // 2024 was a leap year, so that 02-29 is a day.
        if (text is { Length: 5 } && DateOnly.TryParseExact("2024-" + text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var d))
        {
            return new(d.Month, d.Day);
        }

        fields.Add(new(path, text is null ? "This is missing." : $"\"{text}\" is not a day of the year.", "Write month and day as 03-15."));
        return new(1, 1);
    }
}
