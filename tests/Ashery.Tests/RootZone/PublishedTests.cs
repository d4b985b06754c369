using System.Globalization;
using System.Text;

namespace Ashery.Tests.RootZone;

/// <summary>
/// Formulas and trials of the literature against the model. Sources stand in the rows; a figure marked "from memory" was not looked up.
/// The table goes into docs/science/root-zone.md: <c>ASHERY_WRITE_TABLES=1 dotnet test --project tests/Ashery.Tests --filter-class "*RootZone.PublishedTests"</c>.
/// </summary>
public class PublishedTests
{
    private const string Page = "docs/science/root-zone.md", From = "<!-- published figures: written by a test -->\n", To = "<!-- end of table -->";

    public static TheoryData<string> Names => [.. PublishedChecks.All.Select(static c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_model_agrees_or_says_that_it_does_not(string name)
    {
        var check = PublishedChecks.All.First(c => c.Name == name);
        Assert.True(check.Inside != check.Missed, string.Create(CultureInfo.InvariantCulture, $"{name}: {check.Ours} against {check.Low} to {check.High}"));
    }

    [Fact]
    public void Hardly_any_is_missed() => Assert.True(PublishedChecks.All.Count(static c => c.Missed) * 10 <= PublishedChecks.All.Count);

    [Fact]
    public void The_table_in_the_documentation_is_true()
    {
        var text = RepositoryFile.Read(Page);
        var start = text.IndexOf(From, StringComparison.Ordinal) + From.Length;
        var end = text.IndexOf(To, StringComparison.Ordinal);
        var table = Table();
        if (Environment.GetEnvironmentVariable("ASHERY_WRITE_TABLES") is not null)
        {
            Console.WriteLine(table);
            File.WriteAllText(RepositoryFile.Place(Page), text[..start] + table + text[end..]);
            return;
        }

        Assert.Equal(table, text[start..end]);
    }

    private static string Table()
    {
        var all = PublishedChecks.All;
        var text = new StringBuilder().Append(CultureInfo.InvariantCulture, $"{all.Count(static c => c.Inside)} of {all.Count} agree; {all.Count(static c => c.How == "seen")} of the sources were seen, the others are from memory.\n\n| published | source | how | agrees from | to | model | |\n|---|---|---|---|---|---|---|\n");
        foreach (var c in all)
        {
            text.Append(CultureInfo.InvariantCulture, $"| {c.Name} | {c.Source} | {c.How} | {c.Low:0.####} | {c.High:0.####} | {c.Ours:0.###}{(c.Inside ? "" : " **missed**")} | {c.Note} |\n");
        }

        return text.ToString();
    }
}
