using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>What a grower should know of a blend before mixing it.</summary>
internal static class RecipeNotes
{
    public const string ChlorideField = "chloride";
    public const string AmmoniacalField = "ammoniacal nitrogen";
    public const string CalciumField = "calcium";
    public const string MagnesiumField = "magnesium";

    public static IReadOnlyList<Problem> Of(Recipe recipe, BlendUse use)
    {
        var notes = new List<Problem>();
        Chloride(recipe, notes);
        Ammoniacal(recipe, notes);
        Missing(recipe, Nutrient.Ca, CalciumField, "calcium nitrate, gypsum or lime in the medium", notes);
        Missing(recipe, Nutrient.Mg, MagnesiumField, "Epsom salt, kieserite or a magnesium spray", notes);
        Pairs(recipe, use, notes);
        Salt(recipe, notes);
        Unknown(recipe, notes);
        return notes;
    }

    private static void Chloride(Recipe recipe, List<Problem> notes)
    {
        var chloride = recipe.Grade[Nutrient.Cl];
        if (chloride > WarningThresholds.Chloride)
        {
            notes.Add(new Problem(
                ChlorideField,
                $"{Say.Percent(chloride)} chloride; above {Say.Percent(WarningThresholds.Chloride)} it is no longer low in chloride.",
                "In pots chloride builds up: water through well, or limit it with chloride<=2%.",
                Severity.Warning));
        }
    }

    private static void Ammoniacal(Recipe recipe, List<Problem> notes)
    {
        var forms = recipe.Nitrogen;
        if (forms.Total > 0 && (forms.Ammonium + forms.Urea) / forms.Total > WarningThresholds.AllAmmoniacal)
        {
            notes.Add(new Problem(
                AmmoniacalField,
                "All nitrogen is ammonium or urea and none to speak of is nitrate. In cool, wet or sterile mixes ammonium builds up and can harm roots.",
                "Feed only in warm growing weather, or bring in a nitrate with ammoniacal<=50%.",
                Severity.Warning));
        }
    }

    private static void Missing(Recipe recipe, Nutrient nutrient, string field, string sources, List<Problem> notes)
    {
        var nitrogen = recipe.Grade[Nutrient.N];
        if (nitrogen > 0 && recipe.Grade[nutrient] < WarningThresholds.Missing * WarningThresholds.PerNitrogen(nutrient) * nitrogen)
        {
            notes.Add(new Problem(
                field,
                $"The blend brings next to no {field}; plants hold about {Say.Number(Math.Round(100 * WarningThresholds.PerNitrogen(nutrient)))} g of it for 100 g of nitrogen.",
                $"Unless your water or medium brings it, give it apart: {sources}.",
                Severity.Warning));
        }
    }

    private static void Pairs(Recipe recipe, BlendUse use, List<Problem> notes)
    {
        foreach (var pair in recipe.Pairs)
        {
            var judgement = PairRule.For(pair, use);
            if (judgement.Verdict is Verdict.Fine)
            {
                continue;
            }

            var (word, severity) = judgement.Verdict switch
            {
                Verdict.Stop => ("must not be together", Severity.Warning),
                Verdict.Limited => ("only within limits", Severity.Warning),
                _ => ("not known", Severity.Note),
            };
            notes.Add(new Problem(
                $"{pair.A} with {pair.B}, {PairRule.Words(use)}",
                $"{Sentence(word)} {Sentence(judgement.Reason)}",
                judgement.Limit is { Length: > 0 } limit ? Sentence(limit) : Advice(judgement.Verdict),
                severity));
        }
    }

    private static void Salt(Recipe recipe, List<Problem> notes)
    {
        if (recipe.SaltIndex is not null && recipe.Parts.Any(static p => p.Material.Ions.Contains("phosphate")))
        {
            notes.Add(new Problem(
                "salt index",
                "The salt index was measured on mineral soil, which binds phosphate; in soilless mixes it understates phosphates.",
                "Go by the osmolality beside it.",
                Severity.Note));
        }
    }

    private static void Unknown(Recipe recipe, List<Problem> notes)
    {
        Unknown(recipe, "cost", "price", static p => p.Cost is null, "Enter a price a kg to see the cost.", notes);
        Unknown(recipe, "salt index", "published salt index", static p => p.Material.SaltIndex is null, "The blend's salt index is left open.", notes);
        Unknown(
            recipe, "lime equivalent", "lime equivalent", static p => p.Material.LimeEquivalent is null, "Watch the pH of the medium.", notes);
        Unknown(
            recipe, "osmolality", "osmolality", static p => p.Material.OsmolesPerKg is null, "It does not simply dissolve.", notes);
    }

    private static void Unknown(
        Recipe recipe, string field, string figure, Func<RecipePart, bool> lacks, string wayOut, List<Problem> notes)
    {
        var names = recipe.Parts.Where(lacks).Select(static p => p.Material.Name).ToList();
        if (names.Count > 0)
        {
            notes.Add(new Problem(field, $"Unknown: {Say.List(names)} {(names.Count == 1 ? "has" : "have")} no {figure}.", wayOut, Severity.Note));
        }
    }

    private static string Advice(Verdict verdict) => verdict switch
    {
        Verdict.Stop => "Keep and give them apart.",
        Verdict.Limited => "Mix only what is used soon.",
        _ => "Mix a spoonful first and watch it for a day.",
    };

    private static string Sentence(string words)
    {
        var text = words.Trim();
        if (text.Length == 0)
        {
            return text;
        }

        text = char.ToUpperInvariant(text[0]) + text[1..];
        return text[^1] is '.' or '!' or '?' ? text : text + ".";
    }
}
