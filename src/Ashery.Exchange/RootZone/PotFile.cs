using System.Globalization;
using System.Text.Json;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Json;
using Ashery.Problems;

namespace Ashery.Exchange.RootZone;

/// <summary>A pot scenario as a JSON file; docs/pot-file.md tells each field, schema: docs/schemas/pot-file.schema.json.</summary>
public static class PotFile
{
    /// <summary>Years of events and readings fit well below it.</summary>
    public const int LongestText = 1024 * 1024;

    /// <summary>Reads a file; everything that is wrong comes back at once, each with the field as it is named in the file.</summary>
    public static Result<PotDocument> Read(string text)
    {
        if (text.Length > LongestText)
        {
            return Result.Fail<PotDocument>("pot", "The text is longer than 1 MB; no pot is.", "Check that it is the right file.");
        }

        if (HalfSigns.In(text, "pot") is { } half)
        {
            return Result.Fail<PotDocument>(half);
        }

        try
        {
            using var document = JsonDocument.Parse(text, new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
            var fields = new FieldReader();
            var read = PotFileReader.Read(new Node(document.RootElement, fields, ""), fields);
            return fields.HasErrors ? Result.Fail<PotDocument>([.. fields.Problems.Where(static p => p.Severity == Severity.Error)]) : Result.Of(read, fields.Problems);
        }
        catch (JsonException wrong)
        {
            var line = string.Create(CultureInfo.InvariantCulture, $"pot, line {(wrong.LineNumber ?? 0) + 1}");
            return Result.Fail<PotDocument>(line, "This is not JSON.", "Look for a missing comma, quote or bracket; figures take a point and no unit.");
        }
    }

    /// <summary>The sample of <c>data/demo</c>, a worked example of the format: an invented plant with made readings.</summary>
    public static string Sample()
    {
        using var stream = typeof(Ashery.RootZone.PotScenario).Assembly.GetManifestResourceStream("data/demo/bellflower.pot.json")
            ?? throw new InvalidOperationException("The sample pot is not part of the library.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>Writes a pot; reading it back gives the same pot.</summary>
    public static string Write(PotDocument pot) => PotFileWriter.Write(pot);
}
