using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Cautions;
using Ashery.Exchange.Json;
using Ashery.Exchange.Mix;
using Ashery.Solutions;
using Ashery.Solutions.Acids;

namespace Ashery.Exchange.Solutions;

/// <summary>The answer of <c>ashery acid --json</c>: how much acid, and what it does. A litre is taken as a kilogram.</summary>
/// <param name="Water">The water it goes into.</param>
/// <param name="Celsius">°C.</param>
/// <param name="Acid"><c>nitric</c>, <c>phosphoric</c>, <c>sulfuric</c> or <c>citric</c>.</param>
/// <param name="Percent">Strength of the bottle, percent by mass.</param>
/// <param name="Density">Of the bottle, g/mL at 20 °C; null for crystals.</param>
/// <param name="Dose">How much.</param>
/// <param name="Stock">What an injector draws from; null without one.</param>
/// <param name="Nutrients">What it brings, mg/L.</param>
/// <param name="Before">The water as it comes.</param>
/// <param name="Mixed">Just mixed, no carbon dioxide lost.</param>
/// <param name="Standing">After standing in the air.</param>
/// <param name="PHWithTenthLess">pH with a tenth less acid.</param>
/// <param name="PHWithTenthMore">pH with a tenth more acid.</param>
/// <param name="Curve">pH against acid.</param>
/// <param name="Cautions">What to mind.</param>
/// <param name="Problems">Warnings and notes.</param>
public sealed record AcidJson(
    string Water,
    double Celsius,
    string Acid,
    double Percent,
    double? Density,
    AcidDoseJson Dose,
    AcidStockJson? Stock,
    AcidNutrientsJson Nutrients,
    AcidStageJson Before,
    AcidStageJson Mixed,
    AcidStageJson Standing,
    [property: JsonPropertyName("pHWithTenthLess")] double PHWithTenthLess,
    [property: JsonPropertyName("pHWithTenthMore")] double PHWithTenthMore,
    IReadOnlyList<AcidPointJson> Curve,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<ProblemJson> Problems)
{
    public static AcidJson From(AcidReport report, string water)
    {
        var a = report.Amount;
        var n = report.Nutrients;
        var bottle = report.Request.Bottle;
        return new(
            water, report.Request.Water.Celsius, bottle.Acid.Id, bottle.Strength * 100, bottle.Density,
            new(a.MolesPerLitre * 1000, a.PureGramsPerLitre, a.GramsPerLitre, a.MillilitresPerLitre, a.Litres, a.GramsPerCan, a.MillilitresPerCan, a.GramsPer100Litres, a.MillilitresPer100Litres),
            report.Stock is { } s ? new(s.Ratio, s.GramsPerLitreOfStock, s.MillilitresPerLitreOfStock, s.StockStrength * 100) : null,
            new(n.N, n.P, n.P2O5, n.S, n.SO4),
            Stage(report.Before), Stage(report.Mixed), Stage(report.Standing),
            report.PhForTenth.Less, report.PhForTenth.More,
            [.. report.Curve.Select(static p => new AcidPointJson(p.GramsPerLitre, p.Closed, p.Open))],
            [.. report.Cautions.Select(static id => CautionIndex.Default.Find(id)!.Words)],
            ProblemJson.From(report.Notes));
    }

    /// <summary>The JSON text, written field by field as <see cref="MixJsonText"/> explains.</summary>
    public static string Write(AcidReport report, string water) => JsonFields.Text(json => Write(json, From(report, water)));

    private static AcidStageJson Stage(AcidStage stage)
    {
        var saturation = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var index in stage.Saturation)
        {
            saturation.Add(index.Mineral.Id, index.Index);
        }

        return new(stage.PH, stage.EcAt25, stage.Alkalinity, stage.Bicarbonate, saturation);
    }

    private static void Write(Utf8JsonWriter json, AcidJson acid)
    {
        json.WriteStartObject();
        json.WriteString("water", acid.Water);
        json.WriteNumber("celsius", acid.Celsius);
        json.WriteString("acid", acid.Acid);
        json.WriteNumber("percent", acid.Percent);
        json.Number("density", acid.Density);
        json.WriteStartObject("dose");
        json.WriteNumber("millimolesPerLitre", acid.Dose.MillimolesPerLitre);
        json.WriteNumber("pureGramsPerLitre", acid.Dose.PureGramsPerLitre);
        json.WriteNumber("gramsPerLitre", acid.Dose.GramsPerLitre);
        json.Number("millilitresPerLitre", acid.Dose.MillilitresPerLitre);
        json.WriteNumber("litres", acid.Dose.Litres);
        json.WriteNumber("gramsPerCan", acid.Dose.GramsPerCan);
        json.Number("millilitresPerCan", acid.Dose.MillilitresPerCan);
        json.WriteNumber("gramsPer100Litres", acid.Dose.GramsPer100Litres);
        json.Number("millilitresPer100Litres", acid.Dose.MillilitresPer100Litres);
        json.WriteEndObject();
        if (acid.Stock is { } stock)
        {
            json.WriteStartObject("stock");
            json.WriteNumber("ratio", stock.Ratio);
            json.WriteNumber("gramsPerLitre", stock.GramsPerLitre);
            json.Number("millilitresPerLitre", stock.MillilitresPerLitre);
            json.WriteNumber("percent", stock.Percent);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("stock");
        }

        json.WriteStartObject("nutrients");
        json.WriteNumber("n", acid.Nutrients.N);
        json.WriteNumber("p", acid.Nutrients.P);
        json.WriteNumber("p2O5", acid.Nutrients.P2O5);
        json.WriteNumber("s", acid.Nutrients.S);
        json.WriteNumber("sO4", acid.Nutrients.SO4);
        json.WriteEndObject();
        Stage(json, "before", acid.Before);
        Stage(json, "mixed", acid.Mixed);
        Stage(json, "standing", acid.Standing);
        json.WriteNumber("pHWithTenthLess", acid.PHWithTenthLess);
        json.WriteNumber("pHWithTenthMore", acid.PHWithTenthMore);
        json.WriteStartArray("curve");
        foreach (var point in acid.Curve)
        {
            json.WriteStartObject();
            json.WriteNumber("gramsPerLitre", point.GramsPerLitre);
            json.WriteNumber("closed", point.Closed);
            json.WriteNumber("open", point.Open);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Strings("cautions", acid.Cautions);
        json.Problems("problems", acid.Problems);
        json.WriteEndObject();
    }

    private static void Stage(Utf8JsonWriter json, string name, AcidStageJson stage)
    {
        json.WriteStartObject(name);
        json.WriteNumber("pH", stage.PH);
        json.WriteNumber("ecAt25C", stage.EcAt25C);
        json.WriteNumber("alkalinity", stage.Alkalinity);
        json.WriteNumber("bicarbonate", stage.Bicarbonate);
        json.Numbers("saturation", stage.Saturation);
        json.WriteEndObject();
    }
}

/// <summary>How much acid.</summary>
/// <param name="MillimolesPerLitre">mmol of pure acid a litre of water.</param>
/// <param name="PureGramsPerLitre">g of pure acid a litre.</param>
/// <param name="GramsPerLitre">g from the bottle a litre.</param>
/// <param name="MillilitresPerLitre">mL from the bottle a litre; null for crystals.</param>
/// <param name="Litres">L of the can.</param>
/// <param name="GramsPerCan">g from the bottle for it.</param>
/// <param name="MillilitresPerCan">mL from the bottle for it; null for crystals.</param>
/// <param name="GramsPer100Litres">g from the bottle for 100 L.</param>
/// <param name="MillilitresPer100Litres">mL from the bottle for 100 L; null for crystals.</param>
public sealed record AcidDoseJson(
    double MillimolesPerLitre,
    double PureGramsPerLitre,
    double GramsPerLitre,
    double? MillilitresPerLitre,
    double Litres,
    double GramsPerCan,
    double? MillilitresPerCan,
    double GramsPer100Litres,
    double? MillilitresPer100Litres);

/// <summary>The stock an injector draws from.</summary>
/// <param name="Ratio">Parts of water to one of stock.</param>
/// <param name="GramsPerLitre">g from the bottle in a litre of stock.</param>
/// <param name="MillilitresPerLitre">mL from the bottle; null for crystals.</param>
/// <param name="Percent">Pure acid, g in 100 mL of stock.</param>
public sealed record AcidStockJson(double Ratio, double GramsPerLitre, double? MillilitresPerLitre, double Percent);

/// <summary>What the acid brings, mg/L.</summary>
public sealed record AcidNutrientsJson(double N, double P, double P2O5, double S, double SO4);

/// <summary>The water at one moment.</summary>
/// <param name="PH">pH.</param>
/// <param name="EcAt25C">mS/cm at 25 °C.</param>
/// <param name="Alkalinity">mg/L as CaCO3, every base counted.</param>
/// <param name="Bicarbonate">mg/L as CaCO3 that is hydrogen carbonate and carbonate.</param>
/// <param name="Saturation">Index of each solid whose parts are there: above 0 it may come out.</param>
public sealed record AcidStageJson([property: JsonPropertyName("pH")] double PH, double EcAt25C, double Alkalinity, double Bicarbonate, IReadOnlyDictionary<string, double> Saturation);

/// <summary>A point of the curve.</summary>
/// <param name="GramsPerLitre">g from the bottle a litre.</param>
/// <param name="Closed">pH just mixed.</param>
/// <param name="Open">pH after standing.</param>
public sealed record AcidPointJson(double GramsPerLitre, double Closed, double Open);
