using Ashery.Blending.Amounts;
using Ashery.Materials;
using Ashery.Solutions.Acids;
using Ashery.Solutions.Can;
using Ashery.Solutions.Targets;
using Ashery.Solutions.Waters;

namespace Ashery.Bench;

/// <summary>Recipes for a solution target: the proved search alone, and with EC, pH and the cans of the recipes.</summary>
internal static class TargetBench
{
    private static readonly string[] Shelf =
    [
        "calcium-nitrate-double", "potassium-nitrate", "mkp", "epsom-salt", "ammonium-nitrate", "potassium-sulfate", "map-technical", "magnesium-nitrate-hexahydrate",
        "ammonium-sulfate", "calcium-chloride-dihydrate", "potassium-chloride", "dap-technical",
    ];

    public static void Run()
    {
        Table.Head("Recipes for a solution of 6 nutrients in hard water, at most 6 materials, 3 best, ms", "materials", "search alone", "recipes with their cans", "with EC and pH", "in steps of 0.1 g", "proved");
        foreach (var count in new[] { 4, 8, 12 })
        {
            var water = SourceWaters.Default.Find("hard")!;
            var request = new TargetRequest
            {
                Target = new(TargetReader.ReadAll("N=160 P=30 K=180 Ca=130 Mg=35 S=60 Cl<=120").Value!),
                Water = water.ToInput(),
                WaterName = water.Name,
                Offers = [.. Shelf.Take(count).Select(id => new TargetOffer(MaterialInWater.Of(MaterialCatalogue.Default.Find(id)!).Value!))],
            };
            var tuned = request with { Target = request.Target with { Ec = 2.4, PH = 5.9 }, Agent = PhAgent.Of(AcidBottle.OfStrength(Acid.Find("nitric")!, 0.38).Value!) };
            var proved = true;
            var search = new TargetModel(request).Search(1, 0, best: 3);
            Table.Row(
                Table.Whole(count), Table.Figure(Timing.Median(() => proved &= AmountSearch.Find(search).Proved)), Time(request), Time(tuned), Time(request with { StepGrams = 0.1 }), proved ? "yes" : "no");

            string Time(TargetRequest r) => Table.Figure(Timing.Median(() => proved &= TargetSearch.Find(r).Value!.Proved));
        }
    }
}
