using System.Runtime.CompilerServices;

namespace Ashery.Tests.Architecture;

/// <summary>The plan of the house as docs/design.md draws it, and where the repository is.</summary>
internal static class Plan
{
    public static string Root([CallerFilePath] string here = "")
    {
        foreach (var start in new[] { Path.GetDirectoryName(here), AppContext.BaseDirectory })
        {
            for (var folder = start; folder is not null; folder = Path.GetDirectoryName(folder))
            {
                if (File.Exists(Path.Combine(folder, "Ashery.slnx")))
                {
                    return folder;
                }
            }
        }

        throw new InvalidOperationException("The repository is not above the tests.");
    }

    /// <summary>Rooms of the library from the first to the last: a room uses only those before it.</summary>
    public static IReadOnlyList<string> Rooms()
    {
        var lines = File.ReadAllLines(Path.Combine(Root(), "docs", "design.md"));
        return [.. lines
            .SkipWhile(static l => !l.StartsWith("    src/Ashery/ ", StringComparison.Ordinal)).Skip(1)
            .TakeWhile(static l => l.StartsWith("        ", StringComparison.Ordinal))
            .Select(static l => l.Trim().Split('/', 2)[0])];
    }

    /// <summary>Source files of a folder, without what builds put there.</summary>
    public static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(Root(), folder), pattern, SearchOption.AllDirectories)
            .Where(static f => !f.Split(Path.DirectorySeparatorChar).Any(static part => part is "bin" or "obj" or "out" or ".git" or "node_modules" or "TestResults"));
}
