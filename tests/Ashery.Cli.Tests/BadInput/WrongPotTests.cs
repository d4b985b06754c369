using System.Text.Json;
using System.Text.Json.Nodes;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.RootZone;
using Json.Schema;

namespace Ashery.Cli.Tests.BadInput;

/// <summary>Pot files that cannot be, on the command line and by their schema.</summary>
public class WrongPotTests
{
    public static TheoryData<string, string, string, string> Changes => new()
    {
        { "pot", "{ \"litres\": -3 }", "pot.litres", "outside 0.02 to 2000" },
        { "pot", "{ \"litres\": \"7\" }", "pot.litres", "not a number" },
        { "pot", "7", "pot", "not an object" },
        { "pot", "{ \"litres\": 7, \"heightCm\": 20 }", "pot.mouthCm", "missing" },
        { "medium", "\"moss\"", "medium", "no medium" },
        { "medium", "3", "medium", "not a text" },
        { "from", "\"2027-02-30\"", "from", "not a date" },
        { "from", "20270301", "from", "not a text" },
        { "days", "1.5", "days", "not a whole number" },
        { "days", "100000", "days", "outside 1 to 3660" },
        { "water", "\"treacle\"", "water", "no water" },
        { "water", "{ \"Ca\": -4 }", "water.Ca", "negative" },
        { "plant", "{ \"crop\": \"fuschia\" }", "plant.crop", "Did you mean fuchsia" },
        { "plant", "{ \"canopy\": 1e9 }", "plant.canopy", "outside" },
        { "plant", "{ \"ecLimit\": \"NaN\" }", "plant.ecLimit", "not a number" },
        { "watering", "{ \"rule\": \"sometimes\" }", "watering.rule", "There is no" },
        { "watering", "{ \"leachingFraction\": 1.5 }", "watering.leachingFraction", "outside 0 to 0.9" },
        { "standing", "[]", "standing", "a list" },
        { "start", "{ \"pH\": 14 }", "start.pH", "outside 3 to 9" },
        { "place", "{ \"latitude\": 43, \"normals\": [] }", "place.normals", "0 months" },
        { "place", "{ \"latitude\": 120 }", "place.latitude", "outside -90 to 90" },
        { "place", "{ \"latitude\": 43 }", "place.normals", "no weather" },
        { "events", "[ { \"date\": \"2027-04-01\", \"feed\": { \"uera\": 3 } } ]", "events[0].feed", "Did you mean urea" },
        { "events", "[ { \"date\": \"2027-04-01\", \"feed\": { \"urea\": -3 } } ]", "events[0].feed.urea", "outside 0" },
        { "events", "[ { \"date\": \"2027-04-01\", \"flush\": -1 } ]", "events[0].flush", "outside 0" },
        { "events", "[ { \"date\": \"2027-04-01\", \"flush\": 1, \"prune\": 0.2 } ]", "events[0].date", "several things" },
        { "events", "[ { \"date\": \"2027-04-01\" } ]", "events[0].date", "does nothing" },
        { "events", "[ { \"flush\": 1 } ]", "events[0].date", "missing" },
        { "events", "[ { \"date\": \"2027-04-01\", \"can\": { \"urea\": 1 } } ]", "events[0].litres", "missing" },
        { "events", "{}", "events", "not a list" },
        { "readings", "[ { \"date\": \"2031-04-01\", \"leachateEc\": 2 } ]", "reading of 2031-04-01", "outside the days" },
        { "readings", "[ { \"date\": \"2027-04-01\", \"leachateEc\": 900 } ]", "readings[0].leachateEc", "outside 0 to 50" },
        { "readings", "[ { \"date\": \"2027-04-01\" } ]", "readings[0].date", "no reading" },
        { "readings", "[ { \"date\": \"2027-04-01\", \"leachateEc\": 2, \"error\": -1 } ]", "readings[0].error", "outside" },
        { "colour", "\"red\"", "colour", "no such field" },
        { "weatherFile", "\"no-such.csv\"", "weatherFile", "is not there" },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public void A_pot_file_that_is_wrong_names_the_field(string key, string value, string field, string message)
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("pot", folder.Write("my-pot.json", With(key, value)), "--draws", "60", "--days", "100");
        Assert.Equal(2, run.Code);
        Assert.Contains($"ashery pot: {field}", run.Said, StringComparison.Ordinal);
        Assert.Contains(message, run.Said, StringComparison.Ordinal);
        WrongWordsTests.NeverATrace(run);
    }

    [Theory]
    [InlineData("pot", "No pot file")]
    [InlineData("pot a.json b.json", "More than one")]
    [InlineData("pot no-such.json", "is not there")]
    [InlineData("pot --demo --draws 0", "whole number from 1")]
    [InlineData("pot --demo --draws 1e9", "whole number")]
    [InlineData("pot --demo --draws 999999999", "to 20000")]
    [InlineData("pot --demo --draws 20000 --days 3000", "Days times draws")]
    [InlineData("pot --demo --draws 20", "50 draws or more")]
    [InlineData("pot --demo --days -3", "whole number from 1")]
    [InlineData("pot --demo --days 30", "outside the days")]
    [InlineData("pot --demo --seed x", "whole number")]
    public void Words_that_cannot_be(string line, string message)
    {
        var run = Command.Run(Shell.Split(line));
        Assert.Equal(2, run.Code);
        Assert.Contains(message, run.Said.ReplaceLineEndings(" "), StringComparison.Ordinal);
        WrongWordsTests.NeverATrace(run);
    }

    [Fact]
    public void Text_that_is_no_pot_is_told_so()
    {
        using var folder = new TemporaryFolder();
        foreach (var text in new[] { "", "pot 7 L", "[]", "{ \"from\": }", "null", "{ \"pot\": NaN }" })
        {
            var run = Command.Run("pot", folder.Write("my-pot.json", text));
            Assert.Equal(2, run.Code);
            WrongWordsTests.NeverATrace(run);
        }
    }

    /// <summary>The hand-written schema and the hand-written reader agree on shapes; names of the catalogue, dates and what hangs on other fields only the reader knows.</summary>
    [Fact]
    public void Schema_and_reader_agree()
    {
        Assert.True(Judge(PotFile.Sample()));
        Assert.True(Judge(PotFile.Write(PotFile.Read(PotFile.Sample()).Value!)));
        string[] beyond = ["no medium", "Did you mean", "not a date", "no water", "no weather", "outside the days", "is not there", "missing", "negative"];
        foreach (var row in Changes)
        {
            var (key, value, field, message) = row.Data;
            if (!Array.Exists(beyond, b => message.StartsWith(b, StringComparison.Ordinal)) || field is "events[0].litres" or "events[0].date")
            {
                Assert.False(Judge(With(key, value)), field + " " + message);
            }
        }
    }

    private static string With(string key, string value)
    {
        var node = JsonNode.Parse(PotFile.Sample())!.AsObject();
        node[key] = JsonNode.Parse(value);
        return node.ToJsonString();
    }

    private static bool Judge(string json)
    {
        // The schema of waters is another file; here a water is a name.
        var text = File.ReadAllText(Path.Combine(Repository.Root(), "docs", "schemas", "pot-file.schema.json")).Replace("{ \"$ref\": \"water-file.schema.json\" }", "{ \"type\": \"object\" }", StringComparison.Ordinal);
        using var document = JsonDocument.Parse(json);
        return JsonSchema.FromText(text).Evaluate(document.RootElement).IsValid;
    }
}
