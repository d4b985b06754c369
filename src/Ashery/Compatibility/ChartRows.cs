using System.Text.Json.Serialization;
using Ashery.Sources;

namespace Ashery.Compatibility;

// Shapes of data/compatibility/*.json.

internal sealed record DryFile(string About, DryRow[] Rows);

internal sealed record DryRow(
    string[] A, string[] B, Verdict Today, Verdict Stored, string Reason, VerdictBasis Basis, string[] Sources, string? Limit, bool HardStop, string? Note);

internal sealed record SolutionFile(string About, SolutionRow[] Rows);

internal sealed record SolutionRow(
    string[] A, string[] B, Verdict Verdict, string Reason, VerdictBasis Basis, string[] Sources, string? Limit, bool HardStop, string? Feed, string? Note);

internal sealed record ResidueFile(string About, ResidueRow[] Rows);

internal sealed record ResidueRow(string[] A, Verdict Verdict, string Reason, string? Limit);

internal sealed record HumidityFile(string About, HumidityRow[] Rows);

internal sealed record HumidityRow(string[] A, string[] B, double Percent, string Source, Provenance Provenance, string? Note);

internal sealed record SaltFile(string About, string Source, Provenance Provenance, SaltRow[] Rows);

internal sealed record SaltRow(
    string Formula, string Name, string Cation, int Cations, string Anion, int Anions, double MolarMass, double At10, double At20, double At25);

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UseStringEnumConverter = true,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow)]
[JsonSerializable(typeof(DryFile))]
[JsonSerializable(typeof(SolutionFile))]
[JsonSerializable(typeof(ResidueFile))]
[JsonSerializable(typeof(HumidityFile))]
[JsonSerializable(typeof(SaltFile))]
internal sealed partial class ChartJson : JsonSerializerContext;
