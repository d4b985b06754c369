using System.Text;
using Ashery.Cli.Tests.Frame;
using Ashery.Recipes;

namespace Ashery.Cli.Tests.Docs;

/// <summary>Pages do not go stale in silence: links lead somewhere, commands run, quoted grammar is the reader's own.</summary>
public class DocsTests
{
    public static TheoryData<string> Pages
    {
        get
        {
            var root = Repository.Root();
            return [.. Directory.GetFiles(root, "*.md").Concat(Directory.GetFiles(Path.Combine(root, "docs"), "*.md", SearchOption.AllDirectories)).Select(file => Path.GetRelativePath(root, file)).Order(StringComparer.Ordinal)];
        }
    }

    public static TheoryData<string, string> Commands
    {
        get
        {
            var found = new TheoryData<string, string>();
            foreach (var row in Pages)
            {
                foreach (var line in ConsoleLines(File.ReadAllText(Path.Combine(Repository.Root(), row.Data))))
                {
                    if (line.StartsWith("./run ", StringComparison.Ordinal) && !line.StartsWith("./run  ", StringComparison.Ordinal))
                    {
                        found.Add(row.Data, line);
                    }
                }
            }

            return found;
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_relative_link_leads_somewhere(string page)
    {
        var file = Path.Combine(Repository.Root(), page);
        foreach (var target in Links(File.ReadAllText(file)))
        {
            var (path, anchor) = target.IndexOf('#', StringComparison.Ordinal) is >= 0 and var at ? (target[..at], target[(at + 1)..]) : (target, string.Empty);
            var full = path.Length == 0 ? file : Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, path));
            Assert.True(File.Exists(full) || Directory.Exists(full), $"{page} links to {target}, which is not there");
            if (anchor.Length > 0 && full.EndsWith(".md", StringComparison.Ordinal))
            {
                Assert.Contains(anchor, Anchors(File.ReadAllText(full)));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Every_command_shown_runs(string page, string line)
    {
        using var folder = new TemporaryFolder();
        var words = folder.Into(Shell.Split(line.Split(" #", 2)[0])[1..]);
        var run = Command.Run(words);
        Assert.True(run.Code == 0, $"{page}: {line}\n{run.Errors}");
        Assert.NotEmpty(run.Output);
    }

    [Fact]
    public void Readme_and_guide_show_commands() =>
        Assert.Superset(new HashSet<string> { "README.md", Path.Combine("docs", "guide.md") }, Commands.Select(static c => c.Data.Item1).ToHashSet());

    /// <summary>Check values belong in tests; what a grower reads uses figures of its own.</summary>
    [Theory]
    [InlineData("README.md")]
    [InlineData("docs/guide.md")]
    [InlineData("docs/limits.md")]
    public void Examples_use_figures_of_their_own(string page)
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root(), page));
        foreach (var check in new[] { "17:5:24", "17-5-24", "8:1:6", "12-4-20" })
        {
            Assert.DoesNotContain(check, text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_grammar_of_limits_is_the_readers_own() =>
        Assert.Contains($"```text\n{LimitReader.Grammar}\n```", File.ReadAllText(Path.Combine(Repository.Root(), "docs", "limits.md")), StringComparison.Ordinal);

    [Fact]
    public void Every_page_of_science_and_every_decision_is_listed()
    {
        foreach (var folder in new[] { "science", "decisions" })
        {
            var docs = Path.Combine(Repository.Root(), "docs", folder);
            var index = File.ReadAllText(Path.Combine(docs, "README.md"));
            Assert.All(Directory.GetFiles(docs, "*.md").Select(Path.GetFileName).Where(static f => f != "README.md"), name => Assert.Contains($"({name})", index, StringComparison.Ordinal));
        }
    }

    private static IEnumerable<string> ConsoleLines(string text)
    {
        var inside = false;
        foreach (var line in text.Split('\n'))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                inside = line == "```console";
            }
            else if (inside)
            {
                yield return line.TrimEnd();
            }
        }
    }

    private static IEnumerable<string> Links(string text)
    {
        var prose = Outside(text);
        foreach (var picture in prose.Split("<img src=\"").Skip(1))
        {
            yield return picture[..picture.IndexOf('"', StringComparison.Ordinal)];
        }

        for (var at = prose.IndexOf("](", StringComparison.Ordinal); at >= 0; at = prose.IndexOf("](", at + 2, StringComparison.Ordinal))
        {
            var end = prose.IndexOf(')', at);
            var target = prose[(at + 2)..end];
            if (!target.Contains("://", StringComparison.Ordinal) && !target.StartsWith("mailto:", StringComparison.Ordinal))
            {
                yield return target;
            }
        }
    }

    // What stands in code is no link.
    private static string Outside(string text)
    {
        var prose = new StringBuilder();
        var inside = false;
        foreach (var line in text.Split('\n'))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                inside = !inside;
            }
            else if (!inside)
            {
                prose.Append(line).Append('\n');
            }
        }

        return prose.ToString();
    }

    // As the usual renderers make them: small letters, blanks to hyphens, other signs gone.
    private static HashSet<string> Anchors(string text) =>
    [
        .. text.Split('\n').Where(static l => l.StartsWith('#')).Select(static l => string.Concat(
            l.TrimStart('#').Trim().ToLowerInvariant().Where(static c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '_').Select(static c => c == ' ' ? '-' : c))),
    ];
}
