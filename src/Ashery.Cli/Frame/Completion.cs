using System.CommandLine;
using System.CommandLine.Completions;
using System.Globalization;

namespace Ashery.Cli.Frame;

/// <summary>
/// Answers a shell that asks how a line may go on: <c>ashery "[suggest:POSITION]" "LINE"</c>, a word a line. The line's
/// first word is the program as typed there.
/// </summary>
internal static class Completion
{
    public static bool IsAsked(IReadOnlyList<string> args) =>
        args.Count > 0 && args[0].StartsWith("[suggest:", StringComparison.Ordinal) && args[0].EndsWith(']');

    public static int Answer(RootCommand root, IReadOnlyList<string> args, Terminal terminal)
    {
        var line = args.Count > 1 ? args[1] : string.Empty;
        var start = AfterProgram(line);
        if (!int.TryParse(args[0].AsSpan(9, args[0].Length - 10), NumberStyles.None, CultureInfo.InvariantCulture, out var position))
        {
            return ExitCode.WrongUse;
        }

        position = Math.Clamp(position, start, line.Length);
        var upTo = line[start..position];
        var typed = upTo[(upTo.LastIndexOf(' ') + 1)..];
        foreach (var item in root.Parse(upTo).GetCompletions(upTo.Length))
        {
            if (item.Label.StartsWith(typed, StringComparison.OrdinalIgnoreCase) && item.Label is not ("-?" or "-h"))
            {
                terminal.Output.WriteLine(item.Label);
            }
        }

        return ExitCode.Done;
    }

    private static int AfterProgram(string line)
    {
        var at = 0;
        while (at < line.Length && line[at] == ' ')
        {
            at++;
        }

        while (at < line.Length && line[at] != ' ')
        {
            at++;
        }

        while (at < line.Length && line[at] == ' ')
        {
            at++;
        }

        return at;
    }
}
