using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Nutrients;

namespace Ashery.Planning;

/// <summary>Which of the kept feeds a pot gets: the one nearest to the ratio its crop wants.</summary>
public static class FeedChoice
{
    // A feed with more chloride than this is kept from crops that bear none, when there is another (common practice).
    private const double MuchChloride = 0.03;

    /// <summary>The feed of this kind for a crop; null when none is kept.</summary>
    public static Feed? For(Crop crop, FeedKind kind, IReadOnlyList<Feed> kept)
    {
        Feed? best = null;
        var bestScore = double.PositiveInfinity;
        foreach (var feed in kept)
        {
            if (feed.Kind != kind)
            {
                continue;
            }

            var score = kind switch
            {
                FeedKind.Mineral or FeedKind.Organic => RatioError(feed, crop) + (crop.ChlorideSensitive && feed.Label[Nutrient.Cl] > MuchChloride ? 100 : 0),
                FeedKind.Foliar => -feed.Label[Nutrient.Mg],
                _ => 0,
            };
            if (best is null || score < bestScore)
            {
                best = feed;
                bestScore = score;
            }
        }

        return best;
    }

    /// <summary>Mean relative deviation of the shares of N, P2O5 and K2O from those the crop wants; infinite for a feed without any.</summary>
    public static double RatioError(Feed feed, Crop crop)
    {
        ReadOnlySpan<double> has = [feed.Label[Nutrient.N], feed.Label[Nutrient.P], feed.Label[Nutrient.K]];
        ReadOnlySpan<double> wants = [crop.Ratio.N, crop.Ratio.P2O5, crop.Ratio.K2O];
        var (hasSum, wantsSum) = (has[0] + has[1] + has[2], wants[0] + wants[1] + wants[2]);
        if (hasSum <= 0 || has[0] <= 0)
        {
            return 1e6;
        }

        var (error, terms) = (0.0, 0);
        for (var i = 0; i < 3; i++)
        {
            if (wants[i] > 0)
            {
                error += Math.Abs((has[i] / hasSum / (wants[i] / wantsSum)) - 1);
                terms++;
            }
        }

        return error / terms;
    }
}
