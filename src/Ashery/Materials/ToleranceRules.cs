using System.Text.Json;
using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Materials;

/// <summary>The rules of data/nutrients/label-tolerances.json.</summary>
public static class ToleranceRules
{
    private static readonly Lazy<IReadOnlyList<ToleranceRule>> Rules = new(Load);

    public static IReadOnlyList<ToleranceRule> All => Rules.Value;

    /// <summary>The rule with this key; null when there is none.</summary>
    public static ToleranceRule? Find(string id) => All.FirstOrDefault(r => r.Id == id);

    private static List<ToleranceRule> Load()
    {
        using var document = JsonDocument.Parse(EmbeddedData.Read("data/nutrients/label-tolerances.json"));
        var rules = new List<ToleranceRule>();
        foreach (var rule in document.RootElement.GetProperty("rules").EnumerateArray())
        {
            var rows = new List<Allowance>();
            foreach (var row in rule.GetProperty("rows").EnumerateArray())
            {
                rows.Add(Row(row));
            }

            rules.Add(new ToleranceRule(
                RowJson.Text(rule, "id")!, RowJson.Text(rule, "name")!, RowJson.Text(rule, "note")!, rows, Sums(rule), Index(rule)));
        }

        return rules;
    }

    private static Allowance Row(JsonElement row) => new()
    {
        Nutrients = [.. row.GetProperty("nutrients").EnumerateArray().Select(static n => MaterialWords.Nutrient(n.GetString()!))],
        Materials = row.TryGetProperty("materials", out var ids) ? [.. ids.EnumerateArray().Select(static i => i.GetString()!)] : [],
        Above = RowJson.Number(row, "above") ?? -1,
        Points = RowJson.Number(row, "points") ?? 0,
        Share = RowJson.Number(row, "share") ?? 0,
        AtMost = RowJson.Number(row, "atMost") ?? double.PositiveInfinity,
        ExcessShare = RowJson.Number(row, "excessShare"),
        ExcessAtMost = RowJson.Number(row, "excessAtMost") ?? double.PositiveInfinity,
        OnOxide = row.TryGetProperty("oxide", out var oxide) && oxide.GetBoolean(),
        Guarantee = Numbers(row, "guarantee"),
        Allowed = Numbers(row, "allowed"),
        SourceId = RowJson.Text(row, "source")!,
        Provenance = RowJson.How(row),
    };

    private static IReadOnlyList<double> Numbers(JsonElement row, string key) =>
        row.TryGetProperty(key, out var list) ? [.. list.EnumerateArray().Select(static x => x.GetDouble())] : [];

    private static SumLimit? Sums(JsonElement rule) => rule.TryGetProperty("sums", out var s)
        ? new SumLimit(s.GetProperty("two").GetDouble(), s.GetProperty("three").GetDouble(), RowJson.Text(s, "source")!, RowJson.How(s))
        : null;

    private static IndexLimit? Index(JsonElement rule) => rule.TryGetProperty("overallIndex", out var i)
        ? new IndexLimit(
            i.GetProperty("percent").GetDouble(), i.GetProperty("N").GetDouble(), i.GetProperty("P2O5").GetDouble(), i.GetProperty("K2O").GetDouble(),
            RowJson.Text(i, "source")!, RowJson.How(i), RowJson.Text(i, "note") ?? string.Empty)
        : null;
}
