using System.CommandLine;
using Ashery.Exchange.Gardens;
using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Records;

namespace Ashery.Cli.Frame;

/// <summary>The garden a verb works on: a file, the invented demo, or the stored one. The database is loaded for the last only.</summary>
internal sealed class GardenSource
{
    private readonly ValueOption file;
    private readonly Option<bool> demo;

    public GardenSource(Command command)
    {
        file = new ValueOption("--garden", "FILE.json", "A garden file instead of the stored garden (schema: docs/schemas/garden.schema.json)");
        demo = new Option<bool>("--demo") { Description = "The invented demo garden instead of the stored garden" };
        command.Options.Add(file);
        command.Options.Add(demo);
    }

    /// <summary>True when the words name a garden.</summary>
    public bool IsNamed(Given given) => given.Has(file) || given.Has(demo);

    /// <summary>Null, with a problem kept, when there is none.</summary>
    public Garden? Load(Given given, Terminal terminal)
    {
        if (given.Has(file) && given.Has(demo))
        {
            given.Add(new Problem("garden", "Both --garden and --demo are given.", "Give one of them."));
            return null;
        }

        if (given.Has(demo))
        {
            return DemoGarden.Create(terminal.Today());
        }

        if (given.Has(file))
        {
            return given.Text(file) is { } path && given.Take(TextFile.Read(path, "garden")) is { } text ? given.Take(GardenFile.Read(text)) : null;
        }

        return Stored(given, terminal);
    }

    private static Garden? Stored(Given given, Terminal terminal)
    {
        var path = GardenPath.Default(terminal.Environment);
        if (File.Exists(path))
        {
            var garden = given.Take(StoredGardens.Load(path));
            if (garden is not null || given.Wrong)
            {
                return garden?.Garden;
            }
        }

        given.Add(new Problem(
            "garden",
            "There is no stored garden yet.",
            "Start ./run once and enter it there, import one with ashery shelf --import, give --garden FILE.json, or try --demo."));
        return null;
    }
}
