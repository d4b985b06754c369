namespace Ashery.Cards.Pictures;

/// <summary>Days to x, the last day included.</summary>
internal sealed record Scale(DateOnly From, DateOnly To, double Left, double Right)
{
    private int Days => Math.Max(1, To.DayNumber - From.DayNumber + 1);

    public double X(DateOnly day) => Left + (Math.Clamp(day.DayNumber - From.DayNumber, 0, Days) * (Right - Left) / Days);

    /// <summary>First of each month within the strip, the strip's first day left out.</summary>
    public IEnumerable<DateOnly> MonthStarts()
    {
        for (var d = new DateOnly(From.Year, From.Month, 1).AddMonths(1); d <= To; d = d.AddMonths(1))
        {
            yield return d;
        }
    }

    /// <summary>Each month's visible part, from its first day to the day after its last.</summary>
    public IEnumerable<(DateOnly From, DateOnly To)> Months()
    {
        var from = From;
        foreach (var next in MonthStarts())
        {
            yield return (from, next);
            from = next;
        }

        yield return (from, To.AddDays(1));
    }
}

/// <summary>Rows of things side by side: each goes into the first row where it touches nothing.</summary>
internal sealed class Rows
{
    private readonly List<double> ends = [];

    public int Count => ends.Count;

    public int Take(double from, double to, double gap)
    {
        for (var i = 0; i < ends.Count; i++)
        {
            if (ends[i] + gap <= from)
            {
                ends[i] = to;
                return i;
            }
        }

        ends.Add(to);
        return ends.Count - 1;
    }
}
