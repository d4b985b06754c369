using System.ComponentModel;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Trials;

// The shape of a trial file. Everything may be missing as far as the reader of JSON is concerned, so that what is missing is told with its path.

[Description("A trial of feeds on a grower's own pots: what is compared, what is to be seen, the pots, and, once drawn, which pot gets what.")]
public sealed record TrialDto
{
    [Description("Format and edition of this file: ashery-trial/1.")]
    public string? Format { get; init; }

    public string? Name { get; init; }

    public TrialMeasureDto? Measure { get; init; }

    [Description("Two or more feeds, one of them the control if there is one.")]
    public IReadOnlyList<TreatmentDto>? Feeds { get; init; }

    public TrialWishDto? Wish { get; init; }

    [Description("Pots that may take part.")]
    public IReadOnlyList<TrialPotDto>? Pots { get; init; }

    [Description("Of the draw; the same seed gives the same layout.")]
    public int? Seed { get; init; }

    [Description("True when tags and record sheet show codes in place of feeds.")]
    public bool Blind { get; init; }

    [Description("How often the trial is judged, the end included; 1 when left out.")]
    public int? Looks { get; init; }

    [Description("How the chance of a false alarm is spent over looks: oBrienFleming (usual) or pocock.")]
    public string? Spending { get; init; }

    [Description("Which pot gets what; left out before the draw.")]
    public IReadOnlyList<TrialPlaceDto>? Layout { get; init; }

    [Description("What was written down, when it is kept in the same file.")]
    public IReadOnlyList<TrialReadingDto>? Results { get; init; }
}

[Description("A figure from a pot.")]
public sealed record TrialReadingDto
{
    public string? Pot { get; init; }

    [Description("YYYY-MM-DD; left out when pots were looked at once.")]
    public string? Date { get; init; }

    public double? Value { get; init; }
}

[Description("What is counted or measured on each pot.")]
public sealed record TrialMeasureDto
{
    [Description("count or measurement.")]
    public string? Kind { get; init; }

    [Description("Open flowers, height, dry mass.")]
    public string? Name { get; init; }

    [Description("Of a measurement: cm, g.")]
    public string? Unit { get; init; }

    [Description("What stands for a pot looked at on several days: sum (usual for counts), mean (usual for measurements), last, or slope a day.")]
    public string? Summary { get; init; }
}

[Description("A feed of the trial.")]
public sealed record TreatmentDto
{
    [Description("Short key; made from the name when left out.")]
    public string? Id { get; init; }

    public string? Name { get; init; }

    [Description("True for the one that the others are compared with.")]
    public bool Control { get; init; }

    [Description("Code on the tags of a blind trial.")]
    public string? Code { get; init; }

    [Description("Levels of factors, when the feeds are combinations: { \"N\": \"with\", \"K\": \"without\" }.")]
    public IReadOnlyDictionary<string, string>? Factors { get; init; }
}

[Description("What is to be seen, in percent.")]
public sealed record TrialWishDto
{
    [Description("Of counts: the control's, a pot. 20 when left out.")]
    public double? Mean { get; init; }

    [Description("More (or, below 0, less) than the control, percent. 30 when left out.")]
    public double? Difference { get; init; }

    [Description("How much pots fed alike differ, percent of their mean; of counts on top of the scatter of counting. 25 when left out.")]
    public double? Spread { get; init; }

    [Description("Chance to see the difference, percent. 80 when left out.")]
    public double? Power { get; init; }

    [Description("Chance of a false alarm, percent. 5 when left out.")]
    public double? Alpha { get; init; }
}

[Description("A pot.")]
public sealed record TrialPotDto
{
    [Description("As on its tag.")]
    public string? Id { get; init; }

    public string? Name { get; init; }

    public double? Litres { get; init; }

    [Description("Where it stands.")]
    public string? Place { get; init; }
}

[Description("A pot with its block and feed.")]
public sealed record TrialPlaceDto
{
    public string? Pot { get; init; }

    [Description("From 1; left out in a trial without blocks.")]
    public int? Block { get; init; }

    [Description("Key of a feed.")]
    public string? Feed { get; init; }
}

/// <summary>Generated descriptions of the records of trials.</summary>
[JsonSerializable(typeof(TrialDto))]
[JsonSerializable(typeof(TrialPlanJson))]
[JsonSerializable(typeof(TrialReportJson))]
public sealed partial class TrialJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static TrialJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));

    /// <summary>The same, with what is not said left out: for files.</summary>
    internal static TrialJsonContext Files { get; } = new(new JsonSerializerOptions(AsheryJson.Options) { DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingDefault });
}
