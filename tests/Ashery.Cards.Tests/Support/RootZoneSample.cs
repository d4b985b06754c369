using Ashery.Cards.Pictures;
using Ashery.Planning.Fit;

namespace Ashery.Cards.Tests.Support;

internal static partial class Samples
{
    /// <summary>A year of a root zone with figures of our own: waves, and a summer near the limit.</summary>
    public static RootZoneView RootZone => new(
        "Window box",
        Year.From,
        new FitPotCourse("box", new(2, 200, false, false), new(10, 20, 1, 2, 0.1, 0.8, 0.2, 0, 50), [.. Enumerable.Range(0, 365).Select(Evening)], []),
        [.. Year.Feeds.Where(static f => f.Date.Day < 12)])
    {
        Today = new(2027, 4, 9),
        Measured = [new(new(2027, 3, 20), true, 1.4), new(new(2027, 3, 20), false, 60)],
    };

    private static FitDay Evening(int day)
    {
        var wave = 1 - Math.Cos(day * Math.PI / 182);
        return new(
            new(0.3 + (0.3 * wave), 0.6 + (0.5 * wave), 0.9 + (0.7 * wave)), new(5, 30 + (20 * wave), 90 + (60 * wave)), new(0.85, 1, 1.05), 2 + wave, day == 190 ? 0.12 : 0.02 * wave);
    }
}
