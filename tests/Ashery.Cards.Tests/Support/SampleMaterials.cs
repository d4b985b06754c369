using Ashery.Materials;
using Ashery.Quantities;
using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Cards.Tests.Support;

/// <summary>
/// Materials with rounded figures of their own and not those of the catalogue, so that a better figure there does not change an
/// approved card here. Their ids are those of the catalogue, their sources are none.
/// </summary>
internal static class SampleMaterials
{
    private static readonly Dictionary<string, Material> Rows = new[]
    {
        Straight("potassium-nitrate", "Potassium nitrate", new(0, 0.13, 0, 0, 0), [(Nutrient.N, 0.13), (Nutrient.K, 0.46), (Nutrient.Cl, 0.005)], Hazard.Oxidiser, Hazard.ExplosivePrecursor),
        Straight("ammonium-sulfate", "Ammonium sulfate", new(0.21, 0, 0, 0, 0), [(Nutrient.N, 0.21), (Nutrient.S, 0.24)], Hazard.Dust, Hazard.AmmoniaWithAlkali, Hazard.LeafBurn),
        Straight("map-technical", "Mono-ammonium phosphate, technical", new(0.12, 0, 0, 0, 0), [(Nutrient.N, 0.12), (Nutrient.P, 0.61)], Hazard.AmmoniaWithAlkali),
        Straight("map-granular", "Mono-ammonium phosphate, granular", new(0.11, 0, 0, 0, 0), [(Nutrient.N, 0.11), (Nutrient.P, 0.52)], Hazard.AmmoniaWithAlkali),
        Straight("potassium-sulfate", "Potassium sulfate", default, [(Nutrient.K, 0.5), (Nutrient.S, 0.18)], Hazard.Dust),
        Straight("urea", "Urea", new(0, 0, 0.46, 0, 0), [(Nutrient.N, 0.46)], Hazard.LeafBurn),
        Straight("calcium-nitrate-double", "Calcium nitrate, fertiliser grade", new(0.011, 0.144, 0, 0, 0), [(Nutrient.N, 0.155), (Nutrient.Ca, 0.19)], Hazard.Oxidiser, Hazard.EyeDamage, Hazard.Deliquescent),
        Straight("mkp", "Monopotassium phosphate", default, [(Nutrient.P, 0.52), (Nutrient.K, 0.34)]),
        Straight("langbeinite", "Langbeinite", default, [(Nutrient.K, 0.22), (Nutrient.Mg, 0.11), (Nutrient.S, 0.22), (Nutrient.Cl, 0.01)]),
        Straight("epsom-salt", "Epsom salt", default, [(Nutrient.Mg, 0.098), (Nutrient.S, 0.129)]),
        Straight("kieserite", "Kieserite", default, [(Nutrient.Mg, 0.15), (Nutrient.S, 0.2)]),
        Straight("iron-edta", "Iron EDTA", default, [(Nutrient.Fe, 0.13), (Nutrient.Na, 0.05)], Hazard.HarmfulIfSwallowed, Hazard.NarrowMargin),
        Straight("manganese-sulfate-monohydrate", "Manganese sulfate monohydrate", default, [(Nutrient.Mn, 0.32), (Nutrient.S, 0.19)], Hazard.EyeDamage, Hazard.AquaticToxicity, Hazard.NarrowMargin),
        Meal("neem-cake", "Neem cake", 0.03, 0.01, 0.015, Hazard.OrganicFuel, Hazard.Dust),
        Meal("bone-meal-steamed", "Bone meal, steamed", 0.02, 0.22, 0, Hazard.AnimalByProduct, Hazard.OrganicFuel, Hazard.Dust),
        Meal("vermicompost", "Vermicompost", 0.01, 0.008, 0.007),
        Meal("kelp-meal", "Kelp meal", 0.01, 0.003, 0.03, Hazard.Dust),
    }.ToDictionary(m => m.Id, StringComparer.Ordinal);

    public static Material Of(string id) => Rows[id];

    private static Material Straight(string id, string name, NitrogenForms nitrogen, (Nutrient Nutrient, double Fraction)[] label, params Hazard[] hazards) => new()
    {
        Id = id,
        Name = name,
        Kind = MaterialKind.Straight,
        Label = new(label.ToDictionary(l => l.Nutrient, l => l.Fraction)),
        Nitrogen = nitrogen,
        BulkDensity = Spread.Exactly(1),
        SaltIndex = new(70, "sample table of salt indices", Provenance.FromMemory),
        Hazards = hazards.ToHashSet(),
        CompatibilityGroup = "INERT",
        SourceId = "sample handbook",
        Provenance = Provenance.Seen,
    };

    private static Material Meal(string id, string name, double n, double p, double k, params Hazard[] hazards) =>
        Straight(id, name, new(0, 0, 0, n, 0), [(Nutrient.N, n), (Nutrient.P, p), (Nutrient.K, k)], hazards) with { Kind = MaterialKind.OrganicMeal, SaltIndex = null };
}
