using Ashery.Gardens;
using Ashery.Problems;

namespace Ashery.Exchange.Gardens;

/// <summary>
/// The invented garden of the first start, from <c>data/demo</c>: a roof terrace in an invented harbour town. Its dates are told
/// as of one day in the file and moved so that the plants are as old today as they were then.
/// </summary>
public static class DemoGarden
{
    /// <summary>The day as of which the file tells its dates.</summary>
    private static readonly DateOnly AsOf = new(2026, 3, 1);

    public static Garden Create(DateOnly today)
    {
        var read = GardenFile.Read(Text());
        if (!read.Ok)
        {
            throw new InvalidOperationException("The demo garden does not read: " + string.Join(" ", read.Problems.Select(static p => p.ToString())));
        }

        var days = today.DayNumber - AsOf.DayNumber;
        return read.Value with
        {
            Pots = [.. read.Value.Pots.Select(p => p with { Planted = p.Planted?.AddDays(days), LastRepotted = p.LastRepotted?.AddDays(days) })],
        };
    }

    /// <summary>The garden file itself, a worked example of the format.</summary>
    public static string Text()
    {
        using var stream = typeof(Garden).Assembly.GetManifestResourceStream("data/demo/harbour-terrace.garden.json")
            ?? throw new InvalidOperationException("The demo garden is not part of the library.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
