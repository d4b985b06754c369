using System.Globalization;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Climate;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>Weather as a grower reads it: a line, months in a table, what was assumed.</summary>
internal static class WeatherText
{
    private static readonly string[] Names = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    public static void Write(Terminal terminal, WeatherSeries series)
    {
        var page = new Page(terminal);
        var (rain, et) = (0.0, 0.0);
        foreach (var day in series.Days)
        {
            (rain, et) = (rain + day.RainMm, et + day.ReferenceEtMm);
        }

        var years = series.Days.Count > 730 ? " a year" : string.Empty;
        var part = years.Length > 0 ? 365.25 / series.Days.Count : 1;
        page.Heading($"{SafeText.Of(series.Place.Name)}: {Figures.Fixed(rain * part, 0)} mm of rain and {Figures.Fixed(et * part, 0)} mm of ET0{years}.");
        page.Blank();
        page.Fact("from", SafeText.Of(series.Origin));
        page.Fact("days", $"{Figures.Whole(series.Days.Count)}, {Figures.Date(series.Days[0].Date)} to {Figures.Date(series.Days[^1].Date)}");
        page.Fact("latitude", Figures.Fixed(series.Place.Latitude, 1) + "°");
        page.Fact("height", series.Place.ElevationMetres is { } height ? Figures.Short(height) + " m" : null);
        Months(terminal, page, WeatherMonths.Of(series));
        page.Blank();
        page.Text("°C mean of days; rain, wet days and ET0 sums; sun in MJ/m² a day; light in hours.", indent: 2);
        foreach (var (severity, title) in new[] { (Severity.Warning, "Mind"), (Severity.Note, "Assumed") })
        {
            page.Bullets(title, [.. series.Notes.Where(n => n.Severity == severity).Select(static n => $"{n.Field}: {n.Message} {n.WayOut}")]);
        }
    }

    private static void Months(Terminal terminal, Page page, IReadOnlyList<WeatherMonth> months)
    {
        page.Blank();
        var table = new Table("month", ">days", ">max", ">min", ">rain mm", ">wet days", ">sun", ">light h", ">ET0 mm");
        foreach (var m in months)
        {
            table.Add(
                m.Year is { } year ? $"{Names[m.Month - 1]} {year.ToString(CultureInfo.InvariantCulture)}" : Names[m.Month - 1],
                Figures.Whole(m.Days),
                Figures.Fixed(m.MeanMax, 1),
                Figures.Fixed(m.MeanMin, 1),
                Figures.Fixed(m.RainMm, 0),
                Figures.Fixed(m.WetDays, m.Year is null ? 1 : 0),
                Figures.Fixed(m.RadiationMj, 1),
                Figures.Fixed(m.DaylightHours, 1),
                Figures.Fixed(m.ReferenceEtMm, 0));
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
    }
}
