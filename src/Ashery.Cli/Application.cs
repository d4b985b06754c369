using System.CommandLine;
using System.Reflection;
using Ashery.Cli.Frame;
using Ashery.Cli.Verbs;

namespace Ashery.Cli;

/// <summary>The command <c>ashery</c>: finds the verb, hands it its words, and turns what goes wrong into words.</summary>
internal static class Application
{
    /// <summary>In the order of the work.</summary>
    public static IReadOnlyList<Verb> Verbs() =>
    [
        new MixVerb(),
        new CompatibleVerb(),
        new WaterVerb(),
        new DissolveVerb(),
        new AcidVerb(),
        new TanksVerb(),
        new SprayVerb(),
        new SolutionVerb(),
        new DoseVerb(),
        new YearVerb(),
        new WeatherVerb(),
        new PotVerb(),
        new ClinicVerb(),
        new TrialVerb(),
        new CardVerb(),
        new ShelfVerb(),
        new StockVerb(),
        new BatchVerb(),
        new MaterialsVerb(),
        new CropsVerb(),
        new BackupVerb(),
        new RestoreVerb(),
        new CopyVerb(),
        new ExportVerb(),
        new ImportVerb(),
        new ServeVerb(),
        new CompletionVerb(),
    ];

    public static int Run(IReadOnlyList<string> args, Terminal terminal)
    {
        try
        {
            return Dispatch(args, terminal);
        }
        catch (Exception ours) when (ours is not IOException)
        {
            return Apology.Print(terminal, ours);
        }
    }

    private static int Dispatch(IReadOnlyList<string> args, Terminal terminal)
    {
        var verbs = Verbs();
        var root = new RootCommand { TreatUnmatchedTokensAsErrors = true };
        root.Options.Clear();
        root.Directives.Clear();
        var help = new Option<bool>("--help", "-h", "-?") { Recursive = true, Hidden = true };
        var version = new Option<bool>("--version") { Hidden = true };
        root.Options.Add(help);
        root.Options.Add(version);
        foreach (var verb in verbs)
        {
            root.Subcommands.Add(verb.Command);
        }

        if (Completion.IsAsked(args))
        {
            return Completion.Answer(root, args, terminal);
        }

        // An @ at the start is a letter like any other: no file is read in place of a word.
        var parse = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null, EnablePosixBundling = false });
        var chosen = verbs.FirstOrDefault(v => v.Command == parse.CommandResult.Command);
        if (parse.GetValue(help) || args.Count == 0)
        {
            if (chosen is null)
            {
                HelpPage.WriteRoot(terminal, verbs);
            }
            else
            {
                HelpPage.Write(terminal, chosen);
            }

            return ExitCode.Done;
        }

        if (chosen is null && parse.GetValue(version))
        {
            terminal.Output.WriteLine("ashery " + Version());
            return ExitCode.Done;
        }

        if (WrongWords.In(parse, chosen, verbs) is { Count: > 0 } problems)
        {
            return Faults.WrongUse(terminal, chosen?.Name, args.Contains("--json"), problems);
        }

        return chosen!.Run(new Given(parse), terminal);
    }

    private static string Version() =>
        typeof(Application).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "0";
}
