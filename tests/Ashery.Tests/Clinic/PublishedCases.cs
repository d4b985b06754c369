using System.Text.Json;
using Ashery.Clinic;

namespace Ashery.Tests.Clinic;

/// <summary>The published cases beside this file.</summary>
internal static class PublishedCases
{
    public static IReadOnlyList<PublishedCase> All { get; } = Read();

    /// <summary>A case file's fields as answers: a figure is measured, a text is told.</summary>
    public static ClinicCase Visit(JsonElement row)
    {
        var answers = new List<ClinicAnswer>();
        foreach (var part in (ReadOnlySpan<string>)["symptoms", "context"])
        {
            foreach (var field in row.GetProperty(part).EnumerateObject())
            {
                answers.Add(field.Value.ValueKind == JsonValueKind.Number
                    ? ClinicAnswer.Measure(field.Name, field.Value.GetDouble()) : ClinicAnswer.Tell(field.Name, field.Value.GetString()!));
            }
        }

        return new() { CropWords = row.GetProperty("crop").GetString(), Answers = answers };
    }

    private static List<PublishedCase> Read()
    {
        using var file = JsonDocument.Parse(RepositoryFile.Read("tests/Ashery.Tests/Clinic/published-cases.json"));
        return [.. file.RootElement.GetProperty("rows").EnumerateArray().Select(static row => new PublishedCase(
            row.GetProperty("id").GetString()!, Visit(row), [.. row.GetProperty("causes").EnumerateArray().Select(static c => c.GetString()!)], row.GetProperty("source").GetString()!))];
    }
}

/// <summary>A case and what it was.</summary>
internal sealed record PublishedCase(string Id, ClinicCase Visit, IReadOnlyList<string> Causes, string SourceId)
{
    /// <summary>Place of the cause in the ranking, 1 for first. "Something else" is no cause and takes no place.</summary>
    public int Rank(ClinicReport report)
    {
        var causes = report.Causes.Where(static c => c.Kind != CauseKind.Unknown).ToList();
        return 1 + causes.FindIndex(c => Causes.Contains(c.Id));
    }
}
