using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Cautions;
using Ashery.Exchange.Json;
using Ashery.Exchange.Mix;
using Ashery.Solutions.Tanks;

namespace Ashery.Exchange.Solutions;

/// <summary>The answer of <c>ashery tanks --json</c>: a feed shared over stock tanks.</summary>
/// <param name="Water">The water the stocks are made with.</param>
/// <param name="Ratio">Parts of feed from one part of stock, as asked.</param>
/// <param name="Coldest">Coldest the tanks get, °C.</param>
/// <param name="Clear">Clear at that ratio, with the safety margin.</param>
/// <param name="MostRatio">Highest ratio at which every tank is clear by the model.</param>
/// <param name="AdvisedRatio">The same with the margin.</param>
/// <param name="MostRatioInOne">Highest ratio with everything in one tank; 0 when it cannot be.</param>
/// <param name="MostRatioDivided">Highest ratio with a material in two tanks; null where that gains nothing.</param>
/// <param name="Limiting">What comes out first above the highest ratio; null when nothing does.</param>
/// <param name="Tanks">The tanks.</param>
/// <param name="Certificate">How sure the split is the best.</param>
/// <param name="Cautions">What to mind.</param>
/// <param name="Problems">Warnings and notes.</param>
public sealed record TanksJson(
    string Water,
    double Ratio,
    double Coldest,
    bool Clear,
    double MostRatio,
    double AdvisedRatio,
    double MostRatioInOne,
    double? MostRatioDivided,
    TankMarginJson? Limiting,
    IReadOnlyList<TankJson> Tanks,
    TankCertificateJson Certificate,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<ProblemJson> Problems)
{
    public static TanksJson From(TankReport report) => new(
        report.Request.WaterName, report.Request.Ratio, report.Request.Coldest, report.IsClear, report.MostRatio, report.AdvisedRatio, report.MostRatioInOne, report.MostRatioDivided,
        report.Limiting is { } limiting ? Margin(limiting) : null,
        [.. report.Tanks.Select(static tank => new TankJson(
            tank.Name,
            [.. tank.Parts.Select(static p => new TankPartJson(p.Material.Id, p.Material.Name, p.Share, p.GramsPerLitre, p.Limit is { } most && double.IsFinite(most) ? most : null))],
            tank.MostRatio, tank.Solution.PH, tank.Solution.IonicStrength, tank.WaterPerLitre,
            [.. tank.Margins.Select(Margin)], [.. tank.Slow.Select(Margin)]))],
        new(report.Certificate.Splits, report.Certificate.Judged, report.Certificate.Speciations, report.Certificate.Divided),
        [.. report.Cautions.Select(static id => CautionIndex.Default.Find(id)!.Words)],
        ProblemJson.From(report.Notes));

    /// <summary>The JSON text, written field by field as <see cref="MixJsonText"/> explains.</summary>
    public static string Write(TankReport report) => JsonFields.Text(json => Write(json, From(report)));

    private static TankMarginJson Margin(TankMargin margin) => new(margin.Name, margin.Celsius, margin.Index);

    private static void Write(Utf8JsonWriter json, TanksJson all)
    {
        json.WriteStartObject();
        json.WriteString("water", all.Water);
        json.WriteNumber("ratio", all.Ratio);
        json.WriteNumber("coldest", all.Coldest);
        json.WriteBoolean("clear", all.Clear);
        json.WriteNumber("mostRatio", all.MostRatio);
        json.WriteNumber("advisedRatio", all.AdvisedRatio);
        json.WriteNumber("mostRatioInOne", all.MostRatioInOne);
        json.Number("mostRatioDivided", all.MostRatioDivided);
        json.WritePropertyName("limiting");
        if (all.Limiting is { } limiting)
        {
            Write(json, limiting);
        }
        else
        {
            json.WriteNullValue();
        }

        json.WriteStartArray("tanks");
        foreach (var tank in all.Tanks)
        {
            Write(json, tank);
        }

        json.WriteEndArray();
        json.WriteStartObject("certificate");
        json.WriteNumber("splits", all.Certificate.Splits);
        json.WriteNumber("judged", all.Certificate.Judged);
        json.WriteNumber("speciations", all.Certificate.Speciations);
        json.WriteBoolean("divided", all.Certificate.Divided);
        json.WriteEndObject();
        json.Strings("cautions", all.Cautions);
        json.Problems("problems", all.Problems);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, TankJson tank)
    {
        json.WriteStartObject();
        json.WriteString("name", tank.Name);
        json.WriteStartArray("parts");
        foreach (var part in tank.Parts)
        {
            json.WriteStartObject();
            json.WriteString("id", part.Id);
            json.WriteString("name", part.Name);
            json.WriteNumber("share", part.Share);
            json.WriteNumber("gramsPerLitre", part.GramsPerLitre);
            json.Number("limit", part.Limit);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("mostRatio", tank.MostRatio);
        json.WriteNumber("pH", tank.PH);
        json.WriteNumber("ionicStrength", tank.IonicStrength);
        json.WriteNumber("waterPerLitre", tank.WaterPerLitre);
        Margins(json, "margins", tank.Margins);
        Margins(json, "slow", tank.Slow);
        json.WriteEndObject();
    }

    private static void Margins(Utf8JsonWriter json, string name, IReadOnlyList<TankMarginJson> margins)
    {
        json.WriteStartArray(name);
        foreach (var margin in margins)
        {
            Write(json, margin);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, TankMarginJson margin)
    {
        json.WriteStartObject();
        json.WriteString("name", margin.Name);
        json.WriteNumber("celsius", margin.Celsius);
        json.WriteNumber("index", margin.Index);
        json.WriteEndObject();
    }
}

/// <summary>One tank.</summary>
/// <param name="Name">Letter.</param>
/// <param name="Parts">What is in it, in the order of dissolving.</param>
/// <param name="MostRatio">Highest ratio at which it is clear.</param>
/// <param name="PH">pH of the stock at the coldest.</param>
/// <param name="IonicStrength">mol/kg; above 0.5 figures are an order of magnitude.</param>
/// <param name="WaterPerLitre">kg of water in a litre of stock.</param>
/// <param name="Margins">How near each solid is to coming out.</param>
/// <param name="Slow">Slow solids past their limit.</param>
public sealed record TankJson(
    string Name,
    IReadOnlyList<TankPartJson> Parts,
    double MostRatio,
    [property: JsonPropertyName("pH")] double PH,
    double IonicStrength,
    double WaterPerLitre,
    IReadOnlyList<TankMarginJson> Margins,
    IReadOnlyList<TankMarginJson> Slow);

/// <summary>A material in a tank.</summary>
/// <param name="Id">Key or formula.</param>
/// <param name="Name">As a grower says it.</param>
/// <param name="Share">Part of the feed's amount, 1 for all.</param>
/// <param name="GramsPerLitre">g in a litre of stock.</param>
/// <param name="Limit">g alone in a litre of water at the coldest; null where no table says or where it melts in its own water.</param>
public sealed record TankPartJson(string Id, string Name, double Share, double GramsPerLitre, double? Limit);

/// <summary>How near a solid is.</summary>
/// <param name="Name">Salt or mineral.</param>
/// <param name="Celsius">Where it is nearest.</param>
/// <param name="Index">Above 0 it comes out.</param>
public sealed record TankMarginJson(string Name, double Celsius, double Index);

/// <summary>How sure the split is the best.</summary>
/// <param name="Splits">Ways of sharing whole materials over the tanks.</param>
/// <param name="Judged">Of which judged as full tanks; the others hold a pair that limits them more.</param>
/// <param name="Speciations">Solutions computed.</param>
/// <param name="Divided">A material was then shared over two tanks, by quarters: a search, not a proof.</param>
public sealed record TankCertificateJson(double Splits, int Judged, int Speciations, bool Divided);
