using Ashery.Crops;
using Ashery.Gardens;
using Ashery.Problems;

namespace Ashery.Planning;

/// <summary>The rule book of a garden: the shipped rules with the grower's changes; a change that cannot be is left out and explained.</summary>
public static class GardenRules
{
    /// <summary>Rules to work with, and a problem for every change that was left out.</summary>
    public static (RuleBook Rules, IReadOnlyList<Problem> Problems) Of(Garden garden)
    {
        var all = RuleBook.Default.With(garden.RuleChanges);
        if (all.Ok)
        {
            return (all.Value, []);
        }

        // One change that cannot be must not take the others with it.
        var good = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (id, setting) in garden.RuleChanges)
        {
            if (RuleBook.Default.With(new Dictionary<string, string>(StringComparer.Ordinal) { [id] = setting }).Ok)
            {
                good[id] = setting;
            }
        }

        return (RuleBook.Default.With(good).Value!, [.. all.Problems.Select(static p => p with { Severity = Severity.Warning, WayOut = p.WayOut + " Until then the rule holds as shipped." })]);
    }
}
