using Ashery.Gardens;

namespace Ashery.Planning;

/// <summary>The garden to plan a year for, from a day on.</summary>
/// <param name="Garden">The whole garden.</param>
/// <param name="From">First day; the year ends the day before its anniversary.</param>
public sealed record YearRequest(Garden Garden, DateOnly From)
{
    /// <summary>First day whose feeds are taken from the shelf as it is now; null: all. What was due before it was given from stock that is gone.</summary>
    public DateOnly? StockFrom { get; init; }
}
