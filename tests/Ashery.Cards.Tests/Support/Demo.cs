using Ashery.Cards.Pictures;
using Ashery.Exchange.Gardens;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Planning;
using Ashery.Quantities;
using Ashery.Recipes;

namespace Ashery.Cards.Tests.Support;

/// <summary>The demo garden's cards by the real way: shelf, search, recipe, doses, year.</summary>
internal static class Demo
{
    public static DateOnly Day { get; } = new(2026, 11, 25);

    public static Garden Garden { get; } = DemoGarden.Create(Day);

    public static YearPlan Plan { get; } = YearPlanner.Plan(new(Garden, Day));

    public static MixRequest Request { get; } = new()
    {
        Wish = new(new Dictionary<Nutrients.Nutrient, double> { [Nutrients.Nutrient.N] = 4, [Nutrients.Nutrient.P] = 2, [Nutrients.Nutrient.K] = 5 }, IsGrade: false, "4:2:5"),
        Offers = [.. Garden.Shelf.Select(b => b.ToOffer() with { Stock = null }).Where(o => o.Material.Kind == MaterialKind.Straight)],
        Batch = new(new Mass(500), new Mass(500)),
        Measuring = new Measuring.ByScale(new Mass(1)),
    };

    public static RecipeCardRequest Recipe { get; } = Make();

    private static RecipeCardRequest Make()
    {
        var found = Mixing.Find(Request);
        Assert.True(found.Ok);
        var blend = found.Value.Blends[0];

        // Doses of the garden's own mineral feed on the first day of a summer month that has one, in walking order.
        var day = Plan.Feeds.Where(f => f.Kind == FeedKind.Mineral && f.Date >= new DateOnly(2027, 5, 1)).GroupBy(f => f.Date).First();
        return new()
        {
            Name = "Terrace blend",
            Recipe = blend,
            MadeOn = Day,
            Wish = Request.Wish.Name,
            Doses = PotDose.Walk(day.SelectMany(f => f.Doses), Garden),
            Settings = Garden.Settings,
            Triangle = TriangleView.Of(Request.Wish, Request.Offers, blend),
        };
    }
}
