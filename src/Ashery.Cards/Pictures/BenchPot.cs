using Ashery.Feeds;

namespace Ashery.Cards.Pictures;

/// <summary>A pot of the day's work.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Litres">Volume of medium, L.</param>
/// <param name="Kind">What feed; null for none.</param>
/// <param name="Sign">What is or became of it.</param>
public sealed record BenchPot(string Name, double Litres, FeedKind? Kind, BenchSign Sign);

/// <summary>What is or became of a pot's feed today.</summary>
public enum BenchSign
{
    Due,
    Overdue,
    Held,
    Given,
    Skipped,
    Coming,
}
