using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Quantities;
using Ashery.Solutions.Waters;
using Ashery.Sources;
using CsCheck;

namespace Ashery.Records.Tests;

/// <summary>Gardens made up at random, every member filled, with names that try to break something.</summary>
internal static class RandomGardens
{
    private static readonly string[] Hostile =
    [
        "'; DROP TABLE garden_state; --", "<script>alert(1)</script>", "\"quoted\"", "line\r\nbreak\ttab", "=1+1", "",
        " ", "%s%n{0}{{}}", "../../etc/passwd", "é́́́", "\u202Egnp.exe", "🪴🪴🪴", "বাগান", "\\", "\u0001", new string('x', 5000),
    ];

    private static readonly double[] Corners = [0.0, 1e-300, 1e300, 1.0 / 3, double.MaxValue, double.Epsilon];

    private static readonly Gen<string> Text = Gen.Frequency((1, Gen.Int[0, Hostile.Length - 1].Select(i => Hostile[i])), (2, Gen.String[Gen.Char[' ', 'ӿ'], 0, 30]));

    private static readonly Gen<double> Number = Gen.Frequency(
        (1, Gen.Int[0, Corners.Length - 1].Select(i => Corners[i])), (5, Gen.Double[-1e6, 1e6]));

    private static readonly Gen<Spread> AnySpread = Gen.Select(Number, Number, Number, (a, b, c) => new Spread(a, b, c));

    private static readonly Gen<DateOnly> Day = Gen.Int[0, DateOnly.MaxValue.DayNumber].Select(DateOnly.FromDayNumber);

    private static readonly Gen<LabelAnalysis> Label = Gen.Dictionary(Gen.Enum<Nutrient>(), Gen.Double[1e-9, 1])[0, 14].Select(d => new LabelAnalysis(d));

    private static readonly Gen<NitrogenForms> Forms =
        Gen.Select(Number, Number, Number, Number, Number, (a, b, c, d, e) => new NitrogenForms(a, b, c, d, e));

    private static readonly Gen<Figure> AnyFigure =
        Gen.Select(Number, Text, Gen.Enum<Provenance>(), Gen.Null(Text), (v, s, p, n) => new Figure(v, s, p, n));

    private static readonly Gen<List<string>> Words = Text.List[0, 4];

    private static readonly Gen<Material> AnyMaterial =
        from names in Gen.Select(Text, Text, Text, Gen.Null(Text), Text)
        from lists in Gen.Select(Words, Words, Words, Words, Gen.Enum<Hazard>().HashSet[0, 5])
        from labels in Gen.Select(Label, Gen.Null(Label), Gen.Dictionary(Gen.Enum<Nutrient>(), AnySpread)[0, 4], Forms)
        from figures in Gen.Select(Gen.Null(AnyFigure), Gen.Null(AnyFigure), Gen.Null(AnyFigure))
        from numbers in Gen.Select(Gen.Nullable(Number), Gen.Nullable(Number), Gen.Nullable(Number), Gen.Nullable(Number), Number)
        from rest in Gen.Select(Gen.Enum<MaterialKind>(), Gen.Bool, Gen.Bool, Gen.Enum<Provenance>(), Gen.Nullable(AnySpread))
        from more in Gen.Select(Gen.Bool, Gen.Null(Text), Gen.Null(Text), Words)
        from solubility in Gen.Select(Number, Number, (c, g) => new SolubilityPoint(c, g)).List[0, 3]
        select new Material
        {
            Id = names.Item1,
            Name = names.Item2,
            CompatibilityGroup = names.Item3,
            Formula = names.Item4,
            SourceId = names.Item5,
            OtherNames = lists.Item1,
            Notes = lists.Item2,
            Regulations = lists.Item3,
            Ions = lists.Item4.ToHashSet(),
            Hazards = lists.Item5,
            Label = labels.Item1,
            Pure = labels.Item2,
            LabelSpread = labels.Item3,
            Nitrogen = labels.Item4,
            SaltIndex = figures.Item1,
            LimeEquivalent = figures.Item2,
            CriticalRelativeHumidity = figures.Item3,
            MolarMass = numbers.Item1,
            LiquidDensity = numbers.Item2,
            OsmolesPerKg = numbers.Item3,
            CarbonToNitrogen = numbers.Item4,
            Moisture = numbers.Item5,
            Kind = rest.Item1,
            IsLiquid = rest.Item2,
            Dissolves = rest.Item3,
            Provenance = rest.Item4,
            BulkDensity = rest.Item5,
            Solubility = solubility,
            PureIsLimit = more.Item1,
            Cas = more.Item2,
            TechnicalGrade = more.Item3,
            HazardWords = more.Item4,
        };

    private static readonly Gen<Bag> AnyBag = Gen.Select(Text, AnyMaterial, Gen.Nullable(Number), Gen.Nullable(Number), Gen.Nullable(Number))
        .Select((id, m, stock, price, size) => new Bag(
            id, m, stock is { } a ? new Mass(a) : null, price, size is { } b ? new Mass(b) : null));

    private static readonly Gen<Pot> AnyPot =
        from words in Gen.Select(Text, Text, Text, Gen.Null(Text))
        from kinds in Gen.Select(Gen.Enum<MediumKind>(), Gen.Enum<PlantStage>(), Gen.Nullable(Day), Gen.Nullable(Day))
        from litres in Number
        from size in Gen.Null(Gen.Select(Number, Number, Gen.Nullable(Number), (t, h, b) => new PotSize(t, h, b)))
        from flags in Gen.Select(Gen.Nullable(Gen.Bool), Gen.Nullable(Gen.Bool))
        from count in Gen.Int[0, 500]
        select new Pot
        {
            Id = words.Item1,
            Name = words.Item2,
            CropId = words.Item3,
            Place = words.Item4,
            Medium = kinds.Item1,
            Stage = kinds.Item2,
            Planted = kinds.Item3,
            LastRepotted = kinds.Item4,
            Volume = new Volume(litres),
            Count = count,
            Size = size,
            NeedsTraceElements = flags.Item1,
            LowPhosphorus = flags.Item2,
        };

    private static readonly Gen<Feed> AnyFeed =
        from words in Gen.Select(Text, Text, Gen.Enum<FeedKind>(), Gen.Bool)
        from parts in Gen.Dictionary(Text, Number)[0, 5]
        from labels in Gen.Select(Label, Forms)
        from numbers in Gen.Select(Gen.Nullable(Number), Gen.Nullable(Number), Gen.Nullable(Number))
        select new Feed
        {
            Id = words.Item1,
            Name = words.Item2,
            Kind = words.Item3,
            Dissolves = words.Item4,
            Parts = parts,
            Label = labels.Item1,
            Nitrogen = labels.Item2,
            SaltIndex = numbers.Item1,
            LimeEquivalent = numbers.Item2,
            BulkDensity = numbers.Item3,
        };

    private static readonly Gen<MonthDay> AnyMonthDay = Gen.Select(Gen.Int[1, 12], Gen.Int[1, 31], (m, d) => new MonthDay(m, d));

    private static readonly Gen<Place> AnyPlace =
        from name in Text
        from latitude in Number
        from normals in Gen.Null(Gen.Select(Number, Number, Number, Gen.Select(Gen.Nullable(Number), Gen.Nullable(Number), Gen.Nullable(Number), Gen.Nullable(Number)), (a, b, c, more) =>
            new MonthlyNormal(a, b, c) { WetDays = more.Item1, WindMs = more.Item2, Humidity = more.Item3, RadiationMj = more.Item4 }).List[0, 12])
        from seasons in Gen.Select(Gen.Enum<SeasonKind>(), AnyMonthDay, AnyMonthDay, (k, a, b) => new Season(k, a, b)).List[0, 5]
        from elevation in Gen.Nullable(Number)
        from coast in Gen.Bool
        select new Place { Name = name, Latitude = latitude, ElevationMetres = elevation, NearCoast = coast, Normals = normals, Seasons = seasons };

    private static readonly Gen<Scoop> AnyScoop = Gen.Select(Text, Number, Gen.Dictionary(Text, AnySpread)[0, 4])
        .Select((n, v, c) => new Scoop(n, new Volume(v), c));

    private static readonly Gen<GardenSettings> AnySettings = Gen.Select(Text, Gen.Bool, Number, Gen.Null(Text), Gen.Null(Text))
        .Select((c, us, step, scoop, water) => new GardenSettings { Currency = c, UsUnits = us, ScaleStep = step, Scoop = scoop, Water = water });

    private static readonly Gen<WaterReport> AnyWater =
        from words in Gen.Select(Text, Text, Gen.Null(Text))
        from lines in Gen.Select(Text, Number, Gen.Null(Text), Gen.Bool, (n, v, u, b) => new WaterLine(n, v, u, b)).List[0, 6]
        from numbers in Gen.Select(Gen.Nullable(Number), Gen.Nullable(Number))
        from ec in Gen.Null(Gen.Select(Number, Text, Number, (v, u, c) => new WaterConductivity(v, u, c)))
        select new WaterReport { Id = words.Item1, Name = words.Item2, Note = words.Item3, Lines = lines, PH = numbers.Item1, Celsius = numbers.Item2, Ec = ec };

    public static readonly Gen<Garden> Any =
        from head in Gen.Select(Text, Gen.Bool, AnyPlace, AnySettings)
        from bags in AnyBag.List[0, 6]
        from pots in AnyPot.List[0, 6]
        from feeds in AnyFeed.List[0, 4]
        from scoops in AnyScoop.List[0, 3]
        from waters in AnyWater.List[0, 3]
        from rules in Gen.Dictionary(Text, Text)[0, 4]
        select new Garden
        {
            Name = head.Item1,
            IsDemo = head.Item2,
            Place = head.Item3,
            Settings = head.Item4,
            Shelf = bags,
            Pots = pots,
            Feeds = feeds,
            Scoops = scoops,
            Waters = waters,
            RuleChanges = rules,
        };

    public static Garden Small(string name) => new() { Name = name, Place = new Place { Name = "Nowhere", Latitude = 50 } };
}
