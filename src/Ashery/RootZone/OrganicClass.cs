using System.Text.Json;
using Ashery.Sources;

namespace Ashery.RootZone;

/// <summary>How a class of organic materials releases its nitrogen. Rows of data/rootzone/organic.json.</summary>
/// <param name="Id"><c>meal</c>, <c>cake</c> or <c>compost</c>.</param>
/// <param name="Name">In words.</param>
/// <param name="FastShare">Part of the organic nitrogen that rots fast.</param>
/// <param name="Rate">Of the fast part, 1/day at 20 °C.</param>
/// <param name="Q10">Of that rate.</param>
/// <param name="Materials">Catalogue ids.</param>
public sealed record OrganicClass(string Id, string Name, SpreadFigure FastShare, SpreadFigure Rate, SpreadFigure Q10, IReadOnlyList<string> Materials)
{
    // A material without a row: high-nitrogen ones rot as meals do, moist or poor ones as composts.
    private const double MealNitrogen = 0.08;

    private static readonly Lazy<List<OrganicClass>> Rows = new(static () => DataRows.Read("data/rootzone/organic.json", Read));

    public static IReadOnlyList<OrganicClass> All => Rows.Value;

    public static OrganicClass Meal => Named("meal");

    public static OrganicClass Cake => Named("cake");

    public static OrganicClass Compost => Named("compost");

    /// <summary>Rates at 20 °C by class, 1/day.</summary>
    internal static (double Meal, double Cake, double Compost) Rates => (Meal.Rate.Value, Cake.Rate.Value, Compost.Rate.Value);

    /// <summary>The class of a material.</summary>
    public static OrganicClass Of(Materials.Material material)
    {
        foreach (var row in Rows.Value)
        {
            if (row.Materials.Contains(material.Id))
            {
                return row;
            }
        }

        return material.Kind == Ashery.Materials.MaterialKind.BulkyOrganic ? Compost : material.Nitrogen.Organic >= MealNitrogen ? Meal : Cake;
    }

    private static OrganicClass Named(string id) => Rows.Value.Find(r => r.Id == id)!;

    private static OrganicClass Read(JsonElement row) => new(
        row.Text("id"), row.Text("name"), SpreadFigure.Read(row, "fastShare"), SpreadFigure.Read(row, "rate"), SpreadFigure.Read(row, "q10"), row.Texts("materials"));
}
