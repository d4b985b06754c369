using System.Globalization;
using System.Text.Json;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Solutions;
using Ashery.Materials;
using Ashery.Solutions;
using Ashery.Solutions.Can;
using Ashery.Solutions.Waters;

namespace Ashery.Cli.Tests.Verbs;

/// <summary>The can on the command line.</summary>
public class DissolveTests
{
    /// <summary>
    /// The reference cases (tests/Ashery.Tests/Solutions/reference.json: a general geochemical code) as a grower types them: the figures are
    /// those of the library, and up to an ionic strength of 0.1 within the bounds of the reference.
    /// </summary>
    [Fact]
    public void All_reference_cases_go_through_the_command()
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Path.Combine(Repository.Root(), "tests", "Ashery.Tests", "Solutions", "reference.json")));
        int count = 0, counted = 0, inside = 0, byId = 0;
        foreach (var c in file.RootElement.GetProperty("cases").EnumerateArray())
        {
            var celsius = c.GetProperty("temperature_C").GetDouble();
            var water = c.GetProperty("water").GetString()!;
            var name = water.StartsWith("pure", StringComparison.Ordinal) ? "pure" : water.Contains("saline", StringComparison.Ordinal) ? "saline" : water.Replace(" water", "", StringComparison.Ordinal);
            var words = new List<string> { "dissolve", "--json", "--water", name, "--celsius", celsius.ToString(CultureInfo.InvariantCulture) };
            var source = SourceWaters.Default.Find(name)!;
            var can = new Dissolving(source.ToInput());
            foreach (var salt in c.GetProperty("g_per_kg_water").EnumerateObject())
            {
                var formula = salt.Name.Replace(" (100 %)", "", StringComparison.Ordinal).Split(' ')[^1];
                Assert.True(Salt.TryFind(formula, out var found), formula);
                var id = MaterialCatalogue.Default.All.FirstOrDefault(m => m.Formula == found.Formula && !m.IsLiquid)?.Id;
                byId += id is null ? 0 : 1;
                words.AddRange(["--add", string.Create(CultureInfo.InvariantCulture, $"{id ?? formula}={salt.Value.GetDouble():R}")]);
                can.Add(found, salt.Value.GetDouble());
            }

            var run = Command.Run([.. words]);
            Assert.True(run.Code == 0, string.Join(' ', words) + run.Errors);
            using var json = JsonDocument.Parse(run.Output);
            var solution = Speciation.Solve(can.Input().At(celsius));
            var answer = json.RootElement;
            Assert.Equal(solution.PH, Number(answer, "pH"), 1e-7);
            Assert.Equal(Conductivity.Of(solution), Number(answer, "ec"), 1e-8 * (1 + Number(answer, "ec")));
            Assert.Equal(Conductivity.At25(solution), Number(answer, "ecAt25C"), 1e-8 * (1 + Number(answer, "ecAt25C")));
            Assert.Equal(solution.IonicStrength, Number(answer, "ionicStrength"), 1e-9);
            count++;
            var expected = c.GetProperty("expected");
            if (Number(expected, "ionic_strength_mol_kg") <= 0.1)
            {
                counted++;
                var ec = (Number(answer, "ecAt25C") / Number(expected, "EC_25C_mS_cm")) - 1;
                inside += Math.Abs(ec) <= 0.03 && Math.Abs(Number(answer, "pH") - Number(expected, "pH")) <= 0.05 ? 1 : 0;
                foreach (var index in expected.GetProperty("SI").EnumerateObject())
                {
                    Assert.Equal(index.Value.GetDouble(), answer.GetProperty("saturation").GetProperty(index.Name).GetDouble(), 0.1);
                }
            }

            foreach (var solid in expected.GetProperty("precipitates").EnumerateArray())
            {
                Assert.True(answer.GetProperty("precipitates").TryGetProperty(solid.GetString()!, out _) || Number(expected.GetProperty("SI"), solid.GetString()!) < 0.3,
                    $"{c.GetProperty("id")}: {solid}");
            }
        }

        Assert.Equal((127, 121), (count, counted));
        Assert.True(byId > 150, FormattableString.Invariant($"{byId} additions by catalogue id"));
        Assert.True(inside >= 0.95 * counted, FormattableString.Invariant($"{inside} of {counted}"));
    }

    /// <summary>Acceptance: 100 g each in a kilogram of water, gypsum 0.34 to 0.38 mol, flagged.</summary>
    [Fact]
    public void A_stock_of_calcium_nitrate_and_epsom_salt_settles_gypsum()
    {
        using var json = JsonDocument.Parse(Command.Run("dissolve", "--add", "calcium-nitrate-tetrahydrate=100", "--add", "epsom-salt=100", "--celsius", "25", "--json").Output);
        Assert.InRange(json.RootElement.GetProperty("precipitates").GetProperty("gypsum").GetDouble(), 340, 380);
        Assert.True(json.RootElement.GetProperty("beyondGoodRange").GetBoolean());
        Assert.Contains("order of magnitude", json.RootElement.GetProperty("problems").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_json_written_by_hand_is_that_of_the_serialiser()
    {
        var report = CanMaker.Make(CanRequest.In(SourceWaters.Default.Find("hard")!, [Add("mkp", 1), Add("potassium-nitrate", 1), Add("nitric-acid", 0.1)])).Value!;
        Assert.Equal(JsonSerializer.Serialize(CanJsonFrom.Report(report), SolutionJsonContext.Shared.CanJson) + "\n", CanJsonText.Write(report));
    }

    [Theory]
    [InlineData("dissolve", "add", "Nothing is added")]
    [InlineData("dissolve --add", "add", "has no value")]
    [InlineData("dissolve --add epsom-salt", "add", "what and how much")]
    [InlineData("dissolve --add epson-salt=2", "add", "Did you mean epsom-salt")]
    [InlineData("dissolve --add epsom-salt=0", "add epsom-salt", "not above zero")]
    [InlineData("dissolve --add epsom-salt=-2", "add epsom-salt", "not above zero")]
    [InlineData("dissolve --add epsom-salt=1e5", "add epsom-salt", "not a number")]
    [InlineData("dissolve --add epsom-salt=100000", "add epsom-salt", "above the most allowed")]
    [InlineData("dissolve --add epsom-salt=two", "add epsom-salt", "not a number")]
    [InlineData("dissolve --add epsom-salt=1,5", "add epsom-salt", "point")]
    [InlineData("dissolve --add epsom-salt=2 --add epsom-salt=3", "add epsom-salt", "named twice")]
    [InlineData("dissolve --add neem-cake=2", "neem-cake", "not for the can")]
    [InlineData("dissolve --add K2SO5=2", "add", "Did you mean K2SO4")]
    [InlineData("dissolve --add epsom-salt=2 --celsius 50", "celsius", "40")]
    [InlineData("dissolve --add epsom-salt=2 --celsius -1", "celsius", "negative")]
    [InlineData("dissolve --add epsom-salt=2 --air shut", "air", "not one of closed, open")]
    [InlineData("dissolve --add epsom-salt=2 --water haard", "water", "Did you mean hard")]
    [InlineData("dissolve --add epsom-salt=2 --strength strong", "strength", "not a strength")]
    [InlineData("dissolve --add epsom-salt=2 --strength 1:0", "strength", "1")]
    [InlineData("dissolve --add epsom-salt=2 --strength \"100mg/L N\"", "strength", "gives no N")]
    public void Wrong_words_are_answered(string line, string field, string says)
    {
        var run = Command.Run(Shell.Split(line));
        Assert.Equal(2, run.Code);
        Assert.Contains($"ashery dissolve: {field}:", run.Said, StringComparison.Ordinal);
        Assert.Contains(says, run.Said, StringComparison.Ordinal);
        Assert.Empty(run.Output);
    }

    /// <summary>By hand: 46 % N of urea; 100 mg/L N need 0.2174 g; an injector of 1:200 makes 0.5 g/L of 100.</summary>
    [Theory]
    [InlineData("--add urea=46-0-0=3 --strength \"100mg/L N\"", 0.21739)]
    [InlineData("--add urea=100 --strength 1:200", 0.5)]
    [InlineData("--add urea=3 --strength 1.5g/L", 1.5)]
    public void Strengths_scale_the_parts(string words, double grams)
    {
        using var json = JsonDocument.Parse(Command.Run(["dissolve", "--json", .. Shell.Split(words)]).Output);
        Assert.Equal(grams, json.RootElement.GetProperty("added")[0].GetProperty("grams").GetDouble(), grams * 1e-3);
    }

    [Fact]
    public void Hydrates_may_be_written_with_a_point_a_star_or_the_dot()
    {
        var outputs = new[] { "MgSO4.7H2O", "MgSO4*7H2O", "MgSO4·7H2O" }.Select(f => Command.Run("dissolve", "--add", f + "=2", "--json").Output).Distinct();
        Assert.Single(outputs);
    }

    [Fact]
    public void A_bag_of_the_garden_counts_by_its_label()
    {
        using var folder = new TemporaryFolder();
        var garden = DemoGarden.Create(Command.Today);
        var own = OwnBag.WithLabel(MaterialCatalogue.Default.Find("potassium-sulfate")!, Ashery.Nutrients.LabelAnalysis.Grade(0, 0, 40)) with { Id = "old-sop" };
        var file = folder.Write("garden.json", GardenFile.Write(garden with { Shelf = [.. garden.Shelf, new("old-sop", own, null, null, null)] }));
        using var json = JsonDocument.Parse(Command.Run("dissolve", "--garden", file, "--add", "old-sop=1", "--json").Output);
        var potash = json.RootElement.GetProperty("nutrients").EnumerateArray().Single(n => n.GetProperty("nutrient").GetString() == "K");
        Assert.Equal(400, potash.GetProperty("onLabelBasis").GetDouble(), 1.0);
    }

    private static CanAddition Add(string id, double grams) => new(MaterialInWater.Of(MaterialCatalogue.Default.Find(id)!).Value!, grams);

    private static double Number(JsonElement json, string name) => json.GetProperty(name).GetDouble();
}
