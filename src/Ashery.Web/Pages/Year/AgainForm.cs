using System.Globalization;
using Ashery.Climate;
using Ashery.Planning.Fit;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Year;

/// <summary>Reads what came between from the form under a fitted year.</summary>
internal static class AgainForm
{
    private const int MostHeat = 60;

    public static FitReplan Read(FieldReader read, Draft sent, FittedYear followed)
    {
        DateOnly first = followed.Plan.From, last = followed.Plan.To;
        var today = read.Date("today");
        if (today is not { } now || now <= first || now > last)
        {
            if (today is not null || !sent.Has("today"))
            {
                read.Add("today", today is null ? "The day is missing." : "This day is not within the year that was planned.", $"Give a day from {Figures.IsoDay(first.AddDays(1))} to {Figures.IsoDay(last)}.");
            }

            return new(followed, first);
        }

        return new(followed, now)
        {
            Missed = [.. sent.All("missed").Select(static d => DateOnly.TryParseExact(d, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : default).Where(d => d >= first && d < now)],
            Told = [.. Rain(read, first, now), .. Heat(read, first, now)],
        };
    }

    private static IEnumerable<ToldDay> Rain(FieldReader read, DateOnly first, DateOnly now)
    {
        var day = Past(read, "rainDay", first, now);
        var mm = read.Optional("rainMm", 0, ToldDay.MostRainMm, "60");
        if (day is null != mm is null)
        {
            read.Add(day is null ? "rainDay" : "rainMm", "A storm needs its day and its rain.", "Give both, or neither.");
        }

        return day is { } d && mm is { } rain ? [new ToldDay(d, rain)] : [];
    }

    private static IEnumerable<ToldDay> Heat(FieldReader read, DateOnly first, DateOnly now)
    {
        var from = Past(read, "heatFrom", first, now);
        var to = Past(read, "heatTo", first, now) ?? from;
        var max = read.Optional("heatMax", ToldDay.LeastCelsius, ToldDay.MostCelsius, "36");
        if (from is null != max is null)
        {
            read.Add(from is null ? "heatFrom" : "heatMax", "A heat wave needs its first day and its heat.", "Give both, or neither.");
        }

        if (from is not { } begin || to is not { } end || max is not { } celsius)
        {
            return [];
        }

        if (end < begin || end.DayNumber - begin.DayNumber > MostHeat)
        {
            read.Add("heatTo", "The last day is not within two months after the first.", "Give the last hot day.");
            return [];
        }

        return ToldDay.Heat(begin, end, celsius);
    }

    private static DateOnly? Past(FieldReader read, string name, DateOnly first, DateOnly now)
    {
        var day = read.Date(name);
        if (day < first || day >= now)
        {
            read.Add(name, "This day does not lie in the part of the year that is over.", $"Give a day from {Figures.IsoDay(first)} to {Figures.IsoDay(now.AddDays(-1))}.");
            return null;
        }

        return day;
    }
}
