using Ashery.Cli.Frame;

namespace Ashery.Cli.Tests.Frame;

/// <summary>What a command printed and how it ended.</summary>
internal sealed record Printed(int Code, string Output, string Errors)
{
    /// <summary>The error output with its lines joined again.</summary>
    public string Said => string.Join(' ', Errors.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}

/// <summary>Runs the command line in this process, in a world without a stored garden, on a fixed day.</summary>
internal static class Command
{
    /// <summary>The day of every test that does not say otherwise.</summary>
    public static readonly DateOnly Today = new(2026, 4, 10);

    public static Printed Run(params string[] args) => Run(static t => t, args);

    public static Printed Run(Func<Terminal, Terminal> change, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var terminal = new Terminal
        {
            Output = output,
            Errors = errors,
            Today = static () => Today,
            Now = static () => new DateTimeOffset(2026, 4, 10, 6, 30, 0, TimeSpan.Zero),
            Environment = static name => name == "ASHERY_HOME" ? Path.Combine(Path.GetTempPath(), "ashery-no-garden-here") : null,
        };
        var code = Application.Run(args, change(terminal));
        return new Printed(code, output.ToString(), errors.ToString());
    }

    /// <summary>With a garden of this folder as the stored one.</summary>
    public static Func<Terminal, Terminal> At(string home) => terminal => terminal with { Environment = name => name == "ASHERY_HOME" ? home : null };
}
