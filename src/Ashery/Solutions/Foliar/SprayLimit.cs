using System.Text.Json;
using Ashery.Crops;
using Ashery.Nutrients;
using Ashery.Solutions.Can;
using Ashery.Sources;

namespace Ashery.Solutions.Foliar;

/// <summary>What a published strength says.</summary>
public enum SprayLimitKind
{
    /// <summary>What is commonly sprayed.</summary>
    Usual,

    /// <summary>No more than this.</summary>
    Most,

    /// <summary>Not on leaves.</summary>
    None,

    /// <summary>Injury was seen at this strength.</summary>
    Burns,

    /// <summary>Printed for other crops; shown beside, not judged by.</summary>
    Other,
}

/// <summary>A published strength of a salt on leaves. Rows of data/foliar/limits.json.</summary>
public sealed record SprayLimit
{
    private static readonly Lazy<IReadOnlyList<SprayLimit>> Rows = new(static () => DataRows.Read("data/foliar/limits.json", Read));

    public required string Id { get; init; }

    public required string Name { get; init; }

    public required SprayLimitKind Kind { get; init; }

    /// <summary>g of <see cref="Salt"/> a litre; where a growing rule holds the figure, that of the rule.</summary>
    public required double GramsPerLitre { get; init; }

    /// <summary>Low end of a printed range, g a litre; null when one figure is printed.</summary>
    public double? From { get; init; }

    /// <summary>Crops it is printed for; empty for all.</summary>
    public IReadOnlyList<string> Crops { get; init; } = [];

    /// <summary>The grade of the salt the figure is for.</summary>
    public required string Salt { get; init; }

    public required string Words { get; init; }

    public required string SourceId { get; init; }

    public required Provenance Provenance { get; init; }

    /// <summary>The rule that holds the figure and that a grower may change; null for a figure of its own.</summary>
    public string? RuleId { get; init; }

    internal Nutrient By { get; init; }

    internal IReadOnlyList<string> Ions { get; init; } = [];

    /// <summary>All rows, with the figures of the shipped rules.</summary>
    public static IReadOnlyList<SprayLimit> All => Rows.Value;

    /// <summary>The rows for a crop; those of a rule that is switched off are left out.</summary>
    public static IReadOnlyList<SprayLimit> For(Crop? crop, RuleBook rules)
    {
        var rows = new List<SprayLimit>();
        foreach (var row in All)
        {
            if (row.Crops.Count > 0 && (crop is null || !row.Crops.Contains(crop.Id)))
            {
                continue;
            }

            if (row.RuleId is null)
            {
                rows.Add(row);
            }
            else if (rules[row.RuleId] is { IsOn: true } rule)
            {
                rows.Add(row with { GramsPerLitre = rule["gramsPerLitre"] });
            }
        }

        return rows;
    }

    /// <summary>g of the salt the row names that a gram of a material stands for; 0 where it is another substance.</summary>
    public double Share(MaterialInWater material)
    {
        foreach (var ion in Ions)
        {
            if (ion == "chelate" ? !Tanks.ApartRule.IsChelate(material) : ion == "Fe" ? material.Content(Nutrient.Fe) <= 0 : !Tanks.ApartRule.Gives(material, ion))
            {
                return 0;
            }
        }

        return material.Content(By) / MaterialInWater.OfFormula(Salt).Value!.Content(By);
    }

    private static SprayLimit Read(JsonElement row)
    {
        var rule = row.TextOrNull("rule") is { } id ? RuleBook.Default[id] : null;
        return new()
        {
            Id = row.Text("id"),
            Name = row.Text("name"),
            Kind = row.Text("level") switch
            {
                "usual" => SprayLimitKind.Usual,
                "most" => SprayLimitKind.Most,
                "none" => SprayLimitKind.None,
                "burns" => SprayLimitKind.Burns,
                "other" => SprayLimitKind.Other,
                var word => throw DataRows.Unknown(word),
            },
            GramsPerLitre = rule?["gramsPerLitre"] ?? row.Number("gramsPerLitre"),
            From = row.TryGetProperty("from", out var from) ? from.GetDouble() : null,
            Crops = row.Texts("crops"),
            Salt = row.Text("salt"),
            By = Enum.Parse<Nutrient>(row.Text("by")),
            Ions = row.Texts("ions"),
            Words = row.Text("words"),
            SourceId = rule?.SourceId ?? row.Text("source"),
            Provenance = rule?.Provenance ?? row.Provenance(),
            RuleId = rule?.Id,
        };
    }
}

/// <summary>A limit of a spray as a whole. Rows of data/foliar/loads.json.</summary>
public sealed record SprayLoad(string Id, string Name, double Value, string Unit, string Words, string SourceId, Provenance Provenance)
{
    private static readonly Lazy<IReadOnlyList<SprayLoad>> Rows = new(static () => DataRows.Read("data/foliar/loads.json", static row => new SprayLoad(
        row.Text("id"), row.Text("name"), row.Number("value"), row.Text("unit"), row.Text("words"), row.Text("source"), row.Provenance())));

    public static IReadOnlyList<SprayLoad> All => Rows.Value;

    internal static SprayLoad Of(string id)
    {
        foreach (var row in All)
        {
            if (row.Id == id)
            {
                return row;
            }
        }

        throw DataRows.Unknown(id);
    }
}
