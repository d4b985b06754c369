using System.Text.Json;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.Solutions;
using Ashery.Solutions.Can;
using Ashery.Solutions.Targets;
using Ashery.Solutions.Waters;

namespace Ashery.Cli.Tests.Verbs;

/// <summary>Solution targets on the command line.</summary>
public class SolutionTests
{
    [Fact]
    public void The_json_written_by_hand_is_that_of_the_serialiser()
    {
        var request = new TargetRequest
        {
            Target = new([TargetWish.Aim("N", 150), TargetWish.Aim("Ca", 60), TargetWish.AtMost("Cl", 10), TargetWish.AtLeast("S", 5)], Ec: 1.9),
            Water = SourceWaters.Default.Find("hard")!.ToInput(),
            Offers = [new(MaterialInWater.OfFormula("KNO3").Value!), new(MaterialInWater.OfFormula("NH4NO3").Value!)],
            StepGrams = 0.1,
        };
        var answer = TargetSearch.Find(request).Value!;
        Assert.Equal(JsonSerializer.Serialize(TargetJsonFrom.Answer(answer), SolutionJsonContext.Shared.TargetJson) + "\n", TargetJsonText.Write(answer));
    }

    /// <summary>The recipe, dissolved by the other verb, has the EC and pH that were said.</summary>
    [Fact]
    public void What_is_found_is_what_dissolving_it_gives()
    {
        using var found = JsonDocument.Parse(Command.Run(Shell.Split("solution N=120 P=25 K=150 Mg=30 --water moderate --from KNO3,KH2PO4,NH4NO3,MgSO4.7H2O --ec 1.4 --json")).Output);
        var first = found.RootElement.GetProperty("recipes")[0];
        Assert.Equal(1.4, first.GetProperty("ecAt25C").GetDouble(), 0.005);
        var words = new List<string> { "dissolve", "--water", "moderate", "--json" };
        foreach (var part in first.GetProperty("parts").EnumerateArray())
        {
            words.AddRange(["--add", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{part.GetProperty("id").GetString()}={part.GetProperty("gramsPerLitre").GetDouble():F9}")]);
        }

        using var can = JsonDocument.Parse(Command.Run([.. words]).Output);
        Assert.Equal(can.RootElement.GetProperty("pH").GetDouble(), first.GetProperty("pH").GetDouble(), 1e-5);
        Assert.Equal(can.RootElement.GetProperty("ecAt25C").GetDouble(), first.GetProperty("ecAt25C").GetDouble(), 1e-5);
    }

    [Theory]
    [InlineData("solution --from KNO3", "target", "No nutrient is given a figure")]
    [InlineData("solution Cl<=20 --from KNO3", "target", "limits alone")]
    [InlineData("solution N --from KNO3", "target", "no wish")]
    [InlineData("solution N=150 N=160 --from KNO3", "target", "named twice")]
    [InlineData("solution N=-1 --from KNO3", "target, N", "negative")]
    [InlineData("solution N=1e3 --from KNO3", "target, N", "not a number")]
    [InlineData("solution Xx=5 --from KNO3", "target", "nothing a solution can be asked")]
    [InlineData("solution N=150 --from kno4", "from", "kno4")]
    [InlineData("solution N=150 --from neem-cake", "neem-cake", "not for the can")]
    [InlineData("solution N=150 --from KNO3,KNO3", "from", "named twice")]
    [InlineData("solution N=150 --from KNO3 --ec 0", "ec", "0.02")]
    [InlineData("solution N=150 --from KNO3 --ph 6", "acid", "nothing is named")]
    [InlineData("solution N=150 --from KNO3 --acid nitric", "ph", "no pH")]
    [InlineData("solution N=150 --from KNO3 --ph 6 --acid nitrous", "acid", "not one of")]
    [InlineData("solution N=150 --from KNO3 --ph 6 --acid nitric --strength 140%", "strength", "100")]
    [InlineData("solution N=150 --from KNO3 --strength 60%", "strength", "no acid")]
    [InlineData("solution N=150 --from KNO3 --ph 6 --with KNO3", "acid", "neither an acid nor a base")]
    [InlineData("solution N=150 --from KNO3 --litres 0", "litres", "0.01")]
    [InlineData("solution N=150 --from KNO3 --step 0g", "step", "0")]
    [InlineData("solution N=150 --from KNO3 --at-most 0", "at-most", "1")]
    [InlineData("solution N=150 --from KNO3 --price mkp=2", "price", "not among the materials")]
    [InlineData("solution N=150 --from KNO3 --most KNO3", "most", "not a number")]
    [InlineData("solution N=150 --from KNO3 --water haard", "water", "Did you mean hard")]
    public void Wrong_words_are_answered(string line, string field, string says)
    {
        var run = Command.Run(Shell.Split(line.Replace("<", "\"<\"", StringComparison.Ordinal)));
        Assert.Equal(2, run.Code);
        Assert.Contains($"ashery solution: {field}:", run.Said, StringComparison.Ordinal);
        Assert.Contains(says, run.Said, StringComparison.Ordinal);
        Assert.Empty(run.Output);
    }

    [Fact]
    public void What_cannot_be_met_ends_with_one()
    {
        var run = Command.Run("solution", "N=100", "Na<=10", "--water", "saline", "--from", "KNO3");
        Assert.Equal(1, run.Code);
        Assert.Contains("The water alone brings", run.Output, StringComparison.Ordinal);
    }
}
