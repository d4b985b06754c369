using Ashery.Cli.Text;

namespace Ashery.Cli.Tests.Frame;

public class TableTests
{
    [Fact]
    public void Figures_stand_to_the_right_and_words_to_the_left()
    {
        var table = new Table("bag", ">g");
        table.Add("urea", "5");
        table.Add("mkp", "120");
        Assert.Equal("bag     g\n----  ---\nurea    5\nmkp   120\n", Text(table, 80));
    }

    [Fact]
    public void A_table_wider_than_the_line_breaks_its_last_column_of_words()
    {
        var table = new Table("id", "why");
        table.Add("calcium-nitrate-tetrahydrate", "calcium and sulfate make gypsum, which does not dissolve in a stock solution");
        var text = Text(table, 60);
        Assert.All(text.Split('\n'), static line => Assert.True(line.Length <= 60, line));
        Assert.Contains("calcium-nitrate-tetrahydrate  ", text, StringComparison.Ordinal);
        Assert.Equal(
            "calcium and sulfate make gypsum, which does not dissolve in a stock solution",
            string.Join(' ', text.Split('\n').Skip(2).Select(static line => line.Length > 30 ? line[30..].Trim() : string.Empty).Where(static l => l.Length > 0)));
    }

    [Fact]
    public void A_word_longer_than_its_column_is_cut_not_lost()
    {
        var table = new Table("id", "word");
        table.Add("a", new string('x', 200));
        var text = Text(table, 40);
        Assert.All(text.Split('\n'), static line => Assert.True(line.Length <= 40, line));
        Assert.Equal(200, text.Count(static c => c == 'x'));
    }

    private static string Text(Table table, int width)
    {
        using var output = new StringWriter { NewLine = "\n" };
        table.Write(output, width);
        return output.ToString();
    }
}
