using System.Text.Json;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.RootZone;
using Json.Schema;

namespace Ashery.Cli.Tests.Schemas;

/// <summary>The schema of pot files, written by hand as the reader is: what the reader takes is valid by it, what it refuses for its shape is not.</summary>
public class PotFileSchemaTests
{
    [Theory]
    [InlineData("{ \"pot\": { \"litres\": 5 } }", true)]
    [InlineData("{ \"pot\": { \"diameter\": 24, \"height\": 22 }, \"medium\": \"bark\", \"water\": { \"Ca\": 40, \"alkalinity\": 120, \"pH\": 7.4 } }", true)]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"events\": [ { \"date\": \"2026-04-01\", \"feed\": \"urea\", \"grams\": 2 }, { \"date\": \"2026-05-01\", \"flush\": 3 } ] }", true)]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"events\": [ { \"date\": \"2026-04-01\", \"coated\": { \"n\": 18, \"days\": 180 }, \"grams\": 20 } ] }", true)]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"plant\": { \"grown\": 0.3 }, \"watering\": { \"rule\": \"days\", \"everyDays\": 2 } }", true)]
    [InlineData("{ }", false)]
    [InlineData("{ \"pot\": { \"litres\": 0 } }", false)]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"medium\": \"moss\" }", false)]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"watering\": { \"rule\": \"often\" } }", false)]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"events\": [ { \"date\": \"2026-04-01\" } ] }", false)]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"events\": [ { \"feed\": \"urea\", \"grams\": 2 } ] }", false)]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"events\": [ { \"date\": \"2026-04-01\", \"prune\": 1 } ] }", false)]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"start\": { \"pH\": 1 } }", false)]
    [InlineData("{ \"pot\": { \"litres\": 5 }, \"colour\": 1 }", false)]
    [InlineData("[]", false)]
    public void Schema_and_reader_agree(string text, bool good)
    {
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root(), "docs", "schemas", "pot-file.schema.json")));
        using var document = JsonDocument.Parse(text);
        Assert.Equal(good, schema.Evaluate(document.RootElement).IsValid);
        Assert.Equal(good, PotFile.Read(text).Ok);
    }
}
