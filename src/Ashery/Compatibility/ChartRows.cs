using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Compatibility;

// Rows of data/compatibility/*.json.

internal sealed record DryRow(
    string[] A, string[] B, Verdict Today, Verdict Stored, string Reason, VerdictBasis Basis, string[] Sources, string? Limit, bool HardStop, string? Note) : IPairRow
{
    public static DryRow Read(JsonElement row) => new(
        row.Texts("a"),
        row.Texts("b"),
        ChartWords.Verdict(row.Text("today")),
        ChartWords.Verdict(row.Text("stored")),
        row.Text("reason"),
        ChartWords.Basis(row.Text("basis")),
        row.Texts("sources"),
        row.TextOrNull("limit"),
        row.Flag("hardStop"),
        row.TextOrNull("note"));
}

internal sealed record SolutionRow(
    string[] A, string[] B, Verdict Verdict, string Reason, VerdictBasis Basis, string[] Sources, string? Limit, bool HardStop, string? Feed, string? Note) : IPairRow
{
    public static SolutionRow Read(JsonElement row) => new(
        row.Texts("a"),
        row.Texts("b"),
        ChartWords.Verdict(row.Text("verdict")),
        row.Text("reason"),
        ChartWords.Basis(row.Text("basis")),
        row.Texts("sources"),
        row.TextOrNull("limit"),
        row.Flag("hardStop"),
        row.TextOrNull("feed"),
        row.TextOrNull("note"));
}

/// <summary>A row that speaks of two kinds of material, each by its selectors.</summary>
internal interface IPairRow
{
    string[] A { get; }

    string[] B { get; }
}

internal sealed record ResidueRow(Selector[] A, Verdict Verdict, string Reason, string? Limit)
{
    public static ResidueRow Read(JsonElement row) => new(
        Selector.Parse(row.Texts("a")), ChartWords.Verdict(row.Text("verdict")), row.Text("reason"), row.TextOrNull("limit"));
}

internal sealed record HumidityRow(string[] A, string[] B, double Percent, string Source, Provenance Provenance, string? Note) : IPairRow
{
    public static HumidityRow Read(JsonElement row) => new(
        row.Texts("a"), row.Texts("b"), row.Number("percent"), row.Text("source"), row.Provenance(), row.TextOrNull("note"));
}

internal sealed record SaltRow(
    string Formula, string Name, string Cation, int Cations, string Anion, int Anions, double MolarMass, double At10, double At20, double At25)
{
    public static SaltRow Read(JsonElement row) => new(
        row.Text("formula"),
        row.Text("name"),
        row.Text("cation"),
        (int)row.Number("cations"),
        row.Text("anion"),
        (int)row.Number("anions"),
        row.Number("molarMass"),
        row.Number("at10"),
        row.Number("at20"),
        row.Number("at25"));
}

internal static class ChartWords
{
    public static Verdict Verdict(string word) => word switch
    {
        "fine" => Compatibility.Verdict.Fine,
        "limited" => Compatibility.Verdict.Limited,
        "stop" => Compatibility.Verdict.Stop,
        "unknown" => Compatibility.Verdict.Unknown,
        _ => throw DataRows.Unknown(word),
    };

    public static VerdictBasis Basis(string word) => word switch
    {
        "published" => VerdictBasis.Published,
        "recalled" => VerdictBasis.Recalled,
        "chemistry" => VerdictBasis.Chemistry,
        "practice" => VerdictBasis.Practice,
        "computed" => VerdictBasis.Computed,
        _ => throw DataRows.Unknown(word),
    };
}
