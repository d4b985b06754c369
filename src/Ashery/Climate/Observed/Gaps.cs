using System.Globalization;
using Ashery.Problems;

namespace Ashery.Climate.Observed;

/// <summary>Fills what is missing of temperatures and rain, and says so.</summary>
internal sealed class Gaps(Place place, ObservedDay[] days, List<Problem> problems, Lazy<DailyWeather[]?> made)
{
    public void Fill()
    {
        Temperatures("maximum", static d => d.Max, static (d, v) => d with { Max = v }, static d => d.MaxCelsius);
        Temperatures("minimum", static d => d.Min, static (d, v) => d with { Min = v }, static d => d.MinCelsius);
        Rain();
        for (var i = 0; i < days.Length; i++)
        {
            // One of the two was filled and met the other: both are laid around their middle.
            if (days[i].Min > days[i].Max)
            {
                var middle = (days[i].Max + days[i].Min) / 2;
                days[i] = days[i] with { Max = middle + 0.25, Min = middle - 0.25 };
            }
        }
    }

    private void Temperatures(string name, Func<ObservedDay, double> get, Func<ObservedDay, double, ObservedDay> set, Func<DailyWeather, double> substitute)
    {
        var (bridged, filled) = (0, 0);
        foreach (var (from, to) in Runs(get))
        {
            // The first and last day of the span have both extremes, so a gap always has neighbours.
            if (to - from < ObservedWeather.ShortGap)
            {
                var (a, b) = (get(days[from - 1]), get(days[to + 1]));
                for (var i = from; i <= to; i++)
                {
                    days[i] = set(days[i], a + ((b - a) * (i - from + 1) / (to - from + 2)));
                }

                bridged += to - from + 1;
            }
            else if (made.Value is { } weather)
            {
                for (var i = from; i <= to; i++)
                {
                    days[i] = set(days[i], substitute(weather[i]));
                }

                filled += to - from + 1;
            }
            else
            {
                Refuse(from, to, name + " temperature");
            }
        }

        Note(bridged, name, "bridged in a straight line from their neighbours (gaps up to 5 days)", Severity.Note);
        Note(filled, name, "filled with weather made from the normals", Severity.Warning);
    }

    private void Rain()
    {
        if (Array.TrueForAll(days, static d => double.IsNaN(d.Rain)) && made.Value is null)
        {
            problems.Add(new("rain", "The file has no rain; every day is taken as dry.", "Give the place monthly normals, and rain is made from them.", Severity.Warning));
            for (var i = 0; i < days.Length; i++)
            {
                days[i] = days[i] with { Rain = 0 };
            }

            return;
        }

        var (dry, filled) = (0, 0);
        foreach (var (from, to) in Runs(static d => d.Rain))
        {
            var isShort = to - from < ObservedWeather.ShortGap;
            if (!isShort && made.Value is null)
            {
                Refuse(from, to, "rain");
                continue;
            }

            for (var i = from; i <= to; i++)
            {
                days[i] = days[i] with { Rain = isShort ? 0 : made.Value![i].RainMm };
            }

            (dry, filled) = isShort ? (dry + to - from + 1, filled) : (dry, filled + to - from + 1);
        }

        Note(dry, "rain", "taken as dry (gaps up to 5 days)", Severity.Warning);
        Note(filled, "rain", "filled with weather made from the normals", Severity.Warning);
    }

    private List<(int From, int To)> Runs(Func<ObservedDay, double> get)
    {
        var runs = new List<(int, int)>();
        for (var i = 0; i < days.Length; i++)
        {
            if (!double.IsNaN(get(days[i])))
            {
                continue;
            }

            var from = i;
            while (i + 1 < days.Length && double.IsNaN(get(days[i + 1])))
            {
                i++;
            }

            runs.Add((from, i));
        }

        return runs;
    }

    private void Refuse(int from, int to, string what)
    {
        var why = place.Normals is { Count: 12 } ? "Correct the normals of the place, from which they could be filled." : "Give the place monthly normals, from which they are filled, or a file without the gap.";
        problems.Add(new(
            string.Create(CultureInfo.InvariantCulture, $"{days[from].Date:yyyy-MM-dd} to {days[to].Date:yyyy-MM-dd}"),
            string.Create(CultureInfo.InvariantCulture, $"{to - from + 1} days have no {what}; up to {ObservedWeather.ShortGap} are bridged."),
            why));
    }

    private void Note(int count, string field, string what, Severity severity)
    {
        if (count > 0)
        {
            problems.Add(new(field, string.Create(CultureInfo.InvariantCulture, $"{count} of {days.Length} days {what}."), "Give a fuller file if there is one.", severity));
        }
    }
}
