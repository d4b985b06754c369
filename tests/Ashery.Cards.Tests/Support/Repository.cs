namespace Ashery.Cards.Tests.Support;

internal static class Repository
{
    /// <summary>The folder of the solution, found upwards from the test's own.</summary>
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    private static string Find(DirectoryInfo? folder) => folder switch
    {
        null => throw new InvalidOperationException("Not inside the repository."),
        _ when File.Exists(Path.Combine(folder.FullName, "Ashery.slnx")) => folder.FullName,
        _ => Find(folder.Parent),
    };
}
