using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;
using Ashery.Solutions.Waters;
using Ashery.Sources;

namespace Ashery.Exchange.Waters;

/// <summary>The answer of <c>ashery water FILE --json</c>.</summary>
/// <remarks>Units: mg/L of the ion, meq/L, mg/L CaCO3 for hardness and alkalinity, mS/cm at 25 °C, SAR in (meq/L)^½.</remarks>
public sealed record WaterJson
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>As reported; null when not.</summary>
    [JsonPropertyName("pH")]
    public required double? PH { get; init; }

    /// <summary>mS/cm at 25 °C, as measured; null when not.</summary>
    public required double? MeasuredEc { get; init; }

    /// <summary>mS/cm at 25 °C by the model.</summary>
    public required WaterRangeJson ComputedEc { get; init; }

    /// <summary>What the one says about the other.</summary>
    public required string? EcWords { get; init; }

    public required WaterRangeJson Hardness { get; init; }

    public required WaterRangeJson Alkalinity { get; init; }

    public required WaterRangeJson? Sar { get; init; }

    public required double? AdjustedSar { get; init; }

    /// <summary>meq/L beyond calcium and magnesium.</summary>
    public required double ResidualAlkalinity { get; init; }

    /// <summary>Dry residue, mg/L.</summary>
    public required double Solids { get; init; }

    /// <summary>mmol/L of inorganic carbon.</summary>
    public required double InorganicCarbon { get; init; }

    public required BalanceJson Balance { get; init; }

    /// <summary>All ions, what was put in included: cations, then anions, largest first.</summary>
    public required IReadOnlyList<WaterIonJson> Ions { get; init; }

    public required IReadOnlyList<WaterEstimateJson> Estimates { get; init; }

    /// <summary>Whom the findings are for.</summary>
    public required string JudgedFor { get; init; }

    public required string JudgedBy { get; init; }

    public required IReadOnlyList<WaterFindingJson> Findings { get; init; }

    public required IReadOnlyList<ProblemJson> Problems { get; init; }

    /// <summary>The JSON text of a reading.</summary>
    public static string Write(WaterReading reading, WaterNeeds needs) => AsheryJson.Write(Of(reading, needs), WaterJsonContext.Shared.WaterJson);

    /// <summary>The shape of a reading.</summary>
    public static WaterJson Of(WaterReading reading, WaterNeeds needs) => new()
    {
        Id = reading.Report.Id,
        Name = reading.Report.Name,
        PH = reading.Report.PH,
        MeasuredEc = reading.MeasuredEc,
        ComputedEc = WaterRangeJson.Of(reading.ComputedEc),
        EcWords = reading.EcWords,
        Hardness = WaterRangeJson.Of(reading.Hardness),
        Alkalinity = WaterRangeJson.Of(reading.Alkalinity),
        Sar = reading.Sar is { } sar ? WaterRangeJson.Of(sar) : null,
        AdjustedSar = reading.AdjustedSar,
        ResidualAlkalinity = reading.ResidualAlkalinity,
        Solids = reading.Solids,
        InorganicCarbon = reading.Water.InorganicCarbon * 1000,
        Balance = new(reading.Balance.CationSum, reading.Balance.AnionSum, reading.Balance.Percent, reading.Balance.Verdict, reading.Balance.Words),
        Ions = [.. reading.Sides.Cations.Concat(reading.Sides.Anions).Select(i => new WaterIonJson(i.Symbol, i.Quantity, i.Symbol == "H" ? null : reading.MgPerLitre(i.Quantity), i.Charge, i.Estimated))],
        Estimates = [.. reading.Estimates.Select(static e => new WaterEstimateJson(e.Quantity, WaterRangeJson.Of(e.MgPerLitre), e.How))],
        JudgedFor = needs.For,
        JudgedBy = needs.Why,
        Findings = [.. WaterSuitability.Judge(reading, needs).Select(WaterFindingJson.Of)],
        Problems = ProblemJson.From(reading.Notes),
    };
}

/// <summary>A figure and its range.</summary>
public sealed record WaterRangeJson(double Typical, double Low, double High)
{
    internal static WaterRangeJson Of(WaterRange range) => new(range.Typical, range.Low, range.High);
}

/// <summary>Cations against anions as reported.</summary>
/// <param name="Cations">meq/L.</param>
/// <param name="Anions">meq/L.</param>
/// <param name="Percent">100 (cations − anions)/(cations + anions).</param>
/// <param name="Verdict">closes, closedByEstimate or off.</param>
/// <param name="Words">What it means.</param>
public sealed record BalanceJson(
    double Cations, double Anions, double Percent, [property: JsonConverter(typeof(WordConverter<BalanceVerdict>))] BalanceVerdict Verdict, string Words);

/// <summary>One ion.</summary>
/// <param name="Symbol">As reports print it; H for free acid.</param>
/// <param name="Name">Plain name.</param>
/// <param name="MgPerLitre">mg/L of the ion, of CaCO3 for alkalinity.</param>
/// <param name="MeqPerLitre">Charge.</param>
/// <param name="Estimated">Put in, not reported.</param>
public sealed record WaterIonJson(string Symbol, string Name, double? MgPerLitre, double MeqPerLitre, bool Estimated);

/// <summary>Something the report does not say.</summary>
public sealed record WaterEstimateJson(string Name, WaterRangeJson MgPerLitre, string How);

/// <summary>One figure, judged.</summary>
public sealed record WaterFindingJson
{
    public required string Figure { get; init; }

    public required string Name { get; init; }

    public required string Unit { get; init; }

    public required WaterRangeJson Value { get; init; }

    public required bool Estimated { get; init; }

    [JsonConverter(typeof(WordConverter<WaterLevel>))]
    public required WaterLevel Level { get; init; }

    /// <summary>Level at the far end of the range.</summary>
    [JsonConverter(typeof(WordConverter<WaterLevel>))]
    public required WaterLevel Worst { get; init; }

    public required WaterLimitJson? Watch { get; init; }

    public required WaterLimitJson? Trouble { get; init; }

    public required string Effect { get; init; }

    public required string Remedy { get; init; }

    /// <summary>Part to replace with rain, 0 to 1; null where not needed or no help.</summary>
    public required double? RainShare { get; init; }

    internal static WaterFindingJson Of(WaterFinding finding) => new()
    {
        Figure = finding.Kind.Id,
        Name = finding.Kind.Name,
        Unit = finding.Kind.Unit,
        Value = WaterRangeJson.Of(finding.Value),
        Estimated = finding.Estimated,
        Level = finding.Level,
        Worst = finding.Worst,
        Watch = WaterLimitJson.Of(finding.Watch),
        Trouble = WaterLimitJson.Of(finding.Trouble),
        Effect = finding.Kind.Effect,
        Remedy = finding.Kind.Remedy,
        RainShare = finding.RainShare,
    };
}

/// <summary>A limit with its source.</summary>
public sealed record WaterLimitJson(double Value, string Source, [property: JsonConverter(typeof(WordConverter<Provenance>))] Provenance Provenance, string? Note)
{
    internal static WaterLimitJson? Of(WaterLimit? limit) => limit is null ? null : new(limit.Value, SourceIndex.Default.Cite(limit.SourceId), limit.Provenance, limit.Note);
}

/// <summary>The answer of <c>ashery water --json</c> without a name: the waters that ship.</summary>
public sealed record WaterListJson(IReadOnlyList<WaterListItemJson> Waters)
{
    /// <summary>The JSON text of the list.</summary>
    public static string Write() => AsheryJson.Write(Of(), WaterJsonContext.Shared.WaterListJson);

    /// <summary>The waters that ship.</summary>
    public static WaterListJson Of() => new([.. SourceWaters.Default.All.Select(static w => new WaterListItemJson(
        w.Report.Id, w.Report.Name, w.About, w.Reading.Ec, w.Reading.Hardness.Typical, w.Reading.Alkalinity.Typical, w.Reading.Solution.PH, SourceIndex.Default.Cite(w.SourceId)))]);
}

/// <summary>One of them; units as in <see cref="WaterJson"/>.</summary>
public sealed record WaterListItemJson(
    string Id, string Name, string About, double Ec, double Hardness, double Alkalinity, [property: JsonPropertyName("pH")] double PH, string Source);

/// <summary>Generated descriptions of the records of <c>water</c>.</summary>
[JsonSerializable(typeof(WaterJson))]
[JsonSerializable(typeof(WaterListJson))]
public sealed partial class WaterJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static WaterJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
