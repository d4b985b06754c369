using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Quantities;
using Ashery.Recipes;

namespace Ashery.Tests.Recipes;

/// <summary>Catalogue materials with labels typed in, as on the command line.</summary>
internal static class Shelf
{
    public static Offer Bag(string id, double? price = null, double? stock = null) =>
        new(MaterialCatalogue.Default.Find(id) ?? throw new ArgumentException(id), price, stock is { } g ? new Mass(g) : null);

    public static Offer Bag(string id, double n, double p2O5, double k2O, double? price = null)
    {
        var material = MaterialCatalogue.Default.Find(id) ?? throw new ArgumentException(id);
        var contents = Enum.GetValues<Nutrient>().ToDictionary(x => x, x => material.Label[x]);
        contents[Nutrient.N] = n / 100;
        contents[Nutrient.P] = p2O5 / 100;
        contents[Nutrient.K] = k2O / 100;
        return new Offer(
            material with { Label = new LabelAnalysis(contents), Nitrogen = material.Nitrogen.WithTotal(n / 100) }, price);
    }

    /// <summary>Ammonium sulfate, MAP and potassium sulfate as the hand-checked values take them.</summary>
    public static Offer[] Three =>
        [Bag("ammonium-sulfate", 21, 0, 0), Bag("map-granular", 12, 61, 0), Bag("potassium-sulfate", 0, 0, 50)];

    /// <summary>The three with urea, DAP and potassium chloride.</summary>
    public static Offer[] Six =>
        [.. Three, Bag("urea", 46, 0, 0), Bag("dap-granular", 18, 46, 0), Bag("potassium-chloride", 0, 0, 60)];

    public static Wish Wish(string text) => WishReader.Parse(text).Value!;

    public static MixLimits Limits(string text) => LimitReader.Parse(text).Value!;

    public static BatchWindow Batch(string text) => BatchReader.Parse(text).Value!;

    public static MixAnswer Mix(MixRequest request)
    {
        var result = Mixing.Find(request);
        Assert.True(result.Ok, string.Join("\n", result.Problems));
        return result.Value;
    }

    public static double Grams(Recipe recipe, string id) => recipe.Parts.SingleOrDefault(p => p.Material.Id == id)?.Grams ?? 0;

    public static double Share(Recipe recipe, string id) => recipe.Parts.SingleOrDefault(p => p.Material.Id == id)?.Share ?? 0;

    public static void AssertGrade(double n, double p2O5, double k2O, Recipe recipe, double within)
    {
        Assert.Equal(n, recipe.Grade.Percent(Nutrient.N), within);
        Assert.Equal(p2O5, recipe.Grade.Percent(Nutrient.P), within);
        Assert.Equal(k2O, recipe.Grade.Percent(Nutrient.K), within);
    }
}
