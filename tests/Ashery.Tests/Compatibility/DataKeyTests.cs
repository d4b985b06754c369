using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Tests.Compatibility;

/// <summary>The rows are read by hand, so a misspelt key would be passed over in silence: here every key must be a known one.</summary>
public class DataKeyTests
{
    [Theory]
    [InlineData("data/compatibility/dry.json", "a b today stored reason basis sources limit hardStop note")]
    [InlineData("data/compatibility/solution.json", "a b verdict reason basis sources limit hardStop feed note")]
    [InlineData("data/compatibility/residue.json", "a verdict reason limit")]
    [InlineData("data/compatibility/humidity.json", "a b percent source provenance note")]
    [InlineData("data/compatibility/salts.json", "formula name cation cations anion anions molarMass at10 at20 at25")]
    [InlineData("data/cautions/cautions.json", "id words source provenance hazards uses always")]
    [InlineData("data/crops/crops.json", "id name latin feeder ratio liquidNitrogen seasonNitrogen mediumPh saturatedExtractEc temperature phosphorus acidLoving chlorideSensitive notes")]
    [InlineData("data/crops/feeder-classes.json", "feeder seasonNitrogen liquidNitrogen")]
    [InlineData("data/rules/*", "id topic kind statement reason strength onByDefault appliesTo season choice choices parameters source provenance differs note")]
    public void Rows_have_no_key_that_is_not_read(string path, string keys)
    {
        var known = keys.Split(' ').ToHashSet(StringComparer.Ordinal);
        foreach (var file in path.EndsWith('*') ? EmbeddedData.Paths(".json").Where(p => p.StartsWith("data/rules/", StringComparison.Ordinal) && !p.EndsWith("sources.json", StringComparison.Ordinal)) : [path])
        {
            using var document = JsonDocument.Parse(EmbeddedData.Read(file));
            var root = document.RootElement;
            var rows = root.ValueKind == JsonValueKind.Array ? root : root.GetProperty("rows");
            Assert.NotEqual(0, rows.GetArrayLength());
            Assert.All(rows.EnumerateArray().SelectMany(row => row.EnumerateObject()), property => Assert.Contains(property.Name, known));
        }
    }
}
