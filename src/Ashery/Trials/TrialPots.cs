using System.Globalization;
using Ashery.Pots;

namespace Ashery.Trials;

/// <summary>Pots of a garden as pots of a trial.</summary>
public static class TrialPots
{
    /// <summary>A line that stands for several equal pots becomes as many, numbered behind a point.</summary>
    public static IReadOnlyList<TrialPot> Of(IEnumerable<Pot> pots) =>
        [.. pots.SelectMany(static p => Enumerable.Range(1, Math.Clamp(p.Count, 1, Trial.MostPots)).Select(i => new TrialPot(p.Count > 1 ? p.Id + "." + Whole(i) : p.Id, p.Name, p.Volume.Litres, p.Place))).Take(Trial.MostPots + 1)];

    /// <summary>Pots of which only the number is known.</summary>
    public static IReadOnlyList<TrialPot> Numbered(int count) =>
        [.. Enumerable.Range(1, Math.Clamp(count, 0, Trial.MostPots)).Select(i => new TrialPot("P" + i.ToString(count > 99 ? "000" : "00", CultureInfo.InvariantCulture), ""))];

    private static string Whole(int n) => n.ToString(CultureInfo.InvariantCulture);
}
