using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Compatibility;

// Rows of data/compatibility/*.json and how they are read.

internal sealed record DryRow(
    string[] A, string[] B, Verdict Today, Verdict Stored, string Reason, VerdictBasis Basis, string[] Sources, string? Limit, bool HardStop, string? Note)
{
    public static DryRow[] Read() => ReferenceRow.Read("data/compatibility/dry.json", static row => new DryRow(
        row.Texts("a"),
        row.Texts("b"),
        ChartWords.Verdict(row.Text("today")),
        ChartWords.Verdict(row.Text("stored")),
        row.Text("reason"),
        ChartWords.Basis(row.Text("basis")),
        row.Texts("sources"),
        row.Maybe("limit"),
        row.Flag("hardStop"),
        row.Maybe("note")));
}

internal sealed record SolutionRow(
    string[] A, string[] B, Verdict Verdict, string Reason, VerdictBasis Basis, string[] Sources, string? Limit, bool HardStop, string? Feed, string? Note)
{
    public static SolutionRow[] Read() => ReferenceRow.Read("data/compatibility/solution.json", static row => new SolutionRow(
        row.Texts("a"),
        row.Texts("b"),
        ChartWords.Verdict(row.Text("verdict")),
        row.Text("reason"),
        ChartWords.Basis(row.Text("basis")),
        row.Texts("sources"),
        row.Maybe("limit"),
        row.Flag("hardStop"),
        row.Maybe("feed"),
        row.Maybe("note")));
}

internal sealed record ResidueRow(string[] A, Verdict Verdict, string Reason, string? Limit)
{
    public static ResidueRow[] Read() => ReferenceRow.Read("data/compatibility/residue.json", static row => new ResidueRow(
        row.Texts("a"), ChartWords.Verdict(row.Text("verdict")), row.Text("reason"), row.Maybe("limit")));
}

internal sealed record HumidityRow(string[] A, string[] B, double Percent, string Source, Provenance Provenance, string? Note)
{
    public static HumidityRow[] Read() => ReferenceRow.Read("data/compatibility/humidity.json", static row => new HumidityRow(
        row.Texts("a"),
        row.Texts("b"),
        row.Number("percent"),
        row.Text("source"),
        MaterialWords.Provenance(row.Text("provenance")),
        row.Maybe("note")));
}

internal sealed record SaltRow(
    string Formula, string Name, string Cation, int Cations, string Anion, int Anions, double MolarMass, double At10, double At20, double At25)
{
    public static SaltRow[] Read() => ReferenceRow.Read("data/compatibility/salts.json", static row => new SaltRow(
        row.Text("formula"),
        row.Text("name"),
        row.Text("cation"),
        row.Whole("cations"),
        row.Text("anion"),
        row.Whole("anions"),
        row.Number("molarMass"),
        row.Number("at10"),
        row.Number("at20"),
        row.Number("at25")));
}

/// <summary>The words of the chart's files.</summary>
internal static class ChartWords
{
    public static Verdict Verdict(string word) => word switch
    {
        "fine" => Compatibility.Verdict.Fine,
        "limited" => Compatibility.Verdict.Limited,
        "stop" => Compatibility.Verdict.Stop,
        "unknown" => Compatibility.Verdict.Unknown,
        _ => throw ReferenceRow.Unknown(word),
    };

    public static VerdictBasis Basis(string word) => word switch
    {
        "none" => VerdictBasis.None,
        "practice" => VerdictBasis.Practice,
        "chemistry" => VerdictBasis.Chemistry,
        "recalled" => VerdictBasis.Recalled,
        "computed" => VerdictBasis.Computed,
        "published" => VerdictBasis.Published,
        _ => throw ReferenceRow.Unknown(word),
    };
}
