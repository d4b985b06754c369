using Ashery.Materials;

namespace Ashery.Exchange.Gardens;

/// <summary>A material that is not in the catalogue, described in full.</summary>
internal static class OwnMaterial
{
    public static OwnMaterialDto ToDto(Material material) => new()
    {
        Id = material.Id,
        Name = material.Name,
        Kind = GardenWriter.Word(material.Kind),
        Label = GardenWriter.PercentOf(material.Label),
        Nitrogen = GardenWriter.NitrogenOf(material.Nitrogen),
        IsLiquid = material.IsLiquid,
        Dissolves = material.Dissolves,
        BulkDensity = material.BulkDensity is { } d ? new() { Min = d.Min, Typical = d.Typical, Max = d.Max } : null,
        LiquidDensity = material.LiquidDensity,
        SaltIndex = material.SaltIndex?.Value,
        LimeEquivalent = material.LimeEquivalent?.Value,
        Moisture = material.Moisture > 0 ? GardenWriter.Tidy(material.Moisture * 100) : null,
        CompatibilityGroup = material.CompatibilityGroup,
        Ions = [.. material.Ions.Order(StringComparer.Ordinal)],
        Hazards = [.. material.Hazards.Select(static h => GardenWriter.Word(h)).Order(StringComparer.Ordinal)],
    };

    public static Material Read(OwnMaterialDto own, string path, FieldReader fields)
    {
        var id = fields.Text(own.Id, path + ".id", 80);
        return new Material
        {
            Id = id,
            Name = own.Name is null ? id : fields.Text(own.Name, path + ".name", 120),
            Kind = fields.Word<MaterialKind>(own.Kind, path + ".kind", MaterialKind.Straight),
            Label = fields.Label(own.Label, path + ".label"),
            Nitrogen = fields.Nitrogen(own.Nitrogen, path + ".nitrogen"),
            IsLiquid = own.IsLiquid,
            Dissolves = own.Dissolves,
            BulkDensity = own.BulkDensity is { } d ? fields.Spread(d, path + ".bulkDensity", 0.01, 10) : null,
            LiquidDensity = fields.Optional(own.LiquidDensity, path + ".liquidDensity", 0.5, 3, "g/mL"),
            SaltIndex = FieldReader.OwnFigure(fields.Optional(own.SaltIndex, path + ".saltIndex", 0, 300, "")),
            LimeEquivalent = FieldReader.OwnFigure(fields.Optional(own.LimeEquivalent, path + ".limeEquivalent", -5, 5, "kg CaCO3 a kg")),
            Moisture = (fields.Optional(own.Moisture, path + ".moisture", 0, 95, "%") ?? 0) / 100,
            CompatibilityGroup = own.CompatibilityGroup is null ? "unknown" : fields.Text(own.CompatibilityGroup, path + ".compatibilityGroup", 60),
            Ions = new HashSet<string>(own.Ions ?? [], StringComparer.Ordinal),
            Hazards = fields.Words<Hazard>(own.Hazards, path + ".hazards"),
            SourceId = "own-label",
        };
    }
}
