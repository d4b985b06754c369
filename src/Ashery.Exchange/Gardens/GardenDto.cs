using System.ComponentModel;

namespace Ashery.Exchange.Gardens;

// The shape of a garden file. Everything may be missing as far as the reader of JSON is concerned, so that what is missing is
// told with its path and a way out, not by an exception. Units: litres, grams, centimetres, degrees Celsius, millimetres of rain,
// percent by weight on the label's basis (N, P2O5, K2O; every other nutrient as the element).

[Description("A garden: place, shelf, scoops, pots, kept feeds and the grower's own settings.")]
public sealed record GardenDto
{
    [Description("Format and edition of this file: ashery-garden/1.")]
    public string? Format { get; init; }

    public string? Name { get; init; }

    [Description("True for the invented garden of the first start.")]
    public bool Demo { get; init; }

    public PlaceDto? Place { get; init; }

    public IReadOnlyList<BagDto>? Shelf { get; init; }

    public IReadOnlyList<ScoopDto>? Scoops { get; init; }

    public IReadOnlyList<PotDto>? Pots { get; init; }

    public IReadOnlyList<FeedDto>? Feeds { get; init; }

    [Description("Reports of the waters this grower uses.")]
    public IReadOnlyList<WaterDto>? Waters { get; init; }

    [Description("Rules the grower changed: rule id to setting.")]
    public IReadOnlyDictionary<string, string>? RuleChanges { get; init; }

    public SettingsDto? Settings { get; init; }
}

[Description("Where the garden is.")]
public sealed record PlaceDto
{
    public string? Name { get; init; }

    [Description("Degrees, north positive.")]
    public double? Latitude { get; init; }

    [Description("Metres above sea level.")]
    public double? Elevation { get; init; }

    [Description("Large water is near and governs the air.")]
    public bool? Coast { get; init; }

    [Description("Twelve months of usual weather, January first.")]
    public IReadOnlyList<MonthDto>? Normals { get; init; }

    [Description("Named seasons; they win over what the normals suggest.")]
    public IReadOnlyList<SeasonDto>? Seasons { get; init; }
}

[Description("A month's usual weather.")]
public sealed record MonthDto
{
    [Description("Mean daily maximum, degrees Celsius.")]
    public double? MeanMax { get; init; }

    [Description("Mean daily minimum, degrees Celsius.")]
    public double? MeanMin { get; init; }

    [Description("Rain, mm a month.")]
    public double? Rain { get; init; }

    [Description("Days with rain in the month.")]
    public double? WetDays { get; init; }

    [Description("Mean wind at 2 m, m/s.")]
    public double? Wind { get; init; }

    [Description("Mean relative humidity, percent.")]
    public double? Humidity { get; init; }

    [Description("Mean solar radiation, MJ a square metre in a day.")]
    public double? Radiation { get; init; }
}

[Description("A stretch of the year, first and last day included; may wrap the year's end.")]
public sealed record SeasonDto
{
    [Description("growing, hot, rainy or resting.")]
    public string? Kind { get; init; }

    [Description("First day as MM-DD.")]
    public string? From { get; init; }

    [Description("Last day as MM-DD.")]
    public string? To { get; init; }
}

[Description("A measuring scoop with the grower's own calibrations.")]
public sealed record ScoopDto
{
    public string? Name { get; init; }

    [Description("Level volume, mL.")]
    public double? Volume { get; init; }

    [Description("Grams in a level scoop by material or feed id.")]
    public IReadOnlyDictionary<string, SpreadDto>? Calibrations { get; init; }
}

[Description("A figure with its spread.")]
public sealed record SpreadDto
{
    public double? Min { get; init; }

    public double? Typical { get; init; }

    public double? Max { get; init; }
}

[Description("How this grower likes to see and measure.")]
public sealed record SettingsDto
{
    [Description("ISO 4217 code, only printed.")]
    public string? Currency { get; init; }

    public bool? UsUnits { get; init; }

    [Description("Scale resolution, g.")]
    public double? ScaleStep { get; init; }

    [Description("Scoop used by default, by name; leave out to weigh.")]
    public string? Scoop { get; init; }

    [Description("Water used by default, by the id of one of waters; leave out for pure water.")]
    public string? Water { get; init; }
}
