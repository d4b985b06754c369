using System.Globalization;
using Ashery.Cli.Frame;
using Ashery.Exchange.Calendar;

namespace Ashery.Cli.Verbs;

/// <summary>The year in a few lines: a sign for every six days, seasons above, kinds of feed below.</summary>
internal static class YearStripText
{
    private const int NameColumn = 10;
    private const int Days = 6;

    public static void Write(Terminal terminal, YearJson year)
    {
        var first = year.From;
        var width = ((year.To.DayNumber - first.DayNumber) / Days) + 1;
        terminal.Output.WriteLine(new string(' ', NameColumn) + Months(first, width));
        foreach (var name in year.Seasons.Select(static s => s.Name).Distinct())
        {
            var line = new char[width];
            Array.Fill(line, ' ');
            foreach (var season in year.Seasons.Where(s => s.Name == name))
            {
                var end = Math.Min(width - 1, Cell(season.To, first));
                for (var i = Math.Max(0, Cell(season.From, first)); i <= end; i++)
                {
                    line[i] = '=';
                }
            }

            Line(terminal, name, line);
        }

        foreach (var kind in year.Feeds.Select(static f => f.Kind).Distinct())
        {
            var line = new char[width];
            Array.Fill(line, '.');
            foreach (var feed in year.Feeds.Where(f => f.Kind == kind))
            {
                line[Cell(feed.Date, first)] = char.ToUpperInvariant(kind[0]);
            }

            Line(terminal, YearText.Kind(kind), line);
        }
    }

    private static int Cell(DateOnly day, DateOnly first) => (day.DayNumber - first.DayNumber) / Days;

    private static void Line(Terminal terminal, string name, char[] signs) =>
        terminal.Output.WriteLine((name.PadRight(NameColumn) + new string(signs)).TrimEnd());

    private static string Months(DateOnly first, int width)
    {
        var line = new char[width];
        Array.Fill(line, ' ');
        for (var month = new DateOnly(first.Year, first.Month, 1).AddMonths(first.Day > 1 ? 1 : 0); Cell(month, first) + 2 < width; month = month.AddMonths(1))
        {
            month.ToString("MMM", CultureInfo.InvariantCulture).CopyTo(0, line, Cell(month, first), 3);
        }

        return new string(line).TrimEnd();
    }
}
