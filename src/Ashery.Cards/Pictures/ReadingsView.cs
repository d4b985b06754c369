using Ashery.Feeds;
using Ashery.Journal;

namespace Ashery.Cards.Pictures;

/// <summary>What a chart of a pot's readings shows.</summary>
/// <param name="Name">Of the pot.</param>
/// <param name="From">First day.</param>
/// <param name="To">Last day.</param>
/// <param name="Panels">A panel a kind of reading.</param>
public sealed record ReadingsView(string Name, DateOnly From, DateOnly To, IReadOnlyList<ReadingPanel> Panels)
{
    /// <summary>Feeds given.</summary>
    public IReadOnlyList<GivenMark> Feeds { get; init; } = [];

    /// <summary>Repotted, pruned and the like.</summary>
    public IReadOnlyList<EventMark> Events { get; init; } = [];
}

/// <summary>One kind of reading.</summary>
/// <param name="Series">The readings.</param>
/// <param name="Band">Where they should lie; null where nothing is published.</param>
public sealed record ReadingPanel(ReadingSeries Series, ReadingBand? Band);

/// <summary>A feed that was given.</summary>
public sealed record GivenMark(DateOnly Day, FeedKind Kind, string Name);

/// <summary>Something that happened.</summary>
public sealed record EventMark(DateOnly Day, string Words);
