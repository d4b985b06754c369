using Ashery.Cli.Frame;
using Ashery.Crops;
using Ashery.Materials;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>Finds what ids name; one that names nothing is told with the nearest that does.</summary>
internal static class MaterialWords
{
    public static IReadOnlyList<Material> Named(Given given, IReadOnlyList<string> ids, string field, MaterialCatalogue catalogue)
    {
        var found = new List<Material>();
        foreach (var id in ids)
        {
            if (catalogue.Find(id) is { } material)
            {
                if (!found.Contains(material))
                {
                    found.Add(material);
                }
            }
            else
            {
                given.Add(Unknown(field, id, "a material", "materials", catalogue.Suggest(id)));
            }
        }

        return found;
    }

    public static Crop? Crop(Given given, string field, string id)
    {
        if (CropCatalogue.Default.Find(id) is { } crop)
        {
            return crop;
        }

        given.Add(Unknown(field, id, "a crop", "crops", CropCatalogue.Default.Suggest(id)));
        return null;
    }

    private static Problem Unknown(string field, string id, string what, string verb, IReadOnlyList<string> near) => new(
        field,
        $"{SafeText.Quoted(id)} is not {what} of the catalogue.",
        (near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}? " : string.Empty) + $"ashery {verb} lists them all.");
}
