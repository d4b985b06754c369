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

    public bool IsDemo(Given given) => given.Has(demo);

    /// <summary>
    /// Changes the stored garden, or the one in the file of <c>--garden</c>, and saves it whole; where none is stored,
    /// <paramref name="otherwise"/> becomes the stored one. Null, with a problem kept, when nothing was saved.
    /// </summary>
    public Garden? Change(Given given, Terminal terminal, Func<Garden, Garden> change, Garden? otherwise, string what)
    {
        if (given.Has(file))
        {
            return Load(given, terminal) is { } old && given.Text(file) is { } name && change(old) is var changed
                && given.Take(TextFile.Write(name, GardenFile.Write(changed), "garden")) is not null ? changed : null;
        }

        var path = Place(terminal);
        var stored = IsThere(path, terminal) ? StoredGardens.Load(path) : null;
        if (stored is { Ok: false } && otherwise is null)
        {
            given.AddRange(stored.Problems);
            return null;
        }

        if (stored is null && otherwise is null)
        {
            NoGarden(given);
            return null;
        }

        var next = stored is { Ok: true } ? change(stored.Value.Garden) : otherwise!;
        return given.Take(StoredGardens.Save(path, next, stored is { Ok: true } ? stored.Value.Version : 0, what)) is not null ? next : null;
    }

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
        var path = Place(terminal);
        if (IsThere(path, terminal))
        {
            var garden = given.Take(StoredGardens.Load(path));
            if (garden is not null || given.Wrong)
            {
                return garden?.Garden;
            }
        }

        NoGarden(given);
        return null;
    }

    internal static string Place(Terminal terminal) => GardenPath.Server(terminal.Environment) ?? GardenPath.Default(terminal.Environment);

    private static bool IsThere(string place, Terminal terminal) => GardenPath.Server(terminal.Environment) is not null || File.Exists(place);

    private static void NoGarden(Given given) => given.Add(new Problem(
        "garden",
        "There is no stored garden yet.",
        "Start ./run once and enter it there, bring a garden file in with ashery shelf --import my-garden.json, give --garden FILE.json, or try --demo."));
}
