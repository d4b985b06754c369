using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Clinic.Knowledge;

/// <summary>A row of <c>causes.json</c>.</summary>
internal sealed record CauseRow(
    string Id, string Name, CauseKind Kind, string? Element, double Often, string? Picture, string[] Brings, string[] Separates)
{
    public static CauseRow Read(JsonElement row) => new(
        row.Text("id"), row.Text("name"), CauseWords.Kind(row.Text("kind")), row.TextOrNull("element"), row.Number("often"), row.TextOrNull("picture"), row.Texts("brings"), row.Texts("separates"));
}

/// <summary>Two shortages that come together more often than chance.</summary>
internal sealed record PairRow(string A, string B, string Name, double Together, string Reason, Voice[] Voices)
{
    public static PairRow Read(JsonElement row) => new(
        row.Text("a"), row.Text("b"), row.Text("name"), row.Number("together"), row.Text("reason"), Voice.Read(row));
}

internal static class CauseWords
{
    public static CauseKind Kind(string word) => word switch
    {
        "shortage" => CauseKind.Shortage,
        "excess" => CauseKind.Excess,
        "culture" => CauseKind.Culture,
        "pest" => CauseKind.Pest,
        "disease" => CauseKind.Disease,
        "injury" => CauseKind.Injury,
        _ => throw DataRows.Unknown(word),
    };

    public static string Of(CauseKind kind) => kind switch
    {
        CauseKind.Shortage => "shortage",
        CauseKind.Excess => "excess",
        CauseKind.Culture => "culture",
        CauseKind.Pest => "pest",
        CauseKind.Disease => "disease",
        CauseKind.Injury => "injury",
        CauseKind.Pair => "pair",
        _ => "unknown",
    };
}
