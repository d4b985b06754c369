using System.Text.Json;
using Ashery.Compatibility;
using Ashery.Exchange.Mix;

namespace Ashery.Exchange.Tests.Mix;

public class CompatibleJsonTests
{
    [Fact]
    public void A_pair_holds_three_words_and_the_chemistry_of_the_strictest()
    {
        var pair = new PairVerdict(
            "a",
            "b",
            new Judgement(Verdict.Fine, "nothing happens", "a handbook"),
            new Judgement(Verdict.Stop, "it melts", "another handbook", IsHardStop: true),
            new Judgement(Verdict.Limited, "it comes out of solution", "a paper", "up to 100 g/L"));
        var root = JsonDocument.Parse(CompatibleJson.Write([pair])).RootElement.GetProperty("pairs")[0];
        Assert.Equal("a", root.GetProperty("a").GetString());
        Assert.Equal("b", root.GetProperty("b").GetString());
        Assert.Equal("fine", root.GetProperty("dryToday").GetString());
        Assert.Equal("stop", root.GetProperty("dryStored").GetString());
        Assert.Equal("limited", root.GetProperty("inSolution").GetString());
        Assert.Equal("it melts", root.GetProperty("reason").GetString());
        Assert.Equal("another handbook", root.GetProperty("source").GetString());
        Assert.Equal("up to 100 g/L", root.GetProperty("details").GetProperty("inSolution").GetProperty("limit").GetString());
        Assert.True(root.GetProperty("details").GetProperty("dryStored").GetProperty("hardStop").GetBoolean());
    }

    [Fact]
    public void Text_is_what_the_generated_serialiser_writes()
    {
        var chart = CompatibilityChart.Default;
        var materials = Ashery.Materials.MaterialCatalogue.Default.All;
        var pairs = new List<PairVerdict>();
        for (var i = 1; i < materials.Count; i++)
        {
            pairs.Add(chart.Judge(materials[i - 1], materials[i]));
        }

        var record = new CompatibleJson([.. pairs.Select(PairJson.From)]);
        Assert.Equal(Ashery.Exchange.Json.AsheryJson.Write(record, MixJsonContext.Shared.CompatibleJson), CompatibleJson.Write(pairs));
    }

    [Fact]
    public void Not_known_is_a_word_of_its_own()
    {
        var unknown = new Judgement(Verdict.Unknown, "nothing published says so", "none");
        var root = JsonDocument.Parse(CompatibleJson.Write([new PairVerdict("a", "b", unknown, unknown, unknown)])).RootElement;
        Assert.Equal("unknown", root.GetProperty("pairs")[0].GetProperty("dryToday").GetString());
    }
}
