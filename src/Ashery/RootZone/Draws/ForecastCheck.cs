using Ashery.Problems;

namespace Ashery.RootZone.Draws;

/// <summary>What stands in the way of a forecast.</summary>
internal static class ForecastCheck
{
    // Of the table of draws: 9 figures x 4 bytes each.
    private const long MostCells = 5_000_000;

    public static List<Problem> Of(PotForecastRequest r)
    {
        List<Problem> found = [];
        Need(r.Days is >= 1 and <= PotForecastRequest.MostDays, "days", FormattableString.Invariant($"A forecast has 1 to {PotForecastRequest.MostDays} days."), "A year is 365.");
        Need(r.Draws is >= 1 and <= PotForecastRequest.MostDraws, "draws", FormattableString.Invariant($"A forecast has 1 to {PotForecastRequest.MostDraws} draws."), "500 is usual; 100 are quick.");
        Need(r.From.Year is >= 1900 and <= 9900, "from", "The first day lies in the years 1900 to 9900.", "Write it as 2027-03-01.");
        Need(r.EcLimit is null or (> 0 and <= 100), "limit", "A limit of EC lies above 0 and at most at 100 mS/cm.", "Leave it out for that of the plant.");
        if (found.Count > 0)
        {
            return found;
        }

        Need((long)r.Days * r.Draws <= MostCells, "draws", FormattableString.Invariant($"Days times draws is at most {MostCells}."), "Take fewer draws or fewer days.");
        Need(r.Weather.First <= r.From && r.Weather.Last >= r.From.AddDays(r.Days - 1), "weather", "The weather does not reach over all days asked for.", "Ask for fewer days, or give the normals of the place besides.");
        return found;

        void Need(bool fine, string field, string message, string wayOut)
        {
            if (!fine)
            {
                found.Add(new(field, message, wayOut));
            }
        }
    }
}
