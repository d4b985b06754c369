using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Feeds;

/// <summary>
/// Salt of a feed for a cap in pots: the salt index, but phosphates by osmolality. The index was measured on mineral soil, which binds
/// phosphate (Rader, White and Whittaker 1943); a soilless mix does not, and there it understates them.
/// </summary>
public static class FeedSalt
{
    // Osmoles of sodium nitrate, the index's 100, a kg: 2 ions / 84.99 g/mol.
    private const double SodiumNitrateOsmoles = 2000 / 84.99;

    /// <summary>Salt index by weight, sodium nitrate = 100; null when a part has no figure.</summary>
    /// <param name="feed">The feed.</param>
    /// <param name="soilless">True for media without loam.</param>
    public static double? Index(Feed feed, bool soilless)
    {
        if (!soilless || feed.Label[Nutrient.P] <= 0)
        {
            return feed.SaltIndex;
        }

        var sum = 0.0;
        foreach (var (id, share) in feed.Parts)
        {
            if (MaterialCatalogue.Default.Find(id) is not { SaltIndex: { } index } material)
            {
                return feed.SaltIndex;
            }

            var osmotic = material.Label[Nutrient.P] > 0 ? (material.OsmolesPerKg ?? 0) / SodiumNitrateOsmoles * 100 : 0;
            sum += share * Math.Max(index.Value, osmotic);
        }

        return Math.Max(sum, feed.SaltIndex ?? 0);
    }
}
