using System.Globalization;
using Ashery.Climate;
using Ashery.Climate.Evapotranspiration;
using Ashery.Problems;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Settings;

/// <summary>A place with its seasons and weather as a form and back.</summary>
internal static class PlaceForm
{
    private static readonly string[] DayFormats = ["d MMM", "d MMMM", "MMM d", "MMMM d", "d.M.", "d.M", "MM-dd"];

    public static Draft Fill(Place place, Amounts amounts)
    {
        var fields = new List<(string, string?)> { ("name", place.Name), ("latitude", Figures.Number(place.Latitude)), ("elevation", place.ElevationMetres is { } height ? Figures.Number(height) : null), ("coast", place.NearCoast ? "yes" : null) };
        foreach (var season in place.Seasons)
        {
            fields.Add(($"from-{season.Kind}", Day(season.From)));
            fields.Add(($"to-{season.Kind}", Day(season.To)));
        }

        foreach (var (normal, i) in (place.Normals ?? []).Select((n, i) => (n, Figures.Number(i + 1))))
        {
            fields.Add(($"max-{i}", Temperature(normal.MeanMax, amounts)));
            fields.Add(($"min-{i}", Temperature(normal.MeanMin, amounts)));
            fields.Add(($"rain-{i}", Figures.Number(normal.RainMm)));
        }

        return Draft.With(fields.DistinctBy(f => f.Item1));
    }

    public static Result<Place> Read(Draft typed, Amounts amounts, Place before)
    {
        var read = new FieldReader(typed);
        var name = read.Text("name", "The name", 100);
        var latitude = read.Required("latitude", -90, 90, "43.2");
        var elevation = read.Optional("elevation", Air.LowestPlace, Air.HighestPlace, "120");
        var place = before with { Name = name, Latitude = latitude, ElevationMetres = elevation, NearCoast = typed.Has("coast"), Seasons = Seasons(read, typed), Normals = Normals(read, typed, amounts, before.Normals) };
        return read.Fine ? Result.Of(place) : Result.Fail<Place>(read.Problems);
    }

    private static List<Season> Seasons(FieldReader read, Draft typed)
    {
        var seasons = new List<Season>();
        foreach (var kind in Enum.GetValues<SeasonKind>())
        {
            var (from, to) = ($"from-{kind}", $"to-{kind}");
            if (!typed.Has(from) && !typed.Has(to))
            {
                continue;
            }

            if (Day(read, typed, from) is { } first && Day(read, typed, to) is { } last)
            {
                seasons.Add(new Season(kind, first, last));
            }
        }

        return seasons;
    }

    private static MonthDay? Day(FieldReader read, Draft typed, string field)
    {
        // A leap year, so that 29 February can be written.
        if (DateTime.TryParseExact(
            typed[field] + " 2024", [.. DayFormats.Select(f => f + " yyyy")], CultureInfo.InvariantCulture, DateTimeStyles.AllowWhiteSpaces, out var day))
        {
            return new MonthDay(day.Month, day.Day);
        }

        read.Add(field, typed.Has(field) ? $"{FieldReader.Cut(typed[field])} is not a day of the year." : "One end of the season is missing.", "Write day and month, as in 15 Mar.");
        return null;
    }

    private static List<MonthlyNormal>? Normals(FieldReader read, Draft typed, Amounts amounts, IReadOnlyList<MonthlyNormal>? before)
    {
        var months = Enumerable.Range(1, 12).Select(m => Figures.Number(m)).ToList();
        if (!months.Exists(m => typed.Has($"max-{m}") || typed.Has($"min-{m}") || typed.Has($"rain-{m}")))
        {
            return null;
        }

        var (low, high) = amounts.Us ? (-100, 140) : (-60, 60);
        return [.. months.Select((m, i) => (before is { Count: 12 } ? before[i] : new MonthlyNormal(0, 0, 0)) with
        {
            // What the form does not ask stays as it was: wet days, wind, humidity and radiation come in with a garden file.
            MeanMax = amounts.ToCelsius(read.Required($"max-{m}", low, high, amounts.Us ? "75" : "24")),
            MeanMin = amounts.ToCelsius(read.Required($"min-{m}", low, high, amounts.Us ? "55" : "13")),
            RainMm = read.Required($"rain-{m}", 0, 5000, "60"),
        })];
    }

    private static string Temperature(double celsius, Amounts amounts) =>
        Figures.Number(Math.Round(amounts.FromCelsius(celsius), 2));

    private static string Day(MonthDay day) => new DateOnly(2024, day.Month, day.Day).ToString("d MMM", CultureInfo.InvariantCulture);
}
