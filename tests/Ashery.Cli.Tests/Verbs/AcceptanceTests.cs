using System.Text.Json;
using Ashery.Cli.Tests.Frame;
using Ashery.Cli.Tests.Process;

namespace Ashery.Cli.Tests.Verbs;

/// <summary>
/// Lines 2 to 4 of the acceptance, on the built program as a process of its own. The figures were worked out by hand before there
/// was a program: shares of ammonium sulfate 21-0-0, MAP 12-61-0 and potassium sulfate 0-0-50 that give 17 : 5 : 24 exactly.
/// </summary>
public class AcceptanceTests
{
    private const string Three = "ammonium-sulfate=21-0-0,map-granular=12-61-0,potassium-sulfate=0-0-50";
    private const string Six = Three + ",urea=46-0-0,dap-granular=18-46-0,potassium-chloride=0-0-60";

    [Fact]
    public void A_ratio_of_three_materials_is_met_exactly_and_proved()
    {
        var run = Programs.Ashery(["mix", "--ratio", "17:5:24", "--from", Three, "--json"]);
        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        var blend = json.RootElement.GetProperty("blends")[0];
        Assert.Equal(57.576, 100 * Share(blend, "ammonium-sulfate"), 5e-4);
        Assert.Equal(6.188, 100 * Share(blend, "map-granular"), 5e-4);
        Assert.Equal(36.236, 100 * Share(blend, "potassium-sulfate"), 5e-4);
        AssertGrade(blend, 12.834, 3.775, 18.118, 5e-4);
        Assert.True(json.RootElement.GetProperty("proved").GetBoolean());
        Assert.Equal(0, blend.GetProperty("ratioError").GetDouble(), 1e-9);
        AssertGrade(json.RootElement.GetProperty("atExactRatio"), 12.834, 3.775, 18.118, 5e-4);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("outOfReach").ValueKind);
    }

    [Fact]
    public void A_grade_beyond_them_is_out_of_reach_with_that_blend_as_the_strongest_at_the_ratio()
    {
        var run = Programs.Ashery(["mix", "--grade", "17-5-24", "--from", Three, "--json"]);
        Assert.Equal(1, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        Assert.NotEmpty(json.RootElement.GetProperty("outOfReach").GetProperty("why").GetString()!);
        AssertGrade(json.RootElement.GetProperty("atExactRatio"), 12.834, 3.775, 18.118, 5e-4);
    }

    /// <summary>Common practice, no source: 8 + 1 + 6 parts give 12-4-20.</summary>
    [Fact]
    public void Fifteen_grams_in_grams_are_eight_one_and_six()
    {
        var run = Programs.Ashery(["mix", "--ratio", "17:5:24", "--from", Three, "--batch", "15g", "--step", "1g", "--json"]);
        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        var blend = json.RootElement.GetProperty("blends")[0];
        Assert.Equal((8, 1, 6), (Grams(blend, "ammonium-sulfate"), Grams(blend, "map-granular"), Grams(blend, "potassium-sulfate")));
        AssertGrade(blend, 12.0, 61.0 / 15, 20.0, 1e-9);
    }

    [Fact]
    public void Of_six_materials_at_most_four_are_nine_one_one_and_four()
    {
        var run = Programs.Ashery(["mix", "--ratio", "17:5:24", "--from", Six, "--batch", "15g", "--step", "1g", "--at-most", "4", "--json"]);
        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        var blend = json.RootElement.GetProperty("blends")[0];
        Assert.Equal(
            (9, 1, 1, 4),
            (Grams(blend, "ammonium-sulfate"), Grams(blend, "map-granular"), Grams(blend, "potassium-sulfate"), Grams(blend, "potassium-chloride")));
        Assert.Equal(4, blend.GetProperty("parts").GetArrayLength());
    }

    [Theory]
    [InlineData("ammonium-nitrate", "urea", "dryStored", "stop")]
    [InlineData("ammonium-nitrate", "urea", "inSolution", "fine")]
    [InlineData("calcium-nitrate-tetrahydrate", "epsom-salt", "inSolution", "stop")]
    [InlineData("ammonium-sulfate", "wood-ash", "dryToday", "stop")]
    [InlineData("potassium-nitrate", "neem-cake", "dryStored", "stop")]
    public void Pairs_are_judged(string a, string b, string question, string verdict)
    {
        var run = Command.Run("compatible", a, b, "--json");
        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        var pair = Assert.Single(json.RootElement.GetProperty("pairs").EnumerateArray());
        Assert.Equal(verdict, pair.GetProperty(question).GetString());
        Assert.NotEmpty(pair.GetProperty("reason").GetString()!);
        Assert.NotEmpty(pair.GetProperty("source").GetString()!);
    }

    [Fact]
    public void Three_straights_keep_together_and_dissolve_up_to_a_strength()
    {
        var run = Programs.Ashery(["compatible", "ammonium-sulfate", "map-granular", "potassium-sulfate", "--json"]);
        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        var pairs = json.RootElement.GetProperty("pairs").EnumerateArray().ToList();
        Assert.Equal(3, pairs.Count);
        Assert.All(pairs, static pair =>
        {
            Assert.Equal("fine", pair.GetProperty("dryStored").GetString());
            Assert.Equal("limited", pair.GetProperty("inSolution").GetString());
            Assert.Matches("\\d+ g", pair.GetProperty("details").GetProperty("inSolution").GetProperty("limit").GetString());
        });
    }

    private static double Share(JsonElement blend, string material) => Part(blend, material).GetProperty("share").GetDouble();

    private static int Grams(JsonElement blend, string material) => (int)Math.Round(Part(blend, material).GetProperty("grams").GetDouble());

    private static JsonElement Part(JsonElement blend, string material) =>
        blend.GetProperty("parts").EnumerateArray().Single(p => p.GetProperty("material").GetString() == material);

    private static void AssertGrade(JsonElement blend, double n, double p, double k, double within)
    {
        var grade = blend.GetProperty("grade");
        Assert.Equal(n, grade.GetProperty("N").GetDouble(), within);
        Assert.Equal(p, grade.GetProperty("P2O5").GetDouble(), within);
        Assert.Equal(k, grade.GetProperty("K2O").GetDouble(), within);
    }
}
