using System.Xml.Linq;

namespace Ashery.Tests.Architecture;

/// <summary>Arrows between projects run one way, and each carries only what it needs.</summary>
public class ProjectTests
{
    private static readonly Dictionary<string, (string[] Projects, string[] Packages)> Allowed = new()
    {
        ["Ashery"] = ([], ["MathNet.Numerics"]),
        ["Ashery.Exchange"] = (["Ashery"], ["CsvHelper", "Ical.Net"]),
        ["Ashery.Records"] = (["Ashery", "Ashery.Exchange"], ["Microsoft.EntityFrameworkCore.Relational"]),
        ["Ashery.Records.Sqlite"] = (["Ashery.Records"], ["Microsoft.EntityFrameworkCore.Sqlite", "Microsoft.EntityFrameworkCore.Design"]),
        ["Ashery.Records.Postgres"] = (["Ashery.Records"], ["Npgsql.EntityFrameworkCore.PostgreSQL", "Microsoft.EntityFrameworkCore.Design"]),
        ["Ashery.Records.Moving"] = (["Ashery.Records.Sqlite", "Ashery.Records.Postgres"], []),
        ["Ashery.Cards"] = (["Ashery"], ["PDFsharp", "QRCoder"]),
        ["Ashery.Photos"] = (["Ashery"], ["SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies", "MetadataExtractor"]),
        ["Ashery.Accounts"] =
            (["Ashery", "Ashery.Records.Sqlite", "Ashery.Records.Postgres"], ["Microsoft.AspNetCore.Identity.EntityFrameworkCore", "Npgsql.EntityFrameworkCore.PostgreSQL", "Microsoft.EntityFrameworkCore.Design"]),
        ["Ashery.Client"] = (["Ashery", "Ashery.Exchange"], []),
        ["Ashery.Cli"] = (["Ashery", "Ashery.Exchange", "Ashery.Records.Moving", "Ashery.Cards"], ["System.CommandLine"]),
        ["Ashery.Web"] = (["Ashery", "Ashery.Exchange", "Ashery.Records.Moving", "Ashery.Cards", "Ashery.Photos", "Ashery.Accounts"],
            ["Microsoft.AspNetCore.OpenApi", "OpenTelemetry.Exporter.OpenTelemetryProtocol", "OpenTelemetry.Extensions.Hosting", "QRCoder"]),
    };

    // People sign in only on the web: their part alone stands on its framework.
    private static readonly string[] OnTheWebFramework = ["Ashery.Accounts"];

    public static TheoryData<string> Projects => [.. Directory.GetDirectories(Path.Combine(Plan.Root(), "src")).Select(static d => Path.GetFileName(d))];

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_refers_only_to_what_the_plan_gives_it(string project)
    {
        Assert.True(Allowed.ContainsKey(project), $"{project} is not in the plan");
        var file = XDocument.Load(Path.Combine(Plan.Root(), "src", project, project + ".csproj"));
        var projects = file.Descendants("ProjectReference").Select(static r => Path.GetFileNameWithoutExtension((string)r.Attribute("Include")!));
        var packages = file.Descendants("PackageReference").Select(static r => (string)r.Attribute("Include")!);
        Assert.Subset(Allowed[project].Projects.ToHashSet(), projects.ToHashSet());
        Assert.Subset(Allowed[project].Packages.ToHashSet(), packages.ToHashSet());
        Assert.True(OnTheWebFramework.Contains(project) || !file.Descendants("FrameworkReference").Any());
    }

    /// <summary>General solvers are judges in tests and bench, never in what a grower runs.</summary>
    [Fact]
    public void No_program_carries_a_general_solver()
    {
        foreach (var project in Directory.GetDirectories(Path.Combine(Plan.Root(), "src")))
        {
            Assert.DoesNotContain("OrTools", File.ReadAllText(Path.Combine(project, "packages.lock.json")), StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void The_library_uses_the_base_library_and_one_for_distributions_in_one_place()
    {
        var used = typeof(Ashery.Problems.Problem).Assembly.GetReferencedAssemblies().Select(static a => a.Name!).Where(static name => name != "MathNet.Numerics");
        Assert.All(used, static name => Assert.StartsWith("System.", name, StringComparison.Ordinal));

        // One file behind which it is loaded at the first call: no verb pays for it at its start.
        var files = Plan.Files(Path.Combine("src", "Ashery"), "*.cs").Where(static file => File.ReadAllText(file).Contains("using MathNet", StringComparison.Ordinal)).Select(Path.GetFileName);
        Assert.Equal(["Laws.cs"], files);
    }

    /// <summary>No clock, no files, no environment in the library: what depends on them is passed in.</summary>
    [Theory]
    [InlineData("DateTime.Now")]
    [InlineData("DateTime.UtcNow")]
    [InlineData("DateTimeOffset.Now")]
    [InlineData("DateTimeOffset.UtcNow")]
    [InlineData("TimeProvider.System")]
    [InlineData("Environment.Get")]
    [InlineData("File.Open")]
    [InlineData("File.Read")]
    [InlineData("File.Write")]
    [InlineData("Random.Shared")]
    [InlineData("new Random()")]
    [InlineData("Console.")]
    public void The_library_does_not_reach_into_the_world(string call) =>
        Assert.All(Plan.Files(Path.Combine("src", "Ashery"), "*.cs"), file => Assert.False(File.ReadAllText(file).Contains(call, StringComparison.Ordinal), $"{file} has {call}"));
}
