using System.Globalization;
using Ashery.Gardens;
using Ashery.Journal;

namespace Ashery.Exchange.Journal;

/// <summary>What was done in the invented garden of the first start, from <c>data/demo</c>, moved like the garden's own dates.</summary>
public static class DemoJournal
{
    /// <summary>The day as of which the file tells its dates: that of the demo garden.</summary>
    private static readonly DateOnly AsOf = new(2026, 3, 1);

    public static IReadOnlyList<Entry> Create(DateOnly today)
    {
        var days = today.DayNumber - AsOf.DayNumber;
        List<Entry> entries = [];
        foreach (var line in Text().Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var read = JournalJson.Read(line);
            entries.Add(read.Ok ? Move(read.Value, days) : throw new InvalidOperationException("The demo journal does not read: " + string.Join(" ", read.Problems)));
        }

        return entries;
    }

    private static Entry Move(Entry entry, int days)
    {
        var day = entry.Day.AddDays(days);
        return entry with
        {
            Day = day,
            Facts = entry.Facts switch
            {
                BagBought bought => bought with { BestBefore = bought.BestBefore?.AddDays(days) },

                // A lot begins with its day.
                BatchMade made => made with { Lot = day.ToString("yyMMdd", CultureInfo.InvariantCulture) + made.Lot[6..], UseBy = made.UseBy?.AddDays(days) },
                _ => entry.Facts,
            },
        };
    }

    private static string Text()
    {
        using var stream = typeof(Garden).Assembly.GetManifestResourceStream("data/demo/harbour-terrace.journal.jsonl")
            ?? throw new InvalidOperationException("The demo journal is not part of the library.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
