using System.Runtime.CompilerServices;
using Ashery.Exchange.Gardens;
using Ashery.Planning;

namespace Ashery.Exchange.Tests.Gardens;

public class DocumentedGardenTests
{
    [Fact]
    public void The_garden_in_the_documentation_reads_and_plans()
    {
        var text = File.ReadAllText(Path.Combine(Root(), "docs", "garden-file.md"));
        var from = text.IndexOf("```json", StringComparison.Ordinal) + "```json".Length;
        var read = GardenFile.Read(text[from..text.IndexOf("```", from, StringComparison.Ordinal)]);
        Assert.True(read.Ok, string.Join("\n", read.Problems));
        Assert.NotEmpty(YearPlanner.Plan(new(read.Value, new(2027, 1, 1))).Feeds);
    }

    private static string Root([CallerFilePath] string file = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", "..", ".."));
}
