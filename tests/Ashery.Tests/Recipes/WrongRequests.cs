using Ashery.Nutrients;
using Ashery.Quantities;
using Ashery.Materials;
using Ashery.Recipes;
using static Ashery.Tests.Recipes.Shelf;

namespace Ashery.Tests.Recipes;

/// <summary>Requests that a page or a file may bring and that are wrong in themselves.</summary>
public class WrongRequests
{
    private static readonly MixRequest Good = new() { Wish = Wish("17:5:24"), Offers = Three };

    public static TheoryData<string, MixRequest> Wrong => new()
    {
        { "from", Good with { Offers = [] } },
        { "from, ammonium-sulfate", Good with { Offers = [.. Three, Three[0]] } },
        { "ratio", Good with { Wish = Good.Wish with { Shares = new Dictionary<Nutrient, double>() } } },
        { "ratio", Good with { Wish = Good.Wish with { Shares = new Dictionary<Nutrient, double> { [Nutrient.N] = 0 } } } },
        { "ratio, N", Good with { Wish = Good.Wish with { Shares = new Dictionary<Nutrient, double> { [Nutrient.N] = double.NaN } } } },
        { "ratio, N", Good with { Wish = Good.Wish with { Shares = new Dictionary<Nutrient, double> { [Nutrient.N] = -1 } } } },
        { "grade", Good with { Wish = new Wish(new Dictionary<Nutrient, double> { [Nutrient.N] = 0.7, [Nutrient.K] = 0.7 }, IsGrade: true, "70-0-70") } },
        { "at-most", Good with { AtMost = 0 } },
        { "at-most", Good with { AtMost = 99 } },
        { "best", Good with { Best = -1 } },
        { "draws", Good with { Draws = int.MaxValue } },
        { "batch", Good with { Batch = new BatchWindow(new Mass(0), new Mass(0)) } },
        { "batch", Good with { Batch = new BatchWindow(new Mass(double.NaN), new Mass(15)) } },
        { "batch", Good with { Batch = new BatchWindow(new Mass(15), new Mass(10)) } },
        { "batch", Good with { Batch = Batch("15.5g"), Measuring = new Measuring.ByScale(new Mass(1)) } },
        { "step", Good with { Batch = Batch("15g"), Measuring = new Measuring.ByScale(new Mass(-1)) } },
        { "step", Good with { Batch = Batch("15g"), Measuring = new Measuring.ByScale(new Mass(20)) } },
        { "scoop", Good with { Measuring = new Measuring.ByScoop(new Scoop("spoon", new Volume(0), new Dictionary<string, Spread>())) } },
        { "price of ammonium-sulfate", Good with { Offers = [Three[0] with { PricePerKg = double.PositiveInfinity }, Three[1]] } },
        { "stock of ammonium-sulfate", Good with { Offers = [Three[0] with { Stock = new Mass(-1) }, Three[1]] } },
        { "label of urea, N", Good with { Offers = [Bag("urea", 460, 0, 0)] } },
        { "limit chloride", Good with { Limits = new MixLimits { Chloride = -0.1 } } },
        { "limit chloride", Good with { Limits = new MixLimits { Chloride = double.NaN } } },
        { "limit salt-index", Good with { Limits = new MixLimits { SaltIndex = double.PositiveInfinity } } },
        { "limit material gypsum", Good with { Limits = new MixLimits { Materials = [new MaterialLimit("gypsum", 0.1, null)] } } },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Each_is_refused_with_its_field_and_a_way_out(string field, MixRequest request)
    {
        var result = Mixing.Find(request);
        Assert.False(result.Ok);
        var problem = Assert.Single(result.Problems);
        Assert.Equal(field, problem.Field);
        Assert.NotEmpty(problem.Message);
        Assert.NotEmpty(problem.WayOut);
    }
}
