using Ashery.Climate;
using Ashery.Materials;
using Ashery.RootZone;
using Ashery.RootZone.Draws;
using Ashery.RootZone.Feeding;

namespace Ashery.Tests.RootZone.Draws;

/// <summary>A pot on an invented roof terrace, fed through one season: what the tests of draws are run on.</summary>
internal static class Terrace
{
    public static readonly DateOnly Start = new(2027, 3, 1);

    public static Place Place { get; } = new()
    {
        Name = "made terrace",
        Latitude = 38,
        Normals =
        [
            new(13, 6, 70) { WetDays = 9 }, new(14, 6, 60) { WetDays = 8 }, new(17, 8, 50) { WetDays = 7 }, new(20, 11, 40) { WetDays = 6 },
            new(24, 15, 25) { WetDays = 4 }, new(29, 19, 10) { WetDays = 2 }, new(32, 22, 5) { WetDays = 1 }, new(32, 22, 6) { WetDays = 1 },
            new(28, 19, 25) { WetDays = 4 }, new(23, 15, 60) { WetDays = 7 }, new(18, 11, 80) { WetDays = 9 }, new(14, 8, 85) { WetDays = 10 },
        ],
    };

    public static DrawnWeather Weather(int seed = 5) => DrawnWeather.Of(Place, seed).Value!;

    public static PotScenario Scenario()
    {
        var shape = PotShape.OfLitres(9);
        var feed = FeedBuilder.Of(MaterialCatalogue.Default.Find("potassium-nitrate")!) + FeedBuilder.Of(MaterialCatalogue.Default.Find("ammonium-sulfate")!);
        var meal = FeedBuilder.Of(MaterialCatalogue.Default.Find("neem-cake")!);
        return new()
        {
            Name = "made pot",
            Shape = shape,
            Medium = Medium.Find("peat-mix")!,
            Plant = new() { CanopyStart = 0.08, CanopyMost = 0.25 },
            Irrigation = IrrigationRule.ByWeight(0.55, 0.12),
            Events =
            [
                .. Enumerable.Range(0, 7).Select(k => new DryFeedEvent(Start.AddDays(14 + (28 * k)), feed, 3)),
                new DryFeedEvent(Start.AddDays(5), meal, 20),
            ],
        };
    }

    public static PotForecastRequest Request(int draws = 60, int days = 120) => new() { Scenario = Scenario(), Weather = Weather(), From = Start, Days = days, Draws = draws };
}
