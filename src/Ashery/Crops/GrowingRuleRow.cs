using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Crops;

/// <summary>Turns a row of data/rules/*.json into a <see cref="GrowingRule"/>.</summary>
internal static class GrowingRuleRow
{
    public static GrowingRule Read(JsonElement row) => new()
    {
        Id = row.Text("id"),
        Topic = row.Text("topic"),
        Kind = Kind(row.Text("kind")),
        Statement = row.Text("statement"),
        Reason = row.TextOrNull("reason"),
        Strength = row.Text("strength") switch
        {
            "soft" => RuleStrength.Soft,
            "hard" => RuleStrength.Hard,
            var word => throw DataRows.Unknown(word),
        },
        IsOn = row.Flag("onByDefault"),
        AppliesTo = row.Texts("appliesTo"),
        Season = row.TextOrNull("season"),
        Choice = row.TextOrNull("choice"),
        Choices = row.Texts("choices"),
        Parameters = Parameters(row),
        SourceId = row.Text("source"),
        Provenance = row.Provenance(),
        Differs = row.TextOrNull("differs"),
        Note = row.TextOrNull("note"),
    };

    private static List<RuleParameter> Parameters(JsonElement row)
    {
        var parameters = new List<RuleParameter>();
        if (row.TryGetProperty("parameters", out var list))
        {
            foreach (var p in list.EnumerateArray())
            {
                parameters.Add(new(p.Text("name"), p.Number("value"), p.Text("unit"), p.Number("min"), p.Number("max"), p.TextOrNull("note")));
            }
        }

        return parameters;
    }

    private static RuleKind Kind(string word) => word switch
    {
        "seasonStop" => RuleKind.SeasonStop,
        "seasonReduce" => RuleKind.SeasonReduce,
        "interval" => RuleKind.Interval,
        "cap" => RuleKind.Cap,
        "gate" => RuleKind.Gate,
        "factor" => RuleKind.Factor,
        "threshold" => RuleKind.Threshold,
        "advice" => RuleKind.Advice,
        _ => throw DataRows.Unknown(word),
    };
}
