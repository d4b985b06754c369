using Ashery.Crops;
using Ashery.Nutrients;

namespace Ashery.Journal;

/// <summary>A season of one pot.</summary>
public sealed record PotSeason
{
    public required string PotId { get; init; }

    public required string Name { get; init; }

    /// <summary>Equal pots this line stands for.</summary>
    public required int Count { get; init; }

    /// <summary>Name of the crop; empty when the pot is no longer in the garden.</summary>
    public required string Crop { get; init; }

    /// <summary>What it was given, most first.</summary>
    public required IReadOnlyList<FeedTotal> Feeds { get; init; }

    public required IReadOnlyList<ReadingSummary> Readings { get; init; }

    /// <summary>Open flowers over time, oldest first.</summary>
    public required IReadOnlyList<Reading> Flowers { get; init; }

    /// <summary>Repotted, pruned and the like, oldest first.</summary>
    public required IReadOnlyList<Entry> Events { get; init; }

    /// <summary>Pests and signs, oldest first.</summary>
    public required IReadOnlyList<Entry> Sightings { get; init; }

    public required IReadOnlyList<Entry> Photographs { get; init; }

    public required TaskTally Tally { get; init; }

    /// <summary>Paid for what was given, as far as prices are known.</summary>
    public double Cost => Feeds.Sum(static f => f.Cost ?? 0);

    /// <summary>True when nothing at all was written of it and nothing was planned.</summary>
    public bool IsEmpty => Feeds.Count == 0 && Readings.Count == 0 && Events.Count == 0 && Sightings.Count == 0 && Photographs.Count == 0 && Tally.Planned == 0;

    internal static PotSeason Of(SeasonReportRequest request, IReadOnlyList<Entry> entries, TaskAnswers answers, FeedPrices prices, string id)
    {
        var pot = request.Garden.Pots.FirstOrDefault(p => p.Id == id);
        var crop = pot is null ? null : CropCatalogue.Default.Find(pot.CropId);
        var count = pot?.Count ?? 1;
        var own = entries.Where(e => e.Pots.Contains(id, StringComparer.Ordinal)).ToList();
        var series = Journal.Readings.Of(own, id);
        return new()
        {
            PotId = id,
            Name = DiaryWords.PotName(request.Garden, id),
            Count = count,
            Crop = crop?.Name ?? pot?.CropId ?? "",
            Feeds = Given(request, own, prices, id, count),
            Readings = [.. series.Select(s => ReadingSummary.Of(s, ReadingBand.Of(s.What, crop)))],
            Flowers = series.FirstOrDefault(static s => s.What == MeasuredKind.Flowers)?.Points ?? [],
            Events = [.. own.Where(static e => e.Facts is PlantEvent)],
            Sightings = [.. own.Where(static e => e.Facts is Sighting)],
            Photographs = [.. own.Where(static e => e.Facts is Photograph)],
            Tally = Counted(request, answers, id),
        };
    }

    private static IReadOnlyList<FeedTotal> Given(SeasonReportRequest request, IEnumerable<Entry> own, FeedPrices prices, string id, int count)
    {
        List<FeedTotal> totals = [];
        foreach (var entry in own)
        {
            if (entry.Facts is not FeedGiven given)
            {
                continue;
            }

            // An amount is that of one pot; a line of several equal pots got it each.
            var amounts = given.Amounts.Where(a => a.PotId == id).ToList();
            var grams = amounts.Sum(static a => a.Grams) * count;
            var feed = request.Garden.Feeds.FirstOrDefault(f => f.Id == given.FeedId);
            totals.Add(new(
                given.FeedId,
                DiaryWords.FeedName(request.Garden, given.FeedId),
                1,
                grams,
                amounts.Sum(static a => a.Litres ?? 0) * count,
                prices.Of(given) is { } price ? price * grams : grams == 0 ? 0 : null,
                feed?.Label.Present.ToDictionary(static n => n, n => feed.Label[n] * grams) ?? []));
        }

        return FeedTotal.Together(totals);
    }

    private static TaskTally Counted(SeasonReportRequest request, TaskAnswers answers, string id)
    {
        var tally = TaskTally.None;
        foreach (var planned in request.Planned)
        {
            if (planned.Date < request.From || planned.Date > request.To || !planned.Pots.Contains(id, StringComparer.Ordinal))
            {
                continue;
            }

            tally += answers.Of(new TaskId(planned.Date, planned.FeedId), id) switch
            {
                TaskAnswer.Given => new(1, 0, 0, 0),
                TaskAnswer.Skipped => new(0, 1, 0, 0),
                _ => (answers.MovedTo(new TaskId(planned.Date, planned.FeedId), id) ?? planned.Date) < request.Today ? new(0, 0, 1, 0) : new TaskTally(0, 0, 0, 1),
            };
        }

        return tally;
    }
}

/// <summary>Readings of one kind over a season.</summary>
/// <param name="What">Which figure.</param>
/// <param name="Count">How often read.</param>
/// <param name="Least">Lowest.</param>
/// <param name="Mean">Mean.</param>
/// <param name="Most">Highest.</param>
/// <param name="Band">Where it should lie; null where nothing is published.</param>
/// <param name="Outside">How many lay outside of the band.</param>
public sealed record ReadingSummary(MeasuredKind What, int Count, double Least, double Mean, double Most, ReadingBand? Band, int Outside)
{
    internal static ReadingSummary Of(ReadingSeries s, ReadingBand? band) =>
        new(s.What, s.Points.Count, s.Least, s.Mean, s.Most, band, band is null ? 0 : s.Points.Count(p => !band.Holds(p.Value)));
}
