using System.CommandLine;
using System.Globalization;
using System.Runtime.InteropServices;
using Ashery.Cli.Frame;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>Becomes the web program, which is published apart: nothing of the web is loaded into this process.</summary>
internal sealed class ServeVerb : Verb
{
    private readonly ValueOption port, database;

    public ServeVerb()
        : base("serve", "Serve the web application on this machine, with the stored garden or a demo garden at first")
    {
        port = Add(new ValueOption("--port", "NUMBER", "Port to listen on; without it the first free one from 8741 on"));
        database = Add(new ValueOption("--database", "ADDRESS", "A PostgreSQL database in place of the garden file; ASHERY_DATABASE says the same"));
    }

    public override string Details => "Only this machine reaches it (127.0.0.1). Ctrl+C stops it. With --json the command to run is printed, not run.";

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("At the usual address:", "ashery serve"),
        ("At a port of your choice:", "ashery serve --port 8123"),
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

        if (given.Has(database) && given.Text(database) is { } address)
        {
            words.AddRange(["--database", address]);
        }

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
