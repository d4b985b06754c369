using Ashery.Cards.Pictures;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Journal;
using Measured = Ashery.Journal.Measured;

namespace Ashery.Cards.Tests.Support;

/// <summary>A made season of a made pot.</summary>
internal static class SeasonSample
{
    public static readonly DateOnly From = new(2027, 4, 1), To = new(2027, 9, 30);

    public static ReadingsView Readings { get; } = new("Blue tub", From, To,
        [
            new(Series(MeasuredKind.LeachateEc, 2.1, 2.6, 3.4, 4.1, 2.9), new(1.3, 3.9, "made for the test")),
            new(Series(MeasuredKind.LeachatePh, 6.3, 6.1, 5.8, 5.4, 5.9), new(5.5, 6.5, "made for the test")),
            new(Series(MeasuredKind.Flowers, 0, 4, 11, 23, 17), null),
        ])
    {
        Feeds = [.. Enumerable.Range(0, 12).Select(static i => new GivenMark(From.AddDays(5 + (i * 14)), i % 2 == 0 ? FeedKind.Mineral : FeedKind.Organic, i % 2 == 0 ? "Spring feed" : "Meal feed"))],
        Events = [new(From.AddDays(40), "Pruned"), new(From.AddDays(100), "Flushed")],
    };

    public static ReadingSeries Series(MeasuredKind what, params double[] values) =>
        new(what, [.. values.Select((v, i) => new Reading(From.AddDays(20 + (i * 30)), null, v, Guid.Empty))]);

    /// <summary>Entries about the first two pots of a garden, the same each time.</summary>
    public static IReadOnlyList<Entry> Entries(Garden garden)
    {
        var (one, two, feed) = (garden.Pots[0].Id, garden.Pots[1].Id, garden.Feeds[0].Id);
        return
        [
            Of(5, [one, two], new FeedGiven(feed, [new(one, 12, 4), new(two, 6, 2)])),
            Of(20, [one], new Measured(MeasuredKind.Flowers, 3)),
            Of(21, [one], new Measured(MeasuredKind.LeachateEc, 2.4)),
            Of(30, [one], new PlantEvent(PlantEventKind.Repotted, 14, "barkMix")),
            Of(33, [one, two], new FeedGiven(feed, [new(one, 12), new(two, 6)])),
            Of(50, [one], new Measured(MeasuredKind.Flowers, 14)),
            Of(51, [one], new Measured(MeasuredKind.LeachateEc, 9.5)),
            Of(60, [two], new Sighting("aphids", 2)),
            Of(90, [two], new PlantEvent(PlantEventKind.Died)) with { Note = "root rot" },
            Of(95, [one], new Photograph(new string('a', 64), 40, 30)),
        ];
    }

    private static Entry Of(int day, string[] pots, EntryFacts facts) => new() { Id = new Guid(day, 0, 0, new byte[8]), Day = From.AddDays(day), Pots = pots, Facts = facts };
}
