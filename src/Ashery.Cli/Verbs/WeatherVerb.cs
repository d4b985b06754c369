using Ashery.Cli.Frame;
using Ashery.Climate;
using Ashery.Climate.Evapotranspiration;
using Ashery.Climate.Sheltering;
using Ashery.Exchange.Weather;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Cli.Verbs;

/// <summary>Daily weather of a place, made from its monthly normals or read from a file, with reference evapotranspiration.</summary>
internal sealed class WeatherVerb : Verb
{
    private const int MostDays = 36_525;

    private readonly GardenSource garden;
    private readonly ValueOption latitude;
    private readonly ValueOption elevation;
    private readonly ValueOption normals;
    private readonly System.CommandLine.Option<bool> coast;
    private readonly ValueOption file;
    private readonly ValueOption station;
    private readonly ValueOption from;
    private readonly ValueOption days;
    private readonly ValueOption seed;
    private readonly ValueOption shelter;

    public WeatherVerb()
        : base("weather", "Daily weather from monthly normals or a file, with evapotranspiration")
    {
        garden = new GardenSource(Command);
        latitude = Add(new ValueOption("--latitude", "DEGREES", "Latitude, south negative, instead of the garden's or file's"));
        elevation = Add(new ValueOption("--elevation", "METRES", "Height above sea level"));
        normals = Add(new ValueOption("--normals", "FILE.csv", "Monthly normals instead of the garden's: month,max,min,rain and, if known, wet-days,wind,humidity,radiation"));
        coast = Flag("--coast", "Large water is near: more radiation for the same temperatures");
        file = Add(new ValueOption("--file", "FILE", "Read the weather instead of making it: .csv, .epw, .dly"));
        station = Add(new ValueOption("--station", "ID", "Which station of a file with many"));
        from = Add(new ValueOption("--from", "DATE", "First day, as 2026-03-01 (today; with --file its first day)"));
        days = Add(new ValueOption("--days", "N", "How many days (365; with --file all)"));
        seed = Add(new ValueOption("--seed", "N", "Another seed makes other weather of the same normals (1)"));
        shelter = Add(new ValueOption("--shelter", "SPOT", "Weather of a spot: balcony, wall, porch, tree, shade-50 and so on") { Words = static () => Shelter.All.Select(static s => s.Id) });
    }

    public override string Details =>
        """
        ET0 is FAO-56 reference evapotranspiration: water that short grass would use, 1 mm being 1 litre a square metre. Made weather repeats the normals on average, not any real day. File formats: docs/weather-file.md.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("A year of the demo garden:", "ashery weather --demo"),
        ("Another year of the same place, on a balcony, as JSON:", "ashery weather --demo --seed 7 --shelter balcony --json"),
        ("The same normals further north and higher up:", "ashery weather --demo --latitude 52 --elevation 400 --days 31"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var spot = Spot(given);
        var number = given.Whole(seed, 1, 0, int.MaxValue);
        var series = given.Has(file) ? Read(given, terminal) : Make(given, terminal, number);
        if (given.Wrong || series is null)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        series = spot is null ? series : spot.Apply(series);
        if (given.Has(Json))
        {
            terminal.Output.Write(WeatherJson.Write(series));
        }
        else
        {
            WeatherText.Write(terminal, series);
        }

        return ExitCode.Done;
    }

    private WeatherSeries? Make(Given given, Terminal terminal, int number)
    {
        if (given.Has(station))
        {
            given.Add(new Problem("station", "--station belongs to --file.", "Give the file too, or leave it out."));
        }

        var first = Dates.Read(given, from) ?? terminal.Today();
        var count = given.Whole(days, 365, 1, MostDays);
        var place = Place(given, terminal);
        if (place is { Normals: null })
        {
            given.Add(new Problem("normals", "The place has no monthly normals to make weather from.", "Give --normals FILE.csv, a garden that has them, or --file with weather."));
        }

        return given.Wrong || place is null ? null : given.Take(WeatherGenerator.Run(place, first, count, number));
    }

    private WeatherSeries? Read(Given given, Terminal terminal)
    {
        if (given.Has(seed))
        {
            given.Add(new Problem("seed", "--seed belongs to made weather, not to --file.", "Leave one of the two out."));
        }

        var first = Dates.Read(given, from);
        var count = given.Whole(days, MostDays, 1, MostDays);
        var id = given.Text(station);
        var place = given.Has(latitude) || garden.IsNamed(given) ? Place(given, terminal) : null;
        if (given.Text(file) is not { } path || given.Wrong)
        {
            return null;
        }

        var series = given.Take(LongFile.Read(path, "file", stream => WeatherFile.Read(stream, Path.GetFileName(path), place, id)));
        if (series is null || (first is null && !given.Has(days)))
        {
            return series;
        }

        var part = series.Days.Where(d => first is null || d.Date >= first).Take(count).ToList();
        if (part.Count == 0)
        {
            given.Add(new Problem("from", "The file has no day from then on.", $"It ends on {Text.Figures.Date(series.Days[^1].Date)}."));
            return null;
        }

        return series with { Days = part };
    }

    private Place? Place(Given given, Terminal terminal)
    {
        var north = Number(given, latitude, -90, 90, "42.6");
        var height = Number(given, elevation, Air.LowestPlace, Air.HighestPlace, "120");
        var months = given.Has(normals) ? Normals(given) : null;
        Place? place = null;
        if (garden.IsNamed(given) || !given.Has(latitude))
        {
            place = garden.Load(given, terminal)?.Place;
        }

        if (given.Wrong)
        {
            return null;
        }

        place ??= new Place { Name = "the place given", Latitude = north!.Value };
        place = place with { Latitude = north ?? place.Latitude, ElevationMetres = height ?? place.ElevationMetres, Normals = months ?? place.Normals };
        return given.Has(coast) ? place with { NearCoast = true } : place;
    }

    private IReadOnlyList<MonthlyNormal>? Normals(Given given) =>
        given.Text(normals) is { } path && given.Take(TextFile.Read(path, "normals")) is { } text ? given.Take(NormalsCsv.Read(text)) : null;

    private static double? Number(Given given, ValueOption option, double low, double high, string example)
    {
        if (given.Text(option) is not { } text)
        {
            return null;
        }

        var read = NumberReader.Read(text, Given.Field(option), low, high, example);
        given.AddRange(read.Problems);
        return read.Ok ? read.Value : null;
    }

    private Shelter? Spot(Given given)
    {
        if (!given.Has(shelter))
        {
            return null;
        }

        return given.Word(shelter, [.. Shelter.All.Select(static s => s.Id)]) is { } word ? Shelter.Find(word) : null;
    }
}
