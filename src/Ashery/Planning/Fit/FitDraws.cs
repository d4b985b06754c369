using System.Collections.Concurrent;
using Ashery.Climate;
using Ashery.RootZone;
using Ashery.RootZone.Draws;
using Ashery.RootZone.Forcing;

namespace Ashery.Planning.Fit;

/// <summary>
/// Made years for a garden: the weather is the same for all pots of a draw, and everything uncertain about a pot is drawn beside it. Numbers are common:
/// every plan that is compared meets the same draws.
/// </summary>
internal sealed class FitDraws
{
    private readonly DateOnly from;
    private readonly int seed, design;
    private readonly DailyWeather[][] open;
    private readonly ConcurrentDictionary<string, FitGrowth[]> fed = new(StringComparer.Ordinal);

    /// <param name="weather">Weather by draw.</param>
    /// <param name="from">First day.</param>
    /// <param name="days">Days of the year.</param>
    /// <param name="draws">How many.</param>
    /// <param name="first">Number of the first weather, so that two sets share none.</param>
    /// <param name="seed">Seed of the unknowns.</param>
    /// <param name="design">Another design for another set.</param>
    public FitDraws(DrawnWeather weather, DateOnly from, int days, int draws, int first, int seed, int design)
    {
        (this.from, this.seed, this.design) = (from, seed, design);
        open = new DailyWeather[draws][];
        for (var d = 0; d < draws; d++)
        {
            open[d] = new DailyWeather[days];
            weather.Fill(open[d], from, first + d);
        }
    }

    public int Count => open.Length;

    public int Days => open.Length > 0 ? open[0].Length : 0;

    /// <summary>mm of rain in the open from one day up to another, by draw.</summary>
    public double Rain(int draw, int from, int to)
    {
        var sum = 0.0;
        for (var i = Math.Max(0, from); i < Math.Min(to, Days); i++)
        {
            sum += open[draw][i].RainMm;
        }

        return sum;
    }

    /// <summary>A pot in these draws; its scenario brings its own events or none.</summary>
    public FitCourse Course(string potId, PotScenario scenario, FitWeights weights, FitLimits limits, bool[] grows)
    {
        var space = DrawSpace.Of(scenario);
        var shares = LatinHypercube.Of([.. space.Figures.Select(static f => f.Id)], Count, seed, design);
        var plans = new PotPlan[Count];
        var weather = new DayForcing[Count][];
        for (var d = 0; d < Count; d++)
        {
            var pot = DrawnPot.Of(scenario, from, space, shares.AsSpan(d * space.Count, space.Count));
            plans[d] = pot.Plan;
            weather[d] = new DayForcing[Days];
            pot.Weather.Fill(open[d], pot.Scenario.Exposure, pot.Scenario.Shape.Litres, weather[d]);
        }

        // Feeds do not change the plant that lacks nothing: it is run once a pot.
        var all = fed.GetOrAdd(potId, _ => [.. plans.Select((plan, d) => FitGrowth.Of(plan, weather[d], grows))]);
        return new(weights, limits, grows, plans, weather, all);
    }
}
