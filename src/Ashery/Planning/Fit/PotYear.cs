using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Problems;
using Ashery.RootZone.Draws;

namespace Ashery.Planning.Fit;

/// <summary>What a pot's roots will live in under a plan that is already there.</summary>
/// <param name="Course">Bands by day.</param>
/// <param name="From">First day.</param>
/// <param name="Assumed">What the garden does not tell and was taken.</param>
public sealed record PotYear(FitPotCourse Course, DateOnly From, IReadOnlyList<string> Assumed)
{
    public const int UsualDraws = 100;

    /// <summary>Runs one pot of a plan.</summary>
    public static Result<PotYear> Of(Garden garden, YearPlan plan, string potId, int draws = UsualDraws, int seed = 1)
    {
        var weather = WeatherGenerator.For(garden.Place);
        if (!weather.Ok)
        {
            return Result.Fail<PotYear>(weather.Problems);
        }

        var context = new PlanContext(garden, plan.From);
        var at = context.Pots.FindIndex(p => p.Pot.Id == potId);
        if (at < 0)
        {
            return Result.Fail<PotYear>("pot", $"There is no pot \"{potId}\" with a crop of the catalogue in this garden.", "Choose one of the pots.");
        }

        var (pot, crop) = context.Pots[at];
        var scenario = GardenPot.Of(garden, pot, crop, context.Rules, plan.From);
        var grows = FitGrowing.Of(context, crop);
        var check = new FitCheck(context, [scenario], new FeedEvents(garden), FitWeights.Default, [grows], new() { MaxDegreeOfParallelism = 1 });
        var set = new FitDraws(DrawnWeather.Of(weather.Value, seed), plan.From, grows.Length, draws, 0, seed, 0);
        return Result.Of(new PotYear(check.One(0, check.Events(plan, potId, Feeds(garden, plan)), set, 0), plan.From, scenario.Assumed));
    }

    private static Dictionary<string, Feed> Feeds(Garden garden, YearPlan plan) =>
        garden.Feeds.Concat(plan.SubstituteFeeds).ToDictionary(static f => f.Id, StringComparer.Ordinal);
}
