using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Exchange.Gardens;

/// <summary>The material of a bag as the file says it: by catalogue id with the bag's own label, or described in full.</summary>
internal static class BagMaterial
{
    public static BagDto ToDto(Material material)
    {
        if (MaterialCatalogue.Default.Find(material.Id) is not { } known || !OwnBag.IsRelabelled(material, known))
        {
            return new() { Own = OwnMaterial.ToDto(material) };
        }

        return new()
        {
            Material = material.Id,
            Name = material.Name == known.Name ? null : material.Name,
            Label = SameLabel(material.Label, known.Label) ? null : LabelOf(material.Label, known.Label),
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
        return bag.Label is null ? named : Relabelled(named, bag.Label, path + ".label", fields);
    }

    // Nutrients the label does not name stay as in the catalogue; more than the pure salt holds is a problem here as everywhere.
    private static Material Relabelled(Material named, IReadOnlyDictionary<string, double> percent, string path, FieldReader fields)
    {
        var before = fields.Problems.Count;
        fields.Label(percent, path);
        if (fields.Problems.Count > before)
        {
            return named;
        }

        var lines = percent.Select(static p => new LabelLine(LabelItems.Find(p.Key)!.Value, p.Value)).ToList();
        var relabelled = OwnBag.Of(named, lines, field: path);
        fields.AddRange(relabelled.Problems.Where(static p => p.Severity != Severity.Note));
        return relabelled.Value ?? named;
    }

    // A nutrient the catalogue has and this bag does not is written as zero, or it would come back.
    private static Dictionary<string, double> LabelOf(LabelAnalysis label, LabelAnalysis known)
    {
        var percent = GardenWriter.PercentOf(label);
        foreach (var nutrient in known.Present)
        {
            percent.TryAdd(LabelBasis.Symbol(nutrient), 0);
        }

        return percent;
    }

    private static bool SameLabel(LabelAnalysis a, LabelAnalysis b) => Enum.GetValues<Nutrient>().All(n => Math.Abs(a[n] - b[n]) < 1e-12);
}
