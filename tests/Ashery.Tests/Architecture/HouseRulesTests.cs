namespace Ashery.Tests.Architecture;

/// <summary>Habits of the house that a reader of one file would not miss until the next.</summary>
public class HouseRulesTests
{
    private static readonly string[] Kinds = ["*.cs", "*.md", "*.json", "*.csproj", "*.props", "*.targets", "*.razor", "*.css", "*.js", "*.txt", "*.svg", "*.slnx"];

    [Fact]
    public void A_long_file_says_why()
    {
        foreach (var file in Plan.Files("src", "*.cs").Where(static f => !f.Contains("Migrations", StringComparison.Ordinal)))
        {
            var lines = File.ReadAllLines(file);
            Assert.True(lines.Length <= 400 || lines.Take(10).Any(static l => l.Contains("long", StringComparison.OrdinalIgnoreCase)), $"{file} has {lines.Length} lines and does not say why");
        }
    }

    /// <summary>What is committed builds anywhere: it names no folder of one machine and no address of a package source.</summary>
    [Fact]
    public void Nothing_names_the_machine_it_was_written_on()
    {
        // Put together here, so that this file does not name them either.
        string[] words = ["/" + "work/", "/" + "tmp/", "/" + "root/", "api." + "nuget", "registry." + "npmjs", "deb." + "debian"];
        var read = 0;
        foreach (var file in Kinds.SelectMany(static kind => Plan.Files(".", kind)).Concat(new[] { "run", "test", ".ci/run", "eng/approve", ".editorconfig", "global.json" }.Select(static f => Path.Combine(Plan.Root(), f))))
        {
            var text = File.ReadAllText(file);
            read++;
            Assert.All(words, word => Assert.False(text.Contains(word, StringComparison.Ordinal), $"{file} names {word}"));
        }

        Assert.True(read > 300);
    }

    [Fact]
    public void No_work_is_left_marked_as_undone()
    {
        string[] marks = ["TO" + "DO", "FIX" + "ME", "HA" + "CK", "XX" + "X"];
        foreach (var file in Plan.Files("src", "*.cs").Concat(Plan.Files("src", "*.razor")))
        {
            var text = File.ReadAllText(file);
            Assert.All(marks, mark => Assert.False(text.Contains(mark, StringComparison.Ordinal), $"{file} has {mark}"));
        }
    }
}
