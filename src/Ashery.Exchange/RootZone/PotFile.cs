using System.Globalization;
using System.Text.Json;
using Ashery.Problems;
using Ashery.RootZone;

namespace Ashery.Exchange.RootZone;

/// <summary>A scenario of one pot as a JSON file (schema: docs/schemas/pot-file.schema.json): pot, medium, plant, water, watering, events.</summary>
public static class PotFile
{
    /// <summary>No scenario comes near it.</summary>
    public const int LongestText = 1024 * 1024;

    /// <summary>Reads a scenario; everything that is wrong comes back at once, each with the field as it is named in the file.</summary>
    public static Result<PotScenario> Read(string text)
    {
        if (text.Length > LongestText)
        {
            return Result.Fail<PotScenario>("pot", "The text is longer than 1 MB; no scenario is.", "Check that it is the right file.");
        }

        try
        {
            using var document = JsonDocument.Parse(text, new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
            if (document.RootElement.ValueKind != JsonValueKind.Object)
            {
                return Result.Fail<PotScenario>("pot", "A scenario is one object in braces; this is not.", "It begins like { \"pot\": { \"litres\": 5 }, \"medium\": \"peat-mix\" }.");
            }

            List<Problem> problems = [];
            var scenario = new PotFileReader(problems).Read(new(document.RootElement, "", problems));
            return problems.Count > 0 || scenario is null ? Result.Fail<PotScenario>(problems) : Result.Of(scenario);
        }
        catch (JsonException wrong)
        {
            var line = string.Create(CultureInfo.InvariantCulture, $"pot, line {(wrong.LineNumber ?? 0) + 1}");
            return Result.Fail<PotScenario>(
                line, "This is not JSON.", "A scenario looks like { \"pot\": { \"litres\": 5 }, \"medium\": \"peat-mix\", \"plant\": { \"crop\": \"desert-rose\" } }; figures take a point, names take double quotes.");
        }
    }
}
