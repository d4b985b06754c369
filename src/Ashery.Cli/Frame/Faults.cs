using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Cli.Text;
using Ashery.Exchange.Json;
using Ashery.Problems;

namespace Ashery.Cli.Frame;

/// <summary>Prints what is wrong: words on the error output and, where JSON was asked for, the same as JSON.</summary>
internal static class Faults
{
    public static int WrongUse(Terminal terminal, string? verb, bool json, IReadOnlyList<Problem> problems)
    {
        if (json)
        {
            terminal.Output.Write(AsheryJson.Write(new ProblemsJson(ProblemJson.From(problems)), FaultJson.Shared.ProblemsJson));
        }

        var name = verb is null ? "ashery" : $"ashery {verb}";
        foreach (var problem in problems)
        {
            Print(terminal.Errors, terminal.Width, name, problem);
        }

        terminal.Errors.WriteLine($"See {name} --help.");
        return ExitCode.WrongUse;
    }

    public static int WrongUse(Terminal terminal, Verb verb, Given given) =>
        WrongUse(terminal, verb.Name, given.Has(verb.Json), given.Problems);

    private static void Print(TextWriter output, int width, string name, Problem problem)
    {
        Paragraph.Write(output, $"{name}: {SafeText.Of(problem.Field)}: {SafeText.Of(problem.Message)}", width, hanging: 4);
        Paragraph.Write(output, $"    {SafeText.Of(problem.WayOut)}", width, hanging: 4);
    }
}

[JsonSerializable(typeof(ProblemsJson))]
internal sealed partial class FaultJson : JsonSerializerContext
{
    public static FaultJson Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
