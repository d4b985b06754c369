using Ashery.Problems;

namespace Ashery.Trials.Results;

/// <summary>One figure a pot from what was written down.</summary>
internal static class PotFigures
{
    public const int MostReadings = 50_000;

    public static Result<IReadOnlyList<PotResult>> Of(Trial trial, IReadOnlyList<TrialReading> readings)
    {
        var wrong = new List<Problem>();
        var layout = trial.Layout.ToDictionary(static p => p.Pot, StringComparer.Ordinal);
        if (trial.Layout.Count == 0)
        {
            wrong.Add(new("layout", "The trial has no layout: nobody knows which pot got what.", "Lay it out first with ashery trial design, or write the layout into the file."));
        }

        if (readings.Count == 0)
        {
            wrong.Add(new("results", "There is no figure.", "Write one line a pot: its key and what was counted or measured."));
        }
        else if (readings.Count > MostReadings)
        {
            wrong.Add(new("results", FormattableString.Invariant($"More than {MostReadings} figures."), "Keep to one trial."));
        }

        var seen = new HashSet<(string, DateOnly?)>();
        foreach (var reading in readings)
        {
            if (wrong.Count >= 20)
            {
                break;
            }

            var field = reading.Date is { } day ? FormattableString.Invariant($"pot {reading.Pot}, {day:yyyy-MM-dd}") : $"pot {reading.Pot}";
            if (trial.Layout.Count > 0 && !layout.ContainsKey(reading.Pot))
            {
                wrong.Add(new(field, "There is no such pot in the layout.", "Write the key that is on its tag."));
            }

            if (!seen.Add((reading.Pot, reading.Date)))
            {
                wrong.Add(new(field, reading.Date is null ? "This pot has two figures and no dates." : "This pot has two figures of one day.", "Keep one, or give each its date."));
            }

            if (trial.Measure.Kind == MeasureKind.Count ? !(reading.Value >= 0 && reading.Value <= 1_000_000 && reading.Value == Math.Floor(reading.Value)) : !(Math.Abs(reading.Value) <= 1e9))
            {
                wrong.Add(new(field, FormattableString.Invariant($"{reading.Value} is not a {(trial.Measure.Kind == MeasureKind.Count ? "count" : "measurement")}."), trial.Measure.Kind == MeasureKind.Count ? "Counts are whole numbers from 0; a length or mass belongs to a trial of a measurement." : "Check the figure."));
            }
        }

        return wrong.Count > 0
            ? Result.Fail<IReadOnlyList<PotResult>>(wrong)
            : Result.Of<IReadOnlyList<PotResult>>([.. readings.GroupBy(static r => r.Pot, StringComparer.Ordinal).Select(g => One(trial, layout[g.Key], [.. g.OrderBy(static r => r.Date)])).OrderBy(static p => p.Block).ThenBy(p => Order(trial, p.Pot))]);
    }

    private static int Order(Trial trial, string pot)
    {
        for (var i = 0; i < trial.Layout.Count; i++)
        {
            if (trial.Layout[i].Pot == pot)
            {
                return i;
            }
        }

        return -1;
    }

    private static PotResult One(Trial trial, TrialPlace place, IReadOnlyList<TrialReading> readings)
    {
        var value = trial.Measure.Summary switch
        {
            PotSummary.Sum => readings.Sum(static r => r.Value),
            PotSummary.Last => readings[^1].Value,
            PotSummary.Slope => Slope(readings),
            _ => readings.Average(static r => r.Value),
        };
        return new(place.Pot, place.Block, place.Treatment, value, readings.Count);
    }

    private static double Slope(IReadOnlyList<TrialReading> readings)
    {
        if (readings.Count < 2 || readings[0].Date is not { } first)
        {
            return 0;
        }

        var x = readings.Select(r => (double)(r.Date!.Value.DayNumber - first.DayNumber)).ToArray();
        var (mx, my) = (x.Average(), readings.Average(static r => r.Value));
        return x.Select((d, i) => (d - mx) * (readings[i].Value - my)).Sum() / x.Sum(d => (d - mx) * (d - mx));
    }
}
