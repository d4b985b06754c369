using Ashery.Cards.Pictures;
using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Problems;
using Ashery.Recipes;

namespace Ashery.Cards.Tests.Support;

/// <summary>Recipes made by hand, so that the cards' tests need no search.</summary>
internal static partial class Samples
{
    public static DateOnly Day => new(2026, 11, 25);

    /// <summary>A dry blend of four straights with doses for a few pots.</summary>
    public static RecipeCardRequest Terrace => new()
    {
        Name = "Terrace blend for jasmine",
        MadeOn = Day,
        Wish = "3:1:4",
        Recipe = Blend(1000, ("potassium-nitrate", 395), ("ammonium-sulfate", 360), ("map-technical", 85), ("potassium-sulfate", 160)) with
        {
            RatioError = 0.0123,
            LargestDeviation = 0.031,
            CostPerKg = 1.84,
            CostPerKgNutrient = 4.96,
            SaltIndex = 66.4,
            OsmolalityPerGram = 18.7,
            LimeEquivalent = 0.31,
            Storage = new(StorageClass.Airtight, "Potassium nitrate with ammonium sulfate takes up water sooner than either alone.", 59, "sample chart"),
            Pairs =
            [
                new("potassium-nitrate", "ammonium-sulfate", Fine, new(Verdict.Limited, "Nitrate with ammonium draws water", "sample chart", "keep airtight, use within the season"), Fine),
                new("ammonium-sulfate", "potassium-sulfate", Fine, Fine, new(Verdict.Limited, "Sulfates share their solubility", "sample chart", "at most 60 g of both in 1 L")),
                new("map-technical", "potassium-sulfate", Fine, new(Verdict.Unknown, "Nothing published on storing these two", "nothing published"), Fine),
            ],
            Notes =
            [
                new("calcium", "The blend holds no calcium.", "Soft tap water brings none either: give gypsum or a calcium feed apart.", Severity.Warning),
                new("nitrogen", "Most of the nitrogen is ammonium.", "In cold months choose a blend with more nitrate.", Severity.Note),
            ],
        },
        Doses =
        [
            Dosed("Jasmine by the door", 10, 1, 4),
            Dosed("Hibiscus", 10, 3, 4),
            Dosed("Rose, large tub", 30, 1, 11),
            Dosed("Young gardenias", 3, 4, 0.5) with { Dose = Given(0.5) with { Predilution = new(5, 1000, 100) } },
            Dosed("Orchids on the rail", 2, 5, 0.8) with { Dose = Given(0.8) with { Can = new(8, 1), Method = DoseMethod.Can } },
        ],
        Triangle = Shelf,
    };

    /// <summary>Meals mixed moist, with scoops, on the day.</summary>
    public static RecipeCardRequest Meals => new()
    {
        Name = "Meal mix",
        MadeOn = Day,
        Recipe = Blend(180, ("neem-cake", 80), ("bone-meal-steamed", 30), ("vermicompost", 60), ("kelp-meal", 10)) with
        {
            Storage = new(StorageClass.OnTheDay, "Vermicompost is moist: the meals would heat and mould.", null, "growers' practice, no source"),
        },
    };

    /// <summary>Twelve materials with names as long as they come.</summary>
    public static RecipeCardRequest Twelve => new()
    {
        Name = "Everything on the shelf, tried once and kept for the record of what a crowded recipe looks like on a card",
        MadeOn = Day,
        Recipe = Blend(
            2500, ("urea", 100), ("ammonium-sulfate", 300), ("calcium-nitrate-double", 200), ("potassium-nitrate", 400), ("map-granular", 150), ("mkp", 90), ("potassium-sulfate", 310), ("langbeinite", 250),
            ("epsom-salt", 300), ("kieserite", 200), ("iron-edta", 120), ("manganese-sulfate-monohydrate", 80)),
        Doses = [.. Enumerable.Range(1, 40).Select(i => Dosed(FormattableString.Invariant($"Pot number {i} on the northern side of the upper terrace"), i, 1, i / 4.0))],
    };

    /// <summary>Names that try to be markup, to run off the paper, to turn the reading round or to break the encoding.</summary>
    public static RecipeCardRequest Hostile => Terrace with
    {
        Name = "</title><script>alert(1)</script>" + new string('W', 400),
        Wish = "\"><img src=x onerror=alert(1)>",
        Recipe = Blend(100, (Renamed("urea", "Rosenkohldüngemittelgroßhandelsgesellschaftsmischung/extra-" + new string('m', 300)), 60), (Renamed("mkp", "জবা ফুল \u202Egnp.exe \u0000\u0007 🌺 山茶花 ورد"), 40)),
        Doses = [Dosed("<b>bold</b> & \"quoted\" 'pot'", 0.001, 1, 0.0004), Dosed(new string('i', 500), 12345.678, 99999, 123456.789)],
    };

    private static Material Renamed(string id, string name) => SampleMaterials.Of(id) with { Name = name };

    private static Judgement Fine => new(Verdict.Fine, "", "sample chart");

    public static Recipe Blend(double batch, params (string Id, double Grams)[] parts) =>
        Blend(batch, [.. parts.Select(p => (SampleMaterials.Of(p.Id), p.Grams))]);

    public static Recipe Blend(double batch, params (Material Material, double Grams)[] parts)
    {
        var grade = new LabelAnalysis(Enum.GetValues<Nutrient>().ToDictionary(n => n, n => parts.Sum(p => p.Material.Label[n] * p.Grams) / batch));
        var nitrogen = parts.Aggregate(default(NitrogenForms), (sum, p) => sum + (p.Material.Nitrogen * (p.Grams / batch)));
        return new()
        {
            Parts = [.. parts.Select(p => new RecipePart(p.Material, p.Grams / batch, p.Grams, null, p.Material.BulkDensity is { } d ? p.Grams / d.Typical : null, null))],
            BatchGrams = batch,
            Grade = grade,
            Elements = grade.ToElements(),
            Nitrogen = nitrogen,
            RatioError = 0.02,
            LargestDeviation = 0.05,
            Strength = grade[Nutrient.N] + grade[Nutrient.P] + grade[Nutrient.K],
            Storage = new(StorageClass.KeepsDry, "Nothing in it draws water from ordinary room air.", 72, "sample chart"),
            Pairs = [],
            CautionIds = [],
            Notes = [],
        };
    }

    public static PotDose Dosed(string name, double litres, int count, double grams) => new(Pot(name, litres, count), Given(grams));

    private static Dose Given(double grams) => new()
    {
        PotId = "pot", FeedId = "feed", Grams = grams, WantedGrams = grams, NitrogenPerLitreMonth = 0.05, NitrogenPerLitreSeason = 0.4, RateBand = "low to medium", Reasons = [],
    };
}
