using Ashery.Materials;

namespace Ashery.Web.Gardens;

/// <summary>Finds materials by any of their names or their formula.</summary>
internal static class CatalogueSearch
{
    public static IEnumerable<Material> Find(string words, string kind = "") => MaterialCatalogue.Default.All
        .Where(m => kind.Length == 0 || string.Equals(m.Kind.ToString(), kind, StringComparison.OrdinalIgnoreCase))
        .Where(m => words.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(w => Says(m, w)))
        .OrderBy(m => m.Name, StringComparer.OrdinalIgnoreCase);

    private static bool Says(Material m, string word) =>
        m.Id.Contains(word, StringComparison.OrdinalIgnoreCase)
        || m.Name.Contains(word, StringComparison.OrdinalIgnoreCase)
        || m.Formula?.Contains(word, StringComparison.OrdinalIgnoreCase) == true
        || m.OtherNames.Any(n => n.Contains(word, StringComparison.OrdinalIgnoreCase));
}
