using System.Globalization;
using System.Text.Json;
using Ashery.Climate;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Quantities;
using Ashery.Solutions.Waters;

namespace Ashery.Exchange.Gardens;

/// <summary>From the garden to the shape of the file.</summary>
internal static class GardenWriter
{
    public static GardenDto ToDto(Garden garden) => new()
    {
        Format = GardenFile.Format,
        Name = garden.Name,
        Demo = garden.IsDemo,
        Place = PlaceOf(garden.Place),
        Shelf = [.. garden.Shelf.Select(BagOf)],
        Scoops = [.. garden.Scoops.Select(ScoopOf)],
        Pots = [.. garden.Pots.Select(PotOf)],
        Feeds = [.. garden.Feeds.Select(FeedOf)],
        Waters = garden.Waters.Count > 0 ? [.. garden.Waters.Select(WaterOf)] : null,
        RuleChanges = garden.RuleChanges,
        Settings = new()
        {
            Currency = garden.Settings.Currency,
            UsUnits = garden.Settings.UsUnits,
            ScaleStep = garden.Settings.ScaleStep,
            Scoop = garden.Settings.Scoop,
            Water = garden.Settings.Water,
        },
    };

    /// <summary>An enum member as JSON writes it.</summary>
    public static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());

    internal static Dictionary<string, double> PercentOf(LabelAnalysis label) =>
        label.Present.ToDictionary(LabelBasis.Symbol, n => Tidy(label.Percent(n)));

    private static PlaceDto PlaceOf(Place place) => new()
    {
        Name = place.Name,
        Latitude = place.Latitude,
        Elevation = place.ElevationMetres,
        Coast = place.NearCoast ? true : null,
        Normals = place.Normals?.Select(static n => new MonthDto
        {
            MeanMax = n.MeanMax,
            MeanMin = n.MeanMin,
            Rain = n.RainMm,
            WetDays = n.WetDays,
            Wind = n.WindMs,
            Humidity = n.Humidity,
            Radiation = n.RadiationMj,
        }).ToList(),
        Seasons = [.. place.Seasons.Select(static s => new SeasonDto { Kind = Word(s.Kind), From = Day(s.From), To = Day(s.To) })],
    };

    private static string Day(MonthDay d) => FormattableString.Invariant($"{d.Month:00}-{d.Day:00}");

    private static string? Date(DateOnly? d) => d?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static ScoopDto ScoopOf(Scoop scoop) => new()
    {
        Name = scoop.Name,
        Volume = Tidy(scoop.Volume.Millilitres),
        Calibrations = scoop.Calibrations.ToDictionary(static c => c.Key, static c => SpreadOf(c.Value)),
    };

    private static SpreadDto SpreadOf(Spread s) => new() { Min = s.Min, Typical = s.Typical, Max = s.Max };

    internal static BagDto BagOf(Bag bag) => BagMaterial.ToDto(bag.Material) with
    {
        Id = bag.Id,
        Stock = bag.Stock?.Grams,
        Price = bag.Price,
        Size = bag.Size?.Grams,
    };

    private static PotDto PotOf(Pot pot) => new()
    {
        Id = pot.Id,
        Name = pot.Name,
        Crop = pot.CropId,
        Volume = pot.Size is null ? pot.Volume.Litres : null,
        Diameter = pot.Size?.TopDiameter,
        Height = pot.Size?.Height,
        BottomDiameter = pot.Size?.BottomDiameter,
        Medium = Word(pot.Medium),
        Stage = Word(pot.Stage),
        Planted = Date(pot.Planted),
        LastRepotted = Date(pot.LastRepotted),
        Count = pot.Count,
        Place = pot.Place,
        NeedsTraceElements = pot.NeedsTraceElements,
        LowPhosphorus = pot.LowPhosphorus,
    };

    private static WaterDto WaterOf(WaterReport report) => new()
    {
        Id = report.Id,
        Name = report.Name,
        Note = report.Note,
        Lines = [.. report.Lines.Select(static l => new WaterLineDto { Name = l.Name, Value = l.Value, Unit = l.Unit, Below = l.Below ? true : null })],
        PH = report.PH,
        Celsius = report.Celsius,
        Ec = report.Ec?.Value,
        EcUnit = report.Ec is { Unit: not "mS/cm" } ec ? ec.Unit : null,
        EcCelsius = report.Ec is { Celsius: not 25 } at ? at.Celsius : null,
    };

    private static FeedDto FeedOf(Feed feed) => new()
    {
        Id = feed.Id,
        Name = feed.Name,
        Kind = Word(feed.Kind),
        Parts = feed.Parts,
        Label = PercentOf(feed.Label),
        Nitrogen = NitrogenOf(feed.Nitrogen),
        SaltIndex = feed.SaltIndex,
        LimeEquivalent = feed.LimeEquivalent,
        BulkDensity = feed.BulkDensity,
        Dissolves = feed.Dissolves,
    };

    internal static NitrogenDto? NitrogenOf(NitrogenForms n) => n.Total > 0
        ? new()
        {
            Ammonium = Tidy(n.Ammonium * 100),
            Nitrate = Tidy(n.Nitrate * 100),
            Urea = Tidy(n.Urea * 100),
            Organic = Tidy(n.Organic * 100),
            SlowSynthetic = Tidy(n.SlowSynthetic * 100),
        }
        : null;

    /// <summary>Twelve significant digits: takes off what multiplying by a hundred left in the last places.</summary>
    internal static double Tidy(double v) => double.Parse(v.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
