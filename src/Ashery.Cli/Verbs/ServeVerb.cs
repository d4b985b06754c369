using System.CommandLine;
using System.Globalization;
using System.Runtime.InteropServices;
using Ashery.Cli.Frame;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>Becomes the web program, which is published apart: nothing of the web is loaded into this process.</summary>
internal sealed class ServeVerb : Verb
{
    private readonly ValueOption port, database, address, listen, proxy, telemetry;
    private readonly Option<bool> home, accounts;

    public ServeVerb()
        : base("serve", "Serve the web application on this machine, with the stored garden or a demo garden at first")
    {
        port = Add(new ValueOption("--port", "NUMBER", "Port to listen on; without it the first free one from 8741 on"));
        database = Add(new ValueOption("--database", "ADDRESS", "A PostgreSQL database in place of the garden file; ASHERY_DATABASE says the same"));
        home = Flag("--home", "Serve the home network over HTTPS, with accounts and pairing of phones");
        accounts = Flag("--accounts", "Ask who it is: accounts, gardens shared with roles");
        address = Add(new ValueOption("--address", "ADDRESS", "With --accounts: the one address people use, as in https://garden.example"));
        listen = Add(new ValueOption("--urls", "ADDRESSES", "With --address: where to listen for the reverse proxy, as in http://127.0.0.1:8741"));
        proxy = Add(new ValueOption("--proxy", "NUMBER", "With --address: network address of the reverse proxy when it is another machine"));
        telemetry = Add(new ValueOption("--telemetry", "ADDRESS", "Send metrics and traces to an OpenTelemetry collector (OTLP over HTTP)"));
    }

    public override string Details => "Only this machine reaches it (127.0.0.1), unless --home or --accounts says otherwise. Ctrl+C stops it. With --json the command to run is printed, not run.";

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("At the usual address:", "ashery serve"),
        ("At a port of your choice:", "ashery serve --port 8123"),
        ("For a phone beside the pots:", "ashery serve --home"),
        ("With the gardens in PostgreSQL:", "ashery serve --database postgres://ash@localhost/ash"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var chosen = given.Has(port) ? given.Whole(port, usual: 8741, least: 1, most: 65535) : 0;
        var program = Program(terminal);
        if (program is null)
        {
            given.Add(new Problem("web program", "The web program is not beside this one.", "Start both with ./run, which builds them."));
        }

        if (given.Wrong)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        List<string> words = ["dotnet", program!];
        if (chosen > 0)
        {
            words.AddRange(["--port", chosen.ToString(CultureInfo.InvariantCulture)]);
        }

        foreach (var option in new[] { database, address, listen, proxy, telemetry })
        {
            if (given.Has(option) && given.Text(option) is { } text)
            {
                words.AddRange([option.Name, text]);
            }
        }

        words.AddRange(new[] { home, accounts }.Where(given.Has).Select(static o => o.Name));

        string[] command = [.. words];
        if (given.Has(Json))
        {
            terminal.Output.Write(CliJson.Write(new ServeJson(command)));
            return ExitCode.Done;
        }

        terminal.Output.Flush();
        terminal.Errors.Flush();
        return ProcessImage.Become(command);
    }

    /// <summary>Where <c>run</c> published it (ASHERY_WEB), else beside this program's folder, else in the build output of the repository.</summary>
    private static string? Program(Terminal terminal)
    {
        var here = AppContext.BaseDirectory;
        string[] places =
        [
            terminal.Environment("ASHERY_WEB") ?? here,
            Path.Combine(here, "..", "web"),
            here.Replace("Ashery.Cli", "Ashery.Web", StringComparison.Ordinal),
        ];
        return places.Select(static place => Path.Combine(place, "Ashery.Web.dll")).FirstOrDefault(File.Exists);
    }
}

/// <summary>Puts another program in place of this one, so that signals and the exit code are its own.</summary>
internal static partial class ProcessImage
{
    public static int Become(string[] command)
    {
        if (!OperatingSystem.IsWindows())
        {
            // Returns only when it fails.
            _ = ExecVp(command[0], [.. command, null]);
        }

        using var process = System.Diagnostics.Process.Start(command[0], command[1..]);
        process.WaitForExit();
        return process.ExitCode;
    }

    [LibraryImport("libc", EntryPoint = "execvp", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int ExecVp(string file, string?[] arguments);
}
