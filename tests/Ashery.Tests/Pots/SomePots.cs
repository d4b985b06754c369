using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Nutrients;
using Ashery.Pots;
using CsCheck;

namespace Ashery.Tests.Pots;

/// <summary>Pots and feeds with round figures, for tests.</summary>
internal static class SomePots
{
    public static readonly DateOnly Day = new(2027, 5, 10);

    public static readonly Gen<Crop> AnyCrop = Gen.Int[0, CropCatalogue.Default.All.Count - 1].Select(static i => CropCatalogue.Default.All[i]);

    public static Crop Crop(string id) => CropCatalogue.Default.Find(id)!;

    public static Pot Pot(double litres, string crop = "bougainvillea", PlantStage stage = PlantStage.Mature, string id = "p") => new()
    {
        Id = id, Name = id, CropId = crop, Volume = new(litres), Medium = MediumKind.PeatMix, Stage = stage,
    };

    public static Feed Mineral(double nPercent = 12.5, bool dissolves = false, double? saltIndex = null, double urea = 0) => new()
    {
        Id = "blend",
        Name = "Blend",
        Kind = FeedKind.Mineral,
        Parts = new Dictionary<string, double> { ["ammonium-sulfate"] = 1 },
        Label = new LabelAnalysis(new Dictionary<Nutrient, double> { [Nutrient.N] = nPercent / 100, [Nutrient.P] = 0.05, [Nutrient.K] = 0.1 }),
        Nitrogen = new((nPercent / 100) - urea, 0, urea, 0, 0),
        SaltIndex = saltIndex,
        LimeEquivalent = 0.5,
        Dissolves = dissolves,
    };

    public static DoseRequest Ask(Pot pot, Feed feed, double feeds = 14, RuleBook? rules = null) => new()
    {
        Pot = pot,
        Crop = Crop(pot.CropId),
        Feed = feed,
        On = Day,
        FeedsInSeason = feeds,
        SeasonMonths = 6,
        ScaleStep = 0.1,
        Rules = rules ?? RuleBook.Default,
    };

    public static RuleBook Without(params string[] rules) => RuleBook.Default.With(rules.ToDictionary(static r => r, static _ => "off")).Value!;
}
