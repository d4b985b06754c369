using Ashery.Climate;
using Ashery.Exchange.Gardens;

namespace Ashery.Exchange.RootZone;

/// <summary>Reads where a pot stands and which weather it met.</summary>
internal static class PotWeatherReader
{
    public static PotDocument Read(Node root, PotDocument read, FieldReader fields)
    {
        var place = root.Object("place");
        var file = root.Text("weatherFile");
        if (place is null && file is null && root.IsObject)
        {
            fields.Missing("place", "Give name, latitude and twelve monthly normals, or a weatherFile.");
        }

        return read with { Place = place is null ? null : Place(place, fields), WeatherFile = file };
    }

    private static Place Place(Node node, FieldReader fields)
    {
        var normals = node.Has("normals") ? node.List("normals", 12).Select(m => Month(m, fields)).ToList() : null;
        if (normals is not null && normals.Count != 12 && !fields.HasErrors)
        {
            fields.Add(new(node.PathOf("normals"), FormattableString.Invariant($"There are {normals.Count} months."), "Give twelve, January first."));
        }

        var place = new Place
        {
            Name = node.Text("name") ?? "the place",
            Latitude = node.Needed("latitude", -90, 90, "degrees"),
            ElevationMetres = node.Number("elevation", -430, 9000, "m"),
            NearCoast = node.Flag("nearCoast"),
            Normals = normals,
        };
        node.Close();
        return place;
    }

    private static MonthlyNormal Month(Node node, FieldReader fields)
    {
        var max = node.Needed("meanMax", -60, 60, "°C");
        var min = node.Needed("meanMin", -60, 60, "°C");
        if (min > max)
        {
            fields.Add(new(node.PathOf("meanMin"), "The mean minimum is above the mean maximum.", "Check whether the two were swapped."));
        }

        var month = new MonthlyNormal(max, min, node.Needed("rain", 0, 3000, "mm"))
        {
            WetDays = node.Number("wetDays", 0, 31, "days"),
            WindMs = node.Number("wind", 0, 30, "m/s"),
            Humidity = node.Number("humidity", 0, 100, "%"),
            RadiationMj = node.Number("radiation", 0, 45, "MJ/m²"),
        };
        node.Close();
        return month;
    }
}
