using Ashery.Cautions;
using Ashery.Materials;
using Ashery.Recipes;

namespace Ashery.Cards.Wording;

/// <summary>The cautions of a card, from the library's index; the first-aid words stand apart from them.</summary>
internal static class CautionWords
{
    /// <summary>"Product label and local rules first."</summary>
    public static string? First => Words(AlwaysIds()).FirstOrDefault();

    public static IReadOnlyList<Caution> For(RecipeCardRequest request)
    {
        var materials = Materials(request);
        var uses = CautionIndex.Default.CautionsFor(materials, Uses(request));
        var wanted = request.Recipe.CautionIds.Concat(uses).Except(AlwaysIds()).Except(OverdoseIds(materials)).ToHashSet();
        var known = CautionIndex.Default.All.Where(c => wanted.Contains(c.Id));
        var unknown = wanted.Where(id => CautionIndex.Default.Find(id) is null).Select(id => new Caution(id, $"See the product label: {id}.", ""));
        return [.. known, .. unknown.OrderBy(c => c.Id, StringComparer.Ordinal)];
    }

    /// <summary>The words, and which of the materials they go with unless that is all of them.</summary>
    public static IReadOnlyList<string> Lines(RecipeCardRequest request)
    {
        var materials = Materials(request);
        var byUse = CautionIndex.Default.CautionsFor([], Uses(request)).ToHashSet();
        var byMaterial = materials.Select(m => (m.Name, Ids: CautionIndex.Default.CautionsFor([m], Uses(request)).Except(byUse).ToHashSet())).ToList();
        return [.. For(request).Select(c =>
        {
            var names = byMaterial.Where(m => m.Ids.Contains(c.Id)).Select(m => m.Name).Distinct(StringComparer.Ordinal).ToList();
            return names.Count == 0 || names.Count == materials.Count ? c.Words : $"{c.Words} ({string.Join(", ", names)})";
        })];
    }

    public static IReadOnlyList<Caution> FirstAid(RecipeCardRequest request) => [.. Find(OverdoseIds(Materials(request)))];

    /// <summary>The few for a small label: those that go with a hazard of the mix, shortest way to say them.</summary>
    public static IReadOnlyList<Caution> ForLabel(RecipeCardRequest request)
    {
        var byUse = CautionIndex.Default.CautionsFor([], CautionUse.Mixing, CautionUse.Storing, CautionUse.Feeding, CautionUse.Dissolving).ToHashSet();
        return [.. For(request).Where(c => !byUse.Contains(c.Id) || c.Id is "children-and-animals" or "water-in")];
    }

    private static CautionUse[] Uses(RecipeCardRequest request) => request.Use == BlendUse.Dissolved
        ? [CautionUse.Mixing, CautionUse.Dissolving, CautionUse.Feeding]
        : [CautionUse.Mixing, CautionUse.Storing, CautionUse.Feeding];

    private static IReadOnlyList<string> AlwaysIds() => CautionIndex.Default.CautionsFor([]);

    private static IEnumerable<string> OverdoseIds(IReadOnlyList<Material> materials) =>
        CautionIndex.Default.CautionsFor(materials, CautionUse.Overdose).Except(AlwaysIds());

    private static IEnumerable<Caution> Find(IEnumerable<string> ids) => ids.Select(CautionIndex.Default.Find).OfType<Caution>();

    private static IEnumerable<string> Words(IEnumerable<string> ids) => Find(ids).Select(c => c.Words);

    private static IReadOnlyList<Material> Materials(RecipeCardRequest request) => [.. request.Recipe.Parts.Select(p => p.Material)];
}
