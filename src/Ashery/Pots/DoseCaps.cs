using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Nutrients;

namespace Ashery.Pots;

/// <summary>A most that one feed may bring to one pot.</summary>
/// <param name="RuleId">Which rule says so.</param>
/// <param name="Grams">g of this feed for one pot.</param>
/// <param name="Words">The rule in words.</param>
public sealed record DoseCap(string RuleId, double Grams, string Words);

/// <summary>The caps that hold for a feed in a pot, each turned into grams of that feed.</summary>
public static class DoseCaps
{
    private static readonly (Nutrient Nutrient, string RuleId)[] TraceRules =
    [
        (Nutrient.Fe, "trace-iron"), (Nutrient.Mn, "trace-manganese"), (Nutrient.Zn, "trace-zinc"),
        (Nutrient.Cu, "trace-copper"), (Nutrient.B, "trace-boron"), (Nutrient.Mo, "trace-molybdenum"),
    ];

    /// <summary>Every cap that is switched on and speaks of this kind of feed.</summary>
    public static IReadOnlyList<DoseCap> Of(DoseRequest request)
    {
        var feed = request.Feed;
        var litres = request.Pot.Volume.Litres;
        List<DoseCap> caps = [];
        void Add(string ruleId, double content, double mostPerLitre)
        {
            var rule = request.Rules[ruleId];
            if (content > 0 && rule.IsOn && Binds(rule, feed.Kind))
            {
                caps.Add(new(ruleId, Math.Max(0, mostPerLitre) * litres / content, rule.Statement));
            }
        }

        var rules = request.Rules;
        Add("rule-of-thumb", 1, rules["rule-of-thumb"]["gramsPerLitre"] * request.IntervalDays / rules["rule-of-thumb"]["days"]);
        Add("organic-per-feed", 1, rules["organic-per-feed"]["gramsPerLitre"]);
        Add("urea-per-feed", feed.Nitrogen.Urea, rules["urea-per-feed"]["gramsNPerLitre"]);
        Add("salt-per-feed", (FeedSalt.Index(feed, request.Pot.Medium != MediumKind.LoamMix) ?? 0) / 100, rules["salt-per-feed"]["gramsPerLitre"]);
        foreach (var (nutrient, ruleId) in TraceRules)
        {
            Add(ruleId, feed.Label[nutrient] * 1000, rules[ruleId]["milligramsPerLitre"] - request.TraceGiven.GetValueOrDefault(nutrient));
        }

        return caps;
    }

    /// <summary>The trace elements with a cap a season, and the rule of each.</summary>
    public static IReadOnlyList<(Nutrient Nutrient, string RuleId)> TraceCaps => TraceRules;

    /// <summary>Whether a rule speaks of a kind of feed.</summary>
    public static bool Binds(GrowingRule rule, FeedKind kind)
    {
        foreach (var name in rule.AppliesTo)
        {
            if (string.Equals(name, kind.ToString(), StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
