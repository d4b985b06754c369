using Ashery.Cards.Drawing;
using Ashery.Compatibility;
using Ashery.Gardens;
using Ashery.Nutrients;
using Ashery.Recipes;

namespace Ashery.Cards.Wording;

/// <summary>What a recipe holds and does, as tables and sentences. Says what the library found; works nothing out.</summary>
internal static class RecipeWords
{
    public const string RatioErrorName = "mean relative deviation of the nutrient shares";

    public static string Symbol(Nutrient nutrient) => nutrient switch
    {
        Nutrient.P => "P₂O₅",
        Nutrient.K => "K₂O",
        _ => nutrient.ToString(),
    };

    public static Fact Grade(Recipe recipe) => new(
        "Grade", Figures.Grade(recipe.Grade[Nutrient.N], recipe.Grade[Nutrient.P], recipe.Grade[Nutrient.K]), "N-P₂O₅-K₂O, percent by weight");

    /// <summary>What to weigh out.</summary>
    public static TableBlock Composition(Recipe recipe, GardenSettings settings)
    {
        var scoops = recipe.Parts.Any(p => p.Scoops is not null);
        var millilitres = recipe.Parts.Any(p => p.Material.IsLiquid && p.Millilitres is not null);
        List<TableColumn> columns = [new("Material"), new("Weigh", true)];
        columns.AddRange(scoops ? [new("Scoops", true)] : []);
        columns.AddRange(millilitres ? [new("mL", true)] : []);
        columns.Add(new("Share", true));
        List<string> Row(string name, double grams, string scoopText, string mlText, double share)
        {
            List<string> cells = [name, Amounts.Mass(grams, settings)];
            cells.AddRange(scoops ? [scoopText] : []);
            cells.AddRange(millilitres ? [mlText] : []);
            cells.Add(Figures.Percent(share));
            return cells;
        }

        return new("What goes in", columns, [.. recipe.Parts.Select(p => Row(
            p.Material.Name, p.Grams, p.Scoops is { } n ? Figures.Short(n, 0) : "weigh", p.Material.IsLiquid && p.Millilitres is { } ml ? Figures.Short(ml, 1) : "-", p.Share))])
        {
            Total = Row("Batch", recipe.BatchGrams, recipe.Parts.Sum(p => p.Scoops) is { } all && scoops && recipe.Parts.All(p => p.Scoops is not null) ? Figures.Short(all, 0) : "", "", recipe.Parts.Sum(p => p.Share)),
        };
    }

    /// <summary>Label basis beside element basis.</summary>
    public static TableBlock Contents(Recipe recipe)
    {
        var rows = recipe.Grade.Present.Select(n => (IReadOnlyList<string>)
            [Symbol(n), Percent(recipe.Grade.Percent(n)), n.ToString(), Percent(recipe.Elements.Percent(n))]);
        return new("Contents, percent by weight", [new("As a label prints it"), new("%", true), new("As the element"), new("%", true)], [.. rows]);
    }

    public static string NitrogenForms(NitrogenForms n)
    {
        (string Name, double Fraction)[] forms =
            [("nitrate", n.Nitrate), ("ammonium", n.Ammonium), ("urea", n.Urea), ("organic", n.Organic), ("slow synthetic", n.SlowSynthetic)];
        var present = forms.Where(f => f.Fraction > 0).Select(f => $"{f.Name} {Figures.Percent(f.Fraction, 2)}").ToList();
        return present.Count == 0 ? "none" : string.Join(", ", present);
    }

    public static IReadOnlyList<Fact> Properties(Recipe r, string? wish, string currency)
    {
        var facts = new List<Fact>();
        if (wish is not null)
        {
            facts.Add(new("Wanted", wish));
        }

        facts.Add(new("Ratio error", Figures.Percent(r.RatioError, 2), $"{RatioErrorName}; largest single deviation {Figures.Percent(r.LargestDeviation, 2)}"));
        facts.Add(new("Strength", Figures.Percent(r.Strength), "N + P₂O₅ + K₂O"));
        facts.Add(new("Nitrogen forms", NitrogenForms(r.Nitrogen)));
        facts.Add(r.SaltIndex is { } salt ? new("Salt index", Figures.Short(salt, 1), "by weight, sodium nitrate = 100") : new("Salt index", "not known", "a part has no published figure"));
        facts.Add(r.OsmolalityPerGram is { } osm ? new("Osmolality", Figures.Short(osm, 1) + " mOsm/kg", "1 g in 1 kg of water, ideal") : new("Osmolality", "not known", "a part does not simply dissolve"));
        facts.Add(new("Lime equivalent", Lime(r.LimeEquivalent)));
        facts.Add(r.CostPerKg is { } cost ? new("Cost", $"{Figures.Number(cost, 2)} {currency} a kg", r.CostPerKgNutrient is { } per ? $"{Figures.Number(per, 2)} {currency} a kg of nutrient" : null) : new("Cost", "not known", "a part has no price"));
        if (r.Uncertainty is { } u)
        {
            facts.Add(new("Spread of the ratio error", $"{Figures.Percent(u.Median, 1)} median", $"{Figures.Percent(u.Percentile95, 1)} in 95 of 100 cases, {Figures.Percent(u.WorstCase, 1)} at worst; N {Figures.Percent(u.NitrogenLow, 1)} to {Figures.Percent(u.NitrogenHigh, 1)}"));
        }

        return facts;
    }

    /// <summary>Acidity in words a grower can act on.</summary>
    public static string Lime(double? kgPerKg) => kgPerKg switch
    {
        null => "not known: a part has no figure",
        > 0.005 => $"acidifying: 1 kg makes as much acid as {Figures.Short(kgPerKg.Value, 2)} kg of pure lime (CaCO₃) takes up",
        < -0.005 => $"liming: 1 kg takes up as much acid as {Figures.Short(-kgPerKg.Value, 2)} kg of pure lime (CaCO₃)",
        _ => "neutral: neither acidifies nor limes to speak of",
    };

    public static string StorageClassName(StorageClass storage) => storage switch
    {
        StorageClass.KeepsDry => "Keeps in a closed bag in a dry room",
        StorageClass.Airtight => "Keeps only airtight",
        StorageClass.OnTheDay => "Mix on the day",
        StorageClass.Never => "Do not mix",
        _ => "Not known",
    };

    /// <summary>When to use it up: what the moisture class allows to say, and no invented months.</summary>
    public static string UseBy(StorageClass storage) => storage switch
    {
        StorageClass.KeepsDry => "no date: good as long as it is dry and runs freely",
        StorageClass.Airtight => "no date: good while it runs freely; once caked or wet, do not measure it by scoop",
        StorageClass.OnTheDay => "the day it is mixed; make only what you give today",
        StorageClass.Never => "not to be mixed",
        _ => "soon: nothing published says how it keeps; make small batches",
    };

    private static string Percent(double percent) => Figures.Short(percent, percent < 0.1 ? 4 : 2);
}
