using System.Text.Json;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.Waters;
using Ashery.Solutions.Waters;
using Json.Schema;

namespace Ashery.Cli.Tests.Schemas;

/// <summary>The schema of water files, written by hand as the reader is: what the program writes is valid by it, what the reader refuses for its shape is not.</summary>
public class WaterFileSchemaTests
{
    [Fact]
    public void Written_reports_are_valid()
    {
        foreach (var example in SourceWaters.Default.All)
        {
            var report = example.Report with { Ec = new(420, "µS/cm", 20), Note = "a note", Lines = [.. example.Report.Lines, new("P", 0.05, "mg/L", Below: true)] };
            Assert.True(Judge(WaterFile.Write(report)), example.Report.Id);
        }
    }

    [Theory]
    [InlineData("{ \"Ca\": 40, \"alkalinity\": { \"value\": 3.1, \"unit\": \"mmol/L\" }, \"pH\": 7.1 }", true)]
    [InlineData("{ \"ions\": { \"NO3\": \"<0.5\" } }", true)]
    [InlineData("{ \"ions\": [ 40 ] }", false)]
    [InlineData("{ \"ions\": { \"Ca\": { \"unit\": \"mg/L\" } } }", false)]
    [InlineData("{ \"ions\": { \"Ca\": true } }", false)]
    [InlineData("{ \"ions\": { \"Ca\": \"4,5\" } }", false)]
    [InlineData("{ \"ions\": { \"Ca\": -4 } }", false)]
    [InlineData("{ \"name\": 4, \"Ca\": 40 }", false)]
    [InlineData("[]", false)]
    public void Schema_and_reader_agree(string text, bool good)
    {
        Assert.Equal(good, Judge(text));
        Assert.Equal(good, WaterFile.Read(text).Ok);
    }

    private static bool Judge(string json)
    {
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root(), "docs", "schemas", "water-file.schema.json")));
        using var document = JsonDocument.Parse(json);
        return schema.Evaluate(document.RootElement).IsValid;
    }
}
