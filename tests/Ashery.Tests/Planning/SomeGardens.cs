using Ashery.Climate;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Quantities;
using CsCheck;

namespace Ashery.Tests.Planning;

/// <summary>Gardens for tests: fixed ones with round figures, and random ones with seasons that overlap and wrap.</summary>
internal static class SomeGardens
{
    public static readonly Feed Mineral = Feed("salts", FeedKind.Mineral, "ammonium-sulfate", 0.2, 0.04, 0.16) with { Dissolves = true, SaltIndex = 80, LimeEquivalent = 1.0, Nitrogen = new(0.2, 0, 0, 0, 0) };

    public static readonly Feed Organic = Feed("meals", FeedKind.Organic, "neem-cake", 0.03, 0.02, 0.01) with { Nitrogen = new(0, 0, 0, 0.03, 0), LimeEquivalent = null };

    public static readonly Feed Leaf = Feed("leaf", FeedKind.Foliar, "epsom-salt", 0, 0, 0) with
    {
        Label = new LabelAnalysis(new Dictionary<Nutrient, double> { [Nutrient.Mg] = 0.098, [Nutrient.S] = 0.13 }), Dissolves = true,
    };

    public static readonly Feed Trace = Feed("traces", FeedKind.TraceElements, "iron-dtpa", 0, 0, 0) with
    {
        Label = new LabelAnalysis(new Dictionary<Nutrient, double> { [Nutrient.Fe] = 0.08, [Nutrient.B] = 0.01, [Nutrient.Cu] = 0.01 }), Dissolves = true,
    };

    public static readonly Feed Fungus = Feed("fungus", FeedKind.Inoculant, "fungus-granules", 0, 0, 0);

    private static readonly Gen<Season> AnySeason =
        from kind in Gen.Enum<SeasonKind>()
        from start in Gen.Int[0, 364]
        from length in Gen.Int[0, 300]
        let first = new DateOnly(2027, 1, 1).AddDays(start)
        let last = first.AddDays(length)
        select new Season(kind, new(first.Month, first.Day), new(last.Month, last.Day));

    private static readonly Gen<Pot> AnyPot =
        from litres in Gen.Double[0.4, 40]
        from crop in Gen.Int[0, CropCatalogue.Default.All.Count - 1]
        from medium in Gen.Enum<MediumKind>()
        from stage in Gen.Enum<PlantStage>()
        from count in Gen.Int[1, 5]
        from repotted in Gen.Int[-800, 200]
        select new Pot
        {
            Id = "", Name = "pot", CropId = CropCatalogue.Default.All[crop].Id, Volume = new(litres), Medium = medium, Stage = stage, Count = count,
            LastRepotted = new DateOnly(2027, 1, 1).AddDays(repotted), NeedsTraceElements = count == 2 ? true : null,
        };

    private static readonly Gen<IReadOnlyList<MonthlyNormal>?> AnyNormals =
        from has in Gen.Bool
        from mean in Gen.Double[0, 30]
        from swing in Gen.Double[0, 16]
        from coldest in Gen.Int[0, 11]
        from rain in Gen.Double[0, 260].Array[12]
        select has
            ? (IReadOnlyList<MonthlyNormal>)[.. Enumerable.Range(0, 12).Select(m =>
            {
                var t = mean - (swing * Math.Cos((m - coldest) * Math.PI / 6));
                return new MonthlyNormal(t + 5, t - 5, rain[m]);
            })]
            : null;

    /// <summary>Any garden, and any first day.</summary>
    public static readonly Gen<(Garden Garden, DateOnly From)> Any =
        from seasons in AnySeason.Array[0, 6]
        from normals in AnyNormals
        from pots in AnyPot.Array[1, 6]
        from kinds in Gen.Bool.Array[5]
        from stock in Gen.Double[0, 3000]
        from interval in Gen.Int[3, 40]
        from latitude in Gen.Double[-60, 60]
        from from_ in Gen.Int[0, 1600]
        select (new Garden
        {
            Name = "any",
            Place = new Place { Name = "anywhere", Latitude = latitude, Normals = normals, Seasons = seasons },
            Pots = [.. pots.Select(static (p, i) => p with { Id = FormattableString.Invariant($"p{i}"), Name = FormattableString.Invariant($"pot {i}") })],
            Feeds = [.. new[] { Mineral, Organic, Leaf, Trace, Fungus }.Where((_, i) => kinds[i] || i < 2)],
            Shelf = [Bag("ammonium-sulfate", stock), Bag("neem-cake", null), Bag("urea", 500)],
            RuleChanges = new Dictionary<string, string> { ["alternate-kinds"] = FormattableString.Invariant($"days={interval}") },
            Settings = new() { ScaleStep = 0.1 },
        }, new DateOnly(2027, 1, 1).AddDays(from_));

    /// <summary>A garden with named seasons and one kind of weather.</summary>
    public static Garden With(params Season[] seasons) => new()
    {
        Name = "fixed",
        Place = new Place { Name = "somewhere", Latitude = 20, Seasons = seasons },
        Pots = [Pot("a", 10, "bougainvillea"), Pot("b", 4, "tropical-hibiscus"), Pot("c", 1, "zonal-geranium")],
        Feeds = [Mineral, Organic, Leaf, Trace],
        Shelf = [Bag("ammonium-sulfate", null), Bag("neem-cake", null), Bag("epsom-salt", null), Bag("iron-dtpa", null)],
        Settings = new() { ScaleStep = 0.1 },
    };

    public static Pot Pot(string id, double litres, string crop, MediumKind medium = MediumKind.PeatMix) => new()
    {
        Id = id, Name = "pot " + id, CropId = crop, Volume = new(litres), Medium = medium, Place = "bench",
    };

    public static Bag Bag(string material, double? stock, double? price = null, double? size = null) => new(
        material, MaterialCatalogue.Default.Find(material)!, stock is { } s ? new Mass(s) : null, price, size is { } z ? new Mass(z) : null);

    private static Feed Feed(string id, FeedKind kind, string material, double n, double p, double k) => new()
    {
        Id = id,
        Name = id,
        Kind = kind,
        Parts = new Dictionary<string, double> { [material] = 1 },
        Label = new LabelAnalysis(new Dictionary<Nutrient, double> { [Nutrient.N] = n, [Nutrient.P] = p, [Nutrient.K] = k }),
    };
}
