using ArchUnitNET.Domain;
using ArchUnitNET.Domain.Extensions;
using ArchUnitNET.Loader;

namespace Ashery.Tests.Architecture;

/// <summary>Inside the library everything flows one way: a folder uses only folders above it in the list of docs/design.md.</summary>
public class FolderOrderTests
{
    private static readonly ArchUnitNET.Domain.Architecture Library = new ArchLoader().LoadAssemblies(typeof(Ashery.Problems.Problem).Assembly).Build();

    [Fact]
    public void Every_folder_of_the_library_is_a_room_of_the_plan()
    {
        var folders = Directory.GetDirectories(Path.Combine(Plan.Root(), "src", "Ashery")).Select(Path.GetFileName).Where(static f => f is not ("bin" or "obj"));
        Assert.All(folders, static folder => Assert.Contains(folder, Plan.Rooms()));
    }

    [Fact]
    public void No_folder_uses_one_below_it()
    {
        var rooms = Plan.Rooms().ToList();
        var wrong = new SortedSet<string>(StringComparer.Ordinal);
        var looked = 0;
        foreach (var type in Library.Types)
        {
            if (Room(type) is not { } from)
            {
                continue;
            }

            foreach (var used in type.GetTypeDependencies().Select(Room).OfType<string>().Where(to => to != from))
            {
                looked++;
                if (rooms.IndexOf(used) > rooms.IndexOf(from))
                {
                    wrong.Add($"{from} uses {used}, in {type.FullName}");
                }
            }
        }

        Assert.True(looked > 500, "The test looks at the library.");
        Assert.Empty(wrong);
    }

    [Fact]
    public void Namespaces_are_folders()
    {
        foreach (var project in new[] { "Ashery", "Ashery.Exchange", "Ashery.Cards", "Ashery.Cli", "Ashery.Records", "Ashery.Records.Sqlite", "Ashery.Records.Postgres", "Ashery.Records.Moving" })
        {
            foreach (var file in Plan.Files(Path.Combine("src", project), "*.cs").Where(static f => !f.Contains("Migrations", StringComparison.Ordinal)))
            {
                var folder = Path.GetRelativePath(Path.Combine(Plan.Root(), "src"), Path.GetDirectoryName(file)!).Replace(Path.DirectorySeparatorChar, '.');
                var said = File.ReadLines(file).FirstOrDefault(static l => l.StartsWith("namespace ", StringComparison.Ordinal));
                Assert.True(said is null || said == $"namespace {folder};", $"{file} says {said}");
            }
        }
    }

    /// <summary>The general rule, told by the library ArchUnitNET.</summary>
    [Fact]
    public void Blending_knows_no_chemistry() => Assert.Empty(
        Library.Types.Where(static t => Room(t) == "Blending").SelectMany(static t => t.GetTypeDependencies().Select(Room).OfType<string>()).Where(static r => r != "Blending").Distinct());

    private static string? Room(IType type)
    {
        var parts = (type.Namespace?.FullName ?? string.Empty).Split('.');
        return parts is ["Ashery", var room, ..] ? room : null;
    }
}
