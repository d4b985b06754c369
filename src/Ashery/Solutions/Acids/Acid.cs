using System.Text.Json;
using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Solutions.Acids;

/// <summary>An acid a grower may put into water. Rows of data/acids/acids.json.</summary>
public sealed record Acid
{
    private static readonly Lazy<IReadOnlyList<Acid>> Rows = new(static () => DataRows.Read("data/acids/acids.json", Read));

    /// <summary><c>nitric</c>, <c>phosphoric</c>, <c>sulfuric</c>, <c>citric</c>.</summary>
    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>The pure acid.</summary>
    public required Salt Pure { get; init; }

    /// <summary>The material of the catalogue that it is sold as.</summary>
    public required string MaterialId { get; init; }

    /// <summary>What it feeds; null when it feeds nothing.</summary>
    public Nutrient? Nutrient { get; init; }

    /// <summary>Strength it is usually sold at, mass fraction.</summary>
    public required double UsualStrength { get; init; }

    /// <summary>Strongest that makes sense, mass fraction.</summary>
    public required double MostStrength { get; init; }

    /// <summary>Above this mass fraction it is bought as crystals; null when it is always a liquid.</summary>
    public double? CrystalsAbove { get; init; }

    /// <summary>Mass fraction above which the law on explosives precursors keeps it from the general public; null where none.</summary>
    public double? RestrictedAbove { get; init; }

    /// <summary>Mass fraction up to which a state may license it.</summary>
    public double? LicenceUpTo { get; init; }

    /// <summary>Where the limit of the law comes from.</summary>
    public string? RestrictedSourceId { get; init; }

    /// <summary>Density of its solutions at 20 °C.</summary>
    public required AcidDensity Density { get; init; }

    /// <summary>In the order they are offered.</summary>
    public static IReadOnlyList<Acid> All => Rows.Value;

    /// <summary>The acid of this id, formula or name, or null.</summary>
    public static Acid? Find(string text)
    {
        foreach (var acid in All)
        {
            if (text.Equals(acid.Id, StringComparison.OrdinalIgnoreCase) || text.Equals(acid.Name, StringComparison.OrdinalIgnoreCase)
                || text.Equals(acid.Pure.Formula, StringComparison.OrdinalIgnoreCase))
            {
                return acid;
            }
        }

        return null;
    }

    private static Acid Read(JsonElement row) => new()
    {
        Id = row.Text("id"),
        Name = row.Text("name"),
        Pure = Salt.TryFind(row.Text("formula"), out var salt) ? salt : throw DataRows.Unknown(row.Text("formula")),
        MaterialId = row.Text("material"),
        Nutrient = row.TextOrNull("nutrient") switch { null => null, "N" => Nutrients.Nutrient.N, "P" => Nutrients.Nutrient.P, "S" => Nutrients.Nutrient.S, var other => throw DataRows.Unknown(other) },
        UsualStrength = row.Number("usualPercent") / 100,
        MostStrength = row.Number("mostPercent") / 100,
        CrystalsAbove = Percent(row, "crystalsAbovePercent"),
        RestrictedAbove = Percent(row, "restrictedAbovePercent"),
        LicenceUpTo = Percent(row, "licencePercent"),
        RestrictedSourceId = row.TextOrNull("restrictedSource"),
        Density = AcidDensity.Read(row.GetProperty("densities")),
    };

    private static double? Percent(JsonElement row, string key) => row.TryGetProperty(key, out var value) ? value.GetDouble() / 100 : null;
}
