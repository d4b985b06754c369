namespace Ashery.Journal;

/// <summary>The words by which files, tables and filters name the kinds of entries.</summary>
public static class EntryKind
{
    public const string
        FeedGiven = "feedGiven",
        TaskSkipped = "taskSkipped",
        TaskMoved = "taskMoved",
        Measured = "measured",
        PlantEvent = "plantEvent",
        Sighting = "sighting",
        WeatherNoted = "weatherNoted",
        Photograph = "photograph",
        BagBought = "bagBought",
        StockCounted = "stockCounted",
        BatchMade = "batchMade",
        Discarded = "discarded",
        KeptDocument = "keptDocument";

    public static IReadOnlyList<string> All { get; } =
        [FeedGiven, TaskSkipped, TaskMoved, Measured, PlantEvent, Sighting, WeatherNoted, Photograph, BagBought, StockCounted, BatchMade, Discarded, KeptDocument];

    public static string Of(EntryFacts facts) => facts switch
    {
        Journal.FeedGiven => FeedGiven,
        Journal.TaskSkipped => TaskSkipped,
        Journal.TaskMoved => TaskMoved,
        Journal.Measured => Measured,
        Journal.PlantEvent => PlantEvent,
        Journal.Sighting => Sighting,
        Journal.WeatherNoted => WeatherNoted,
        Journal.Photograph => Photograph,
        Journal.BagBought => BagBought,
        Journal.StockCounted => StockCounted,
        Journal.BatchMade => BatchMade,
        Journal.Discarded => Discarded,
        Journal.KeptDocument => KeptDocument,
        _ => throw new ArgumentOutOfRangeException(nameof(facts), facts.GetType().Name, "A kind of entry without a word."),
    };

    /// <summary>The planned feed an entry answers; null when it answers none.</summary>
    public static TaskId? Task(EntryFacts facts) => facts switch
    {
        FeedGiven f => f.Task,
        TaskSkipped s => s.Task,
        TaskMoved m => m.Task,
        _ => null,
    };
}
