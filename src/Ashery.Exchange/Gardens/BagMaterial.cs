using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Exchange.Gardens;

/// <summary>The material of a bag as the file says it: by catalogue id with the bag's own label, or described in full.</summary>
internal static class BagMaterial
{
    public static BagDto ToDto(Material material)
    {
        if (MaterialCatalogue.Default.Find(material.Id) is not { } known || !DiffersOnlyInLabel(material, known))
        {
            return new() { Own = OwnMaterial.ToDto(material) };
        }

        return new()
        {
            Material = material.Id,
            Name = material.Name == known.Name ? null : material.Name,
            Label = SameLabel(material.Label, known.Label) ? null : GardenWriter.PercentOf(material.Label),
        };
    }

    public static Material? Read(BagDto bag, string path, FieldReader fields)
    {
        if (bag.Own is { } own)
        {
            return OwnMaterial.Read(own, path + ".own", fields);
        }

        if (bag.Material is null)
        {
            fields.Missing(path + ".material", "Name a material of the catalogue, or describe the bag under own.");
            return null;
        }

        if (MaterialCatalogue.Default.Find(bag.Material) is not { } known)
        {
            var near = MaterialCatalogue.Default.Suggest(bag.Material);
            fields.Add(new(
                path + ".material",
                $"There is no material \"{bag.Material}\" in the catalogue.",
                (near.Count > 0 ? "Did you mean " + string.Join(" or ", near) + "? " : "") + "A bag of something else goes under own."));
            return null;
        }

        var named = bag.Name is null ? known : known with { Name = fields.Text(bag.Name, path + ".name", 120) };
        if (bag.Label is null)
        {
            return named;
        }

        var label = fields.Label(bag.Label, path + ".label");
        return named with { Label = label, Nitrogen = known.Nitrogen.WithTotal(label[Nutrient.N]) };
    }

    private static bool DiffersOnlyInLabel(Material a, Material b) =>
        a with { Name = b.Name, Label = b.Label, Nitrogen = b.Nitrogen } == b && Near(a.Nitrogen, b.Nitrogen.WithTotal(a.Label[Nutrient.N]));

    private static bool Near(NitrogenForms a, NitrogenForms b) =>
        Math.Abs(a.Ammonium - b.Ammonium) + Math.Abs(a.Nitrate - b.Nitrate) + Math.Abs(a.Urea - b.Urea) + Math.Abs(a.Organic - b.Organic)
        + Math.Abs(a.SlowSynthetic - b.SlowSynthetic) < 1e-9;

    private static bool SameLabel(LabelAnalysis a, LabelAnalysis b) => Enum.GetValues<Nutrient>().All(n => Math.Abs(a[n] - b[n]) < 1e-12);
}
