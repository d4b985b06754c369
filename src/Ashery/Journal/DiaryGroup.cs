namespace Ashery.Journal;

/// <summary>The groups by which a pot's diary is filtered.</summary>
public enum DiaryGroup
{
    /// <summary>Feeds given.</summary>
    Feeds,

    /// <summary>Planned feeds skipped or moved.</summary>
    Skipped,

    /// <summary>Repotted, pruned, moved, flushed, died and the like.</summary>
    Events,

    /// <summary>Figures read.</summary>
    Readings,

    /// <summary>Pests, diseases and signs.</summary>
    Sightings,

    /// <summary>Photographs.</summary>
    Photographs,

    /// <summary>Visits to the clinic and trials.</summary>
    Documents,
}

/// <summary>Which kinds of entries a group holds.</summary>
public static class DiaryGroups
{
    /// <summary>Every kind that a pot's diary shows, for a query of all groups.</summary>
    public static IReadOnlyList<string> AllKinds { get; } = [.. Enum.GetValues<DiaryGroup>().SelectMany(Kinds)];

    /// <summary>Words of <see cref="EntryKind"/>.</summary>
    public static IReadOnlyList<string> Kinds(DiaryGroup group) => group switch
    {
        DiaryGroup.Feeds => [EntryKind.FeedGiven],
        DiaryGroup.Skipped => [EntryKind.TaskSkipped, EntryKind.TaskMoved],
        DiaryGroup.Events => [EntryKind.PlantEvent, EntryKind.WeatherNoted],
        DiaryGroup.Readings => [EntryKind.Measured],
        DiaryGroup.Sightings => [EntryKind.Sighting],
        DiaryGroup.Photographs => [EntryKind.Photograph],
        _ => [EntryKind.KeptDocument],
    };

    /// <summary>The name of a group on a button.</summary>
    public static string Name(DiaryGroup group) => group switch
    {
        DiaryGroup.Feeds => "Feeds",
        DiaryGroup.Skipped => "Skipped and moved",
        DiaryGroup.Events => "Events",
        DiaryGroup.Readings => "Readings",
        DiaryGroup.Sightings => "Pests and signs",
        DiaryGroup.Photographs => "Photographs",
        _ => "Clinic and trials",
    };
}
