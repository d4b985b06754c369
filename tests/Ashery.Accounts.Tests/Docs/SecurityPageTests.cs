using System.Text.RegularExpressions;

namespace Ashery.Accounts.Tests.Docs;

/// <summary>The table of controls names tests that exist.</summary>
public sealed partial class SecurityPageTests
{
    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Ashery.slnx")))
        {
            folder = folder.Parent!;
        }

        return folder.FullName;
    }

    [Fact]
    public void Every_control_names_a_test_that_exists()
    {
        var rows = File.ReadAllLines(Path.Combine(Root(), "docs", "security.md")).Where(l => Row().IsMatch(l)).ToList();
        Assert.True(rows.Count >= 40, FormattableString.Invariant($"{rows.Count} controls"));
        var sources = Directory.GetFiles(Path.Combine(Root(), "tests"), "*Tests.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains(Path.DirectorySeparatorChar + "obj" + Path.DirectorySeparatorChar, StringComparison.Ordinal)).Select(File.ReadAllText).ToList();
        foreach (var (row, i) in rows.Select((r, i) => (r, i)))
        {
            var cells = row.Trim('|').Split(" | ");
            Assert.Equal(FormattableString.Invariant($"{i + 1}"), cells[0].Trim());
            var test = Named().Match(cells[^1]);
            Assert.True(test.Success, row);
            var (type, method) = (test.Groups["type"].Value, test.Groups["method"].Value);
            Assert.True(
                sources.Any(s => s.Contains($"class {type}", StringComparison.Ordinal) && Regex.IsMatch(s, $@"\[(Fact|Theory)[^\]]*\](?:\s*\[[^\n]*\])*\s*public (async )?(Task|void) {method}\(", RegexOptions.None, TimeSpan.FromSeconds(5))),
                $"There is no test {type}.{method}");
        }
    }

    [GeneratedRegex(@"^\| \d+ \|")]
    private static partial Regex Row();

    [GeneratedRegex(@"^`(?<type>\w+)\.(?<method>\w+)` \|?$")]
    private static partial Regex Named();
}
