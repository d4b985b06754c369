using Ashery.Climate;
using Ashery.Crops;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.RootZone;
using Ashery.RootZone.Feeding;
using Ashery.RootZone.State;

namespace Ashery.Tests.RootZone;

/// <summary>Runs of the model laid out as the published trials were, as far as their abstracts tell.</summary>
internal static class Trials
{
    private static readonly DateOnly Start = new(2026, 3, 1);

    /// <summary>The same day again and again.</summary>
    public static WeatherSeries Steady(int days, double celsius, double radiation, double et) =>
        new(RandomScenarios.Place, [.. Enumerable.Range(0, days).Select(i => new DailyWeather(Start.AddDays(i), celsius - 3, celsius + 3, 0, radiation, 1, 1.5, et))], "steady");

    /// <summary>Part of the organic nitrogen set free in moist medium without a plant.</summary>
    public static double Released(FeedContents feed, double celsius, int days)
    {
        var grams = 0.5 / feed.NitrogenGrams;
        var bare = Bare with { Events = [new DryFeedEvent(Start, feed, grams)] };
        var run = RootZoneModel.Run(bare, Steady(days, celsius, 0, 0)).Value!;
        var own = RootZoneModel.Run(Bare, Steady(days, celsius, 0, 0)).Value!;
        return (run.Ledger.MineralisedN - own.Ledger.MineralisedN) / (feed.OrganicN * grams);
    }

    public static double Released(string material, double celsius, int days) => Released(Feed(material), celsius, days);

    /// <summary>Fresh plant matter of so much nitrogen in the dry matter, 42 % carbon (from memory).</summary>
    public static FeedContents Residue(double percent)
    {
        var n = percent / 100 / Ion.GramsPerMole(Ion.Nitrate);
        var fast = n * OrganicClass.Cake.FastShare.Value;
        return new() { CakeN = fast, CakeC = fast * 42 / percent, SlowN = n - fast };
    }

    /// <summary>Days until a share of urea is ammonium.</summary>
    public static double UreaDays(double celsius, double share)
    {
        var grams = 0.2;
        for (var days = 1; days < 60; days++)
        {
            // Read off between two evenings.
            double before = Left(days - 1), after = Left(days);
            if (after <= 1 - share)
            {
                return days - 1 + (Math.Log(before / (1 - share)) / Math.Log(before / after));
            }
        }

        return 60;

        double Left(int days) => days == 0 ? 1
            : RootZoneModel.Run(Bare with { StepsPerDay = 8, Events = [new DryFeedEvent(Start, Feed("urea"), grams)] }, Steady(days, celsius, 0, 0)).Value!.End.Mobile[Ion.Urea]
                * Ion.GramsPerMole(Ion.Urea) / (grams * 0.46);
    }

    /// <summary>Medium without plant, drying or rain.</summary>
    public static PotScenario Bare { get; } = new()
    {
        Name = "incubation",
        Shape = PotShape.OfLitres(2),
        Medium = Medium.Find("peat-mix")!,
        Plant = new() { CanopyStart = 1e-4, CanopyMost = 1e-4 },
        Irrigation = IrrigationRule.RainOnly,
        Exposure = new(Warming: 0),
        Start = new(PH: 6.2, WaterShare: 0.95, LimeGramsPerLitre: 0),
    };

    public static FeedContents Feed(string material) => FeedBuilder.Of(MaterialCatalogue.Default.Find(material)!);

    /// <summary>A coated feed of a grade, half of its nitrogen nitrate.</summary>
    public static FeedContents Coated(double n, double p2O5, double k2O, double days) =>
        FeedBuilder.Coated(LabelAnalysis.Grade(n, p2O5, k2O), new(n / 200, n / 200, 0, 0, 0), days);

    /// <summary>Ten weeks at a leaching fraction: 2.72 L, bark, 6 g of 16 % coated feed, greenhouse (the trial of 2020).</summary>
    public static PotRun LeachingTrial(double leachingFraction)
    {
        var shape = PotShape.OfLitres(2.72);
        return RootZoneModel.Run(
            new()
            {
                Name = "leaching fraction",
                Shape = shape,
                Medium = Medium.Find("bark")!,
                Plant = new() { CanopyStart = shape.MouthArea, CanopyMost = 3 * shape.MouthArea },
                Irrigation = IrrigationRule.ByLeaching(leachingFraction),
                Exposure = Exposure.UnderRoof,
                Water = new("well", TrialWater),
                Start = new(SolutionStrength: 0),
                Events = [new DryFeedEvent(Start, Coated(16, 6, 12, 150), 6)],
            },
            Steady(70, 25, 15, 4)).Value!;
    }

    /// <summary>Dry matter of a plant with a coated feed, g N a litre of medium.</summary>
    public static double Growth(double litres, double canopyMost, double nitrogenPerLitre, FeederClass feeder, double longevity, (double N, double P, double K) grade, int days, double celsius, double radiation, string medium, PlantSpec? like = null)
    {
        var shape = PotShape.OfLitres(litres);
        var feed = Coated(grade.N, grade.P, grade.K, longevity);
        var plant = (like ?? new() { CanopyStart = 0, CanopyMost = 0 }) with { Feeder = feeder, CanopyStart = canopyMost * 0.1, CanopyMost = canopyMost };
        var run = RootZoneModel.Run(
            new()
            {
                Name = "rates",
                Shape = shape,
                Medium = Medium.Find(medium)!,
                Plant = plant,
                Irrigation = IrrigationRule.ByWeight(0.6, 0.2),
                Exposure = new(RainKeptOff: 1),
                Water = new("well", TrialWater),
                Start = new(SolutionStrength: 0.3),
                Events = [new DryFeedEvent(Start, feed, nitrogenPerLitre * litres / feed.NitrogenGrams)],
            },
            Steady(days, celsius, radiation, radiation * 0.25)).Value!;
        return run.End.Biomass;
    }

    /// <summary>Lowest of the rates that gives 95 % of the best growth.</summary>
    public static double BestRate(double[] rates, Func<double, double> growth)
    {
        var grown = Array.ConvertAll(rates, r => growth(r));
        var most = grown.Max();
        return rates[Array.FindIndex(grown, g => g >= 0.95 * most)];
    }

    // Made water of 1.6 meq/L alkalinity.
    private static Ions TrialWater => default(Ions).With(Ion.Calcium, 8e-4).With(Ion.Magnesium, 3e-4).With(Ion.Sodium, 6e-4).With(Ion.Chloride, 6e-4).With(Ion.Sulfate, 3e-4);
}
