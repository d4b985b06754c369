using System.Runtime.CompilerServices;

namespace Ashery.Cli.Tests.Frame;

/// <summary>Where the repository is, by the place of a source file in it or of the test program.</summary>
internal static class Repository
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
}
