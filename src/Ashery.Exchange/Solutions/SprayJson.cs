using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Cautions;
using Ashery.Exchange.Mix;
using Ashery.Solutions.Foliar;
using Ashery.Sources;

namespace Ashery.Exchange.Solutions;

/// <summary>The answer of <c>ashery spray --json</c>: a leaf spray against printed strengths.</summary>
/// <param name="Water">The water.</param>
/// <param name="Crop">Key of the crop, or null.</param>
/// <param name="Added">What is in it, g a litre.</param>
/// <param name="PH">pH of the spray.</param>
/// <param name="EcAt25C">mS/cm at 25 °C.</param>
/// <param name="OsmoticPotential">MPa, negative.</param>
/// <param name="Worst"><c>fine</c>, <c>mind</c> or <c>over</c>: the worst of the findings.</param>
/// <param name="Weaken">What to multiply all strengths by to come within the limits of the salts and the EC; 1 when they are.</param>
/// <param name="Findings">Each figure against its limit.</param>
/// <param name="Volume">How much to spray; null when neither pot nor plant was measured.</param>
/// <param name="Gates">When to spray and when not.</param>
/// <param name="Cautions">What to mind.</param>
public sealed record SprayJson(
    string Water,
    string? Crop,
    IReadOnlyList<CanAddedJson> Added,
    [property: JsonPropertyName("pH")] double PH,
    double EcAt25C,
    double OsmoticPotential,
    string Worst,
    double Weaken,
    IReadOnlyList<SprayFindingJson> Findings,
    SprayVolumeJson? Volume,
    IReadOnlyList<SprayGateJson> Gates,
    IReadOnlyList<string> Cautions)
{
    public static SprayJson From(SprayReport report)
    {
        var state = report.Can.State;
        return new(
            report.Request.WaterName, report.Request.Crop?.Id,
            [.. report.Request.Additions.Select(static a => new CanAddedJson(a.Material.Id, a.Material.Name, a.Grams))],
            state.PH, state.Ec25, state.OsmoticPotential, Level(report.Worst), report.Weaken,
            [.. report.Findings.Select(static f => new SprayFindingJson(
                f.What, Level(f.Level), f.Value, f.Limit, f.Unit, f.Words, f.SourceId is { } id ? SourceIndex.Default.Cite(id) : null, How(f.Provenance),
                [.. f.Beside.Select(static b => new SprayBesideJson(b.GramsPerLitre, b.From, b.Words, SourceIndex.Default.Cite(b.SourceId), How(b.Provenance)))]))],
            report.Volume is { } v ? new(v.MillilitresPerPot, v.Litres, v.Basis) : null,
            [.. report.Gates.Select(static g => new SprayGateJson(g.RuleId, g.Words, g.Holds))],
            [.. report.Cautions.Select(static id => CautionIndex.Default.Find(id)!.Words)]);
    }

    /// <summary>The JSON text, written field by field as <see cref="MixJsonText"/> explains.</summary>
    public static string Write(SprayReport report) => JsonFields.Text(json => Write(json, From(report)));

    private static string Level(SprayLevel level) => level switch { SprayLevel.Fine => "fine", SprayLevel.Mind => "mind", _ => "over" };

    private static string How(Provenance provenance) => provenance switch
    {
        Provenance.Seen => "seen",
        Provenance.Computed => "computed",
        Provenance.CommonPractice => "common practice, no source",
        _ => "from memory",
    };

    private static void Write(Utf8JsonWriter json, SprayJson spray)
    {
        json.WriteStartObject();
        json.WriteString("water", spray.Water);
        json.WriteString("crop", spray.Crop);
        json.WriteStartArray("added");
        foreach (var added in spray.Added)
        {
            json.WriteStartObject();
            json.WriteString("id", added.Id);
            json.WriteString("name", added.Name);
            json.WriteNumber("grams", added.Grams);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("pH", spray.PH);
        json.WriteNumber("ecAt25C", spray.EcAt25C);
        json.WriteNumber("osmoticPotential", spray.OsmoticPotential);
        json.WriteString("worst", spray.Worst);
        json.WriteNumber("weaken", spray.Weaken);
        json.WriteStartArray("findings");
        foreach (var finding in spray.Findings)
        {
            Write(json, finding);
        }

        json.WriteEndArray();
        if (spray.Volume is { } volume)
        {
            json.WriteStartObject("volume");
            json.WriteNumber("millilitresPerPot", volume.MillilitresPerPot);
            json.WriteNumber("litres", volume.Litres);
            json.WriteString("basis", volume.Basis);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("volume");
        }

        json.WriteStartArray("gates");
        foreach (var gate in spray.Gates)
        {
            json.WriteStartObject();
            json.WriteString("rule", gate.Rule);
            json.WriteString("words", gate.Words);
            json.WritePropertyName("holds");
            if (gate.Holds is { } holds)
            {
                json.WriteBooleanValue(holds);
            }
            else
            {
                json.WriteNullValue();
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Strings("cautions", spray.Cautions);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SprayFindingJson finding)
    {
        json.WriteStartObject();
        json.WriteString("what", finding.What);
        json.WriteString("level", finding.Level);
        json.WriteNumber("value", finding.Value);
        json.Number("limit", finding.Limit);
        json.WriteString("unit", finding.Unit);
        json.WriteString("words", finding.Words);
        json.WriteString("source", finding.Source);
        json.WriteString("how", finding.How);
        json.WriteStartArray("beside");
        foreach (var beside in finding.Beside)
        {
            json.WriteStartObject();
            json.WriteNumber("gramsPerLitre", beside.GramsPerLitre);
            json.Number("from", beside.From);
            json.WriteString("words", beside.Words);
            json.WriteString("source", beside.Source);
            json.WriteString("how", beside.How);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}

/// <summary>One figure against a printed one.</summary>
/// <param name="What">Salt or property.</param>
/// <param name="Level"><c>fine</c>, <c>mind</c> or <c>over</c>.</param>
/// <param name="Value">Of this spray.</param>
/// <param name="Limit">Printed; null where there is none.</param>
/// <param name="Unit">Of both.</param>
/// <param name="Words">What it means.</param>
/// <param name="Source">Citation; null where nobody says so.</param>
/// <param name="How">How the limit came into the data.</param>
/// <param name="Beside">Other printed figures for the same salt.</param>
public sealed record SprayFindingJson(
    string What, string Level, double Value, double? Limit, string Unit, string Words, string? Source, string How, IReadOnlyList<SprayBesideJson> Beside);

/// <summary>Another printed figure.</summary>
/// <param name="GramsPerLitre">g a litre.</param>
/// <param name="From">Low end of a range, or null.</param>
/// <param name="Words">What it is for.</param>
/// <param name="Source">Citation.</param>
/// <param name="How">How it came into the data.</param>
public sealed record SprayBesideJson(double GramsPerLitre, double? From, string Words, string Source, string How);

/// <summary>How much to spray.</summary>
/// <param name="MillilitresPerPot">mL a pot.</param>
/// <param name="Litres">For all pots.</param>
/// <param name="Basis">What it was reckoned from.</param>
public sealed record SprayVolumeJson(double MillilitresPerPot, double Litres, string Basis);

/// <summary>A rule of when.</summary>
/// <param name="Rule">Key of the rule.</param>
/// <param name="Words">What it says.</param>
/// <param name="Holds">True when it says not now; null when it depends on what was not said.</param>
public sealed record SprayGateJson(string Rule, string Words, bool? Holds);
