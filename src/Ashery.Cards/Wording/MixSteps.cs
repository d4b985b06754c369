using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Recipes;

namespace Ashery.Cards.Wording;

/// <summary>
/// How to mix, step by step. Common practice, no source: the smallest part is spread through its like in bulk first, so that
/// it ends up everywhere; nothing is ground together; what draws water is weighed last.
/// </summary>
internal static class MixSteps
{
    public static IReadOnlyList<string> For(RecipeCardRequest request)
    {
        var recipe = request.Recipe;
        if (recipe.Storage.Class == StorageClass.Never)
        {
            return ["Do not mix these: see Pairs to watch. Give the parts on different days, or choose another blend."];
        }

        var parts = recipe.Parts.Where(p => p.Grams > 0).ToList();
        var steps = new List<string> { Protect(parts) };
        if (parts.Count == 1)
        {
            steps.Add($"Weigh {Amount(parts[0])}. It is one material; there is nothing to mix.");
        }
        else if (request.Use == BlendUse.Dissolved)
        {
            steps.AddRange(Dissolve(parts));
        }
        else
        {
            steps.AddRange(Blend(parts));
        }

        steps.Add(recipe.Storage.Class == StorageClass.OnTheDay
            ? "Use all of it today. Do not close it in a bag or jar."
            : "Fill it into a dry, closed container and put on the label with lot number and date.");
        return steps;
    }

    private static IEnumerable<string> Blend(List<RecipePart> parts)
    {
        var solids = Order(parts.Where(p => !p.Material.IsLiquid));
        if (solids.Count > 0)
        {
            yield return $"Weigh the parts one by one, smallest first: {string.Join(", ", solids.Select(Amount))}.";
        }

        if (solids.Count > 1)
        {
            yield return $"Stir {solids[0].Material.Name} into about as much of {solids[^1].Material.Name}; then add the rest, part by part, until no streaks show. Do not grind.";
        }

        var liquids = parts.Where(p => p.Material.IsLiquid).ToList();
        if (liquids.Count > 0)
        {
            yield return $"Keep the liquid apart and measure it into the can on the day: {string.Join(", ", liquids.Select(Amount))}.";
        }
    }

    private static IEnumerable<string> Dissolve(List<RecipePart> parts)
    {
        yield return "Half fill the can with clean water.";
        yield return $"Dissolve the parts one after another, stirring until each is clear: {string.Join(", ", Order(parts).Select(Amount))}.";
        yield return "Fill up with water. If it turns cloudy or drops a sediment, do not use it as a stock; dilute it at once.";
    }

    /// <summary>Smallest first; what draws water from the air comes last whatever it weighs.</summary>
    private static List<RecipePart> Order(IEnumerable<RecipePart> parts) =>
        [.. parts.OrderBy(p => p.Material.Hazards.Contains(Hazard.Deliquescent)).ThenBy(p => p.Grams).ThenBy(p => p.Material.Name, StringComparer.Ordinal)];

    private static string Amount(RecipePart p) => p switch
    {
        { Material.IsLiquid: true, Millilitres: { } ml } => $"{p.Material.Name} {Figures.Short(ml, 1)} mL ({Figures.Grams(p.Grams)})",
        { Scoops: { } n } => $"{p.Material.Name} {Figures.Short(n, 0)} {(n == 1 ? "scoop" : "scoops")} ({Figures.Grams(p.Grams)})",
        _ => $"{p.Material.Name} {Figures.Grams(p.Grams)}",
    };

    private static string Protect(List<RecipePart> parts)
    {
        bool Any(params Hazard[] hazards) => parts.Any(p => p.Material.Hazards.Overlaps(hazards));
        var wear = new List<string> { "gloves" };
        if (Any(Hazard.Dust, Hazard.EyeDamage, Hazard.Caustic, Hazard.StrongAcid))
        {
            wear.Add(Any(Hazard.EyeDamage, Hazard.Caustic, Hazard.StrongAcid) ? "goggles" : "glasses");
        }

        if (Any(Hazard.Dust, Hazard.ToxicMeal, Hazard.ReproductiveToxicity))
        {
            wear.Add("a dust mask");
        }

        return $"Wear {Join(wear)}. Work in moving air, with a dry bowl and dry tools.";
    }

    private static string Join(List<string> words) => words.Count == 1 ? words[0] : $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}";
}
