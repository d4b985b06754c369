using Ashery.Recipes;

namespace Ashery.Tests.Recipes;

public class GrammarPage
{
    [Fact]
    public void The_page_prints_the_grammar_that_is_read()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Ashery.slnx")))
        {
            folder = folder.Parent;
        }

        Assert.NotNull(folder);
        var page = File.ReadAllText(Path.Combine(folder.FullName, "docs", "science", "recipes.md")).ReplaceLineEndings("\n");
        Assert.Contains(LimitReader.Grammar.ReplaceLineEndings("\n"), page, StringComparison.Ordinal);
    }
}
