using System.Text.Json.Serialization;
using Ashery.Problems;

namespace Ashery.Exchange.Json;

/// <summary>A problem as every JSON answer holds it.</summary>
/// <param name="Field">The field as the grower knows it.</param>
/// <param name="Message">What is wrong, with the limit that was passed.</param>
/// <param name="WayOut">What to do about it.</param>
/// <param name="Severity">Whether work can go on: <c>note</c>, <c>warning</c> or <c>error</c>.</param>
public sealed record ProblemJson(
    string Field,
    string Message,
    string WayOut,
    [property: JsonConverter(typeof(WordConverter<Severity>))] Severity Severity)
{
    public static ProblemJson From(Problem problem) => new(problem.Field, problem.Message, problem.WayOut, problem.Severity);

    public static IReadOnlyList<ProblemJson> From(IReadOnlyList<Problem> problems) => [.. problems.Select(From)];
}

/// <summary>What a command prints as JSON when it was asked wrongly: nothing but the problems.</summary>
public sealed record ProblemsJson(IReadOnlyList<ProblemJson> Problems);
