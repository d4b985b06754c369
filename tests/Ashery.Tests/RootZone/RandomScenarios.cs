using Ashery.Climate;
using Ashery.Crops;
using Ashery.Materials;
using Ashery.RootZone;
using Ashery.RootZone.Feeding;
using Ashery.RootZone.State;

namespace Ashery.Tests.RootZone;

/// <summary>Scenarios and weather over the whole range a garden may meet, by seed.</summary>
internal static class RandomScenarios
{
    public static readonly DateOnly Start = new(2026, 3, 1);

    private static readonly string[] Feeds =
    [
        "urea", "ammonium-sulfate", "calcium-nitrate-double", "potassium-nitrate", "dap-granular", "mkp", "potassium-sulfate", "potassium-chloride", "epsom-salt", "gypsum",
        "blood-meal", "neem-cake", "bone-meal-raw", "vermicompost", "coffee-grounds", "kelp-meal", "ibdu", "sulfur-coated-urea", "dolomitic-lime", "wood-ash", "iron-sulfate-heptahydrate", "borax-decahydrate",
    ];

    public static Place Place { get; } = new() { Name = "test", Latitude = 30 };

    /// <summary>How many are asked for: ASHERY_SCENARIOS, else the usual.</summary>
    public static int Count(int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable("ASHERY_SCENARIOS"), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var n) ? n : usual;

    public static WeatherSeries Weather(int seed, int days)
    {
        var random = new Random(seed);
        double mean = random.Next(2, 24), swing = random.Next(2, 14), wet = random.NextDouble() * 0.6, storm = random.Next(3, 40);
        var list = new DailyWeather[days];
        for (var i = 0; i < days; i++)
        {
            var season = Math.Sin(2 * Math.PI * (i - 45) / 365.0);
            var t = mean + (swing * season) + (6 * (random.NextDouble() - 0.5));
            var radiation = Math.Max(1, 14 + (7 * season) + (8 * (random.NextDouble() - 0.5)));
            var rain = random.NextDouble() < wet ? -storm * Math.Log(1 - random.NextDouble()) : 0;
            list[i] = new(Start.AddDays(i), t - 5, t + 5, rain, radiation, 2, 1.2, Math.Max(0.1, 0.0023 * (t + 17.8) * 3.16 * radiation / 2.45));
        }

        return new(Place, list, "made for a test");
    }

    public static PotScenario Scenario(int seed, int days = 365)
    {
        var random = new Random(seed);
        var shape = PotShape.OfLitres(Math.Exp(Uniform(random, Math.Log(0.3), Math.Log(60))));
        var medium = Medium.All[random.Next(Medium.All.Count)];
        var most = PlantSpec.UsualCanopy(shape) * Uniform(random, 0.3, 2);
        return new()
        {
            Name = "random " + seed.ToString(System.Globalization.CultureInfo.InvariantCulture),
            Shape = shape,
            Medium = medium,
            Plant = new()
            {
                Feeder = (FeederClass)random.Next(3),
                CanopyStart = most * Uniform(random, 0.02, 1),
                CanopyMost = most,
                BaseCelsius = Uniform(random, 3, 14),
                FlowerLoad = random.NextDouble(),
                SaltThreshold = Uniform(random, 1, 6),
                SaltSlope = Uniform(random, 4, 20),
            },
            Irrigation = Irrigation(random),
            Exposure = new(random.NextDouble(), random.NextDouble() * 0.8, random.NextDouble() * 2, Uniform(random, 0.6, 1.6)),
            Water = new("random", Water(random)),
            Start = new(Uniform(random, 4, 7.5), Uniform(random, 0, 3), Uniform(random, 0.3, 1), Uniform(random, 0, 5)),
            Events = Events(random, shape, days),
        };
    }

    public static Ions Water(Random random)
    {
        // Neutral but for an alkalinity of 0 to 6 meq/L.
        var water = default(Ions);
        water[Ion.Chloride] = Uniform(random, 0, 5e-3);
        water[Ion.Sulfate] = Uniform(random, 0, 2e-3);
        water[Ion.Nitrate] = Uniform(random, 0, 1e-3);
        water[Ion.Boron] = Uniform(random, 0, 5e-5);
        var cations = water[Ion.Chloride] + (2 * water[Ion.Sulfate]) + water[Ion.Nitrate] + Uniform(random, 0, 6e-3);
        double ca = random.NextDouble(), mg = random.NextDouble(), na = random.NextDouble(), k = random.NextDouble() * 0.1, sum = ca + mg + na + k;
        water[Ion.Calcium] = cations * ca / sum / 2;
        water[Ion.Magnesium] = cations * mg / sum / 2;
        water[Ion.Sodium] = cations * na / sum;
        water[Ion.Potassium] = cations * k / sum;
        return water;
    }

    private static IrrigationRule Irrigation(Random random) => random.Next(5) switch
    {
        0 => IrrigationRule.RainOnly,
        1 => IrrigationRule.ByDay(random.Next(1, 8), Uniform(random, 0.05, 4)),
        2 => IrrigationRule.ByLeaching(Uniform(random, 0, 0.6)),
        _ => IrrigationRule.ByWeight(Uniform(random, 0.1, 0.95), Uniform(random, 0, 0.6)),
    };

    private static List<PotEvent> Events(Random random, PotShape shape, int days)
    {
        List<PotEvent> events = [];
        for (var i = random.Next(25); i > 0; i--)
        {
            var date = Start.AddDays(random.Next(days));
            events.Add(random.Next(12) switch
            {
                0 => new FlushEvent(date, Uniform(random, 0, 3) * shape.Litres),
                1 => new PruneEvent(date, Uniform(random, 0, 0.9)),
                2 => new RepotEvent(date, PotShape.OfLitres(shape.Litres * Uniform(random, 0.8, 3)), Medium.All[random.Next(Medium.All.Count)], random.NextDouble()),
                3 or 4 => new LiquidFeedEvent(date, FeedBuilder.LiquidByNitrogen(Feed(random, dissolving: true), Uniform(random, 20, 400)), Uniform(random, 0.05, 1) * shape.Litres),
                _ => new DryFeedEvent(date, Feed(random, dissolving: false), Uniform(random, 0, 3) * shape.Litres),
            });
        }

        return events;
    }

    private static FeedContents Feed(Random random, bool dissolving) =>
        FeedBuilder.Of(MaterialCatalogue.Default.Find(Feeds[random.Next(dissolving ? 5 : Feeds.Length)])!);

    private static double Uniform(Random random, double low, double high) => low + ((high - low) * random.NextDouble());
}
