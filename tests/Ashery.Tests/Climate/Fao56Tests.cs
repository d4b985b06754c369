using Ashery.Climate.Evapotranspiration;

namespace Ashery.Tests.Climate;

/// <summary>
/// Holds the table of docs/science/weather.md, and writes it when ASHERY_WRITE_TABLES is set:
/// <c>ASHERY_WRITE_TABLES=1 dotnet test --project tests/Ashery.Tests --filter-class "*Climate.Fao56Tests"</c>.
/// </summary>
public class Fao56Tests
{
    private const string Document = "docs/science/weather.md", From = "<!-- FAO-56 table: written by a test -->\n", To = "<!-- end of FAO-56 table -->";

    // One printed figure follows only from an intermediate the book rounded: 0.0674 is 0.000665 x 101.3, where the pressure is 101.276.
    [Fact]
    public void Every_worked_example_comes_out_to_the_printed_digits()
    {
        Assert.True(Fao56Table.Rows.Count > 100);
        var other = Assert.Single(Fao56Table.Rows, static r => !r.Same);
        Assert.StartsWith("psychrometric constant", other.What, StringComparison.Ordinal);
        Assert.Equal("17", other.Example);
        Assert.Equal(0.0674, Air.Psychrometric(101.3), 4);
    }

    [Fact]
    public void The_table_in_the_documentation_is_true()
    {
        var text = RepositoryFile.Read(Document);
        var start = text.IndexOf(From, StringComparison.Ordinal) + From.Length;
        var end = text.IndexOf(To, StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("ASHERY_WRITE_TABLES") is not null)
        {
            Console.WriteLine(Fao56Table.Markdown());
            File.WriteAllText(RepositoryFile.Place(Document), text[..start] + Fao56Table.Markdown() + text[end..]);
            return;
        }

        Assert.Equal(Fao56Table.Markdown(), text[start..end]);
    }
}
