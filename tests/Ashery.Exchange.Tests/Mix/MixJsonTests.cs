using System.Text.Json;
using Ashery.Exchange.Json;
using Ashery.Exchange.Mix;
using Ashery.Materials;
using Ashery.Quantities;
using Ashery.Recipes;

namespace Ashery.Exchange.Tests.Mix;

/// <summary>The names and units that others read from <c>ashery mix --json</c>.</summary>
public class MixJsonTests
{
    private static readonly string[] Three = ["ammonium-sulfate=21-0-0", "map-granular=12-61-0", "potassium-sulfate=0-0-50"];

    [Fact]
    public void A_blend_holds_the_agreed_names_in_the_agreed_units()
    {
        var root = Json("17:5:24", Three);
        Assert.True(root.GetProperty("proved").GetBoolean());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("outOfReach").ValueKind);
        var blend = root.GetProperty("blends")[0];
        var parts = blend.GetProperty("parts");
        Assert.Equal("ammonium-sulfate", parts[0].GetProperty("material").GetString());
        Assert.Equal(0.57576, parts[0].GetProperty("share").GetDouble(), 0.00001);
        Assert.Equal(575.76, parts[0].GetProperty("grams").GetDouble(), 0.01);

        // Hand-checked: 57.576 / 6.188 / 36.236 % make 12.834-3.775-18.118.
        var grade = blend.GetProperty("grade");
        Assert.Equal(12.834, grade.GetProperty("N").GetDouble(), 0.001);
        Assert.Equal(3.775, grade.GetProperty("P2O5").GetDouble(), 0.001);
        Assert.Equal(18.118, grade.GetProperty("K2O").GetDouble(), 0.001);
        Assert.Equal(34.727, blend.GetProperty("strength").GetDouble(), 0.001);
        Assert.Equal(0, blend.GetProperty("ratioError").GetDouble(), 1e-9);
        Assert.True(blend.GetProperty("saltIndex").GetDouble() > 0);
        Assert.True(blend.GetProperty("limeEquivalent").GetDouble() > 0);
        Assert.Equal(JsonValueKind.Null, blend.GetProperty("cost").ValueKind);
        Assert.Equal(12.834, root.GetProperty("atExactRatio").GetProperty("grade").GetProperty("N").GetDouble(), 0.001);
        Assert.Equal("mean relative deviation of the nutrient shares", root.GetProperty("errorMeasure").GetString());
    }

    [Fact]
    public void Out_of_reach_says_why_and_what_to_buy()
    {
        var root = Json("17-5-24", Three);
        Assert.Equal(0, root.GetProperty("blends").GetArrayLength());
        var reach = root.GetProperty("outOfReach");
        Assert.NotEmpty(reach.GetProperty("why").GetString()!);
        Assert.Equal("N", reach.GetProperty("fallsShort").GetString());
        Assert.Equal("urea", reach.GetProperty("toBuy").GetProperty("material").GetString());
        Assert.Equal(18.118, root.GetProperty("atExactRatio").GetProperty("grade").GetProperty("K2O").GetDouble(), 0.001);
    }

    [Fact]
    public void Everything_of_a_blend_is_there()
    {
        var blend = Json("17:5:24", Three).GetProperty("blends")[0];
        foreach (var name in (string[])["batchGrams", "elements", "nitrogen", "largestDeviation", "costPerKgNutrient", "osmolalityPerGram", "storage", "pairs", "cautions", "notes", "uncertainty"])
        {
            Assert.True(blend.TryGetProperty(name, out _), name);
        }

        Assert.Equal(3, blend.GetProperty("pairs").GetArrayLength());
        Assert.Contains("label", blend.GetProperty("cautions")[0].GetProperty("words").GetString()!, StringComparison.Ordinal);
        Assert.Equal(12.834, blend.GetProperty("nitrogen").GetProperty("ammonium").GetDouble(), 0.001);
    }

    // The text is written by hand for speed; the generated serialiser is the judge, both ways.
    [Theory]
    [InlineData("17:5:24", "", false)]
    [InlineData("17:5:24", "material potassium-sulfate<=20%", false)]
    [InlineData("17-5-24", "", false)]
    [InlineData("17:5:24 Mg 2", "", false)]
    [InlineData("17:5:24", "chloride<=5%; acidity<=-1", false)]
    [InlineData("17:5:24", "", true)]
    public void Text_is_what_the_generated_serialiser_writes_and_reads_back(string wish, string limits, bool scooped)
    {
        var scoop = new Scoop("5mL", Volume.FromMillilitres(5), new Dictionary<string, Spread>());
        var answer = Mixing.Find(new MixRequest
        {
            Wish = WishReader.Parse(wish).Value!,
            Offers = [.. Three.Append("potassium-chloride").Append("neem-cake").Select(m => new Offer(InlineMaterial.Parse(m, MaterialCatalogue.Default).Value!, 1.25))],
            Limits = LimitReader.Parse(limits).Value!,
            Measuring = scooped ? new Measuring.ByScoop(scoop) : new Measuring.Freely(),
            Draws = scooped ? 100 : 0,
            Rank = scooped ? RankBy.Percentile95 : RankBy.TypicalAnalysis,
        }).Value!;
        var text = MixJson.Write(answer);
        Assert.Equal(AsheryJson.Write(MixJson.From(answer), MixJsonContext.Shared.MixJson), text);
        var again = JsonSerializer.Deserialize(text, MixJsonContext.Shared.MixJson)!;
        Assert.Equal(text, AsheryJson.Write(again, MixJsonContext.Shared.MixJson));
    }

    private static JsonElement Json(string wish, string[] materials) =>
        JsonDocument.Parse(MixJson.Write(Answer(wish, materials))).RootElement;

    private static MixAnswer Answer(string wish, string[] materials) => Mixing.Find(new MixRequest
    {
        Wish = WishReader.Parse(wish).Value!,
        Offers = [.. materials.Select(m => new Offer(InlineMaterial.Parse(m, MaterialCatalogue.Default).Value!))],
    }).Value!;
}
