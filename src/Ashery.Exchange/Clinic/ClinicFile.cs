using System.Globalization;
using System.Text.Json;
using Ashery.Clinic;
using Ashery.Exchange.Json;
using Ashery.Problems;

namespace Ashery.Exchange.Clinic;

/// <summary>A case for the clinic as a JSON file; docs/clinic-file.md tells each field, schema: docs/schemas/clinic-file.schema.json.</summary>
public static class ClinicFile
{
    /// <summary>A case is a page of words; this is a hundred pages.</summary>
    public const int LongestText = 256 * 1024;

    // Objects within objects within the case: no case goes deeper.
    private const int Deepest = 6;

    /// <summary>Reads a file; everything that is wrong comes back at once, each with the field as it is named in the file.</summary>
    public static Result<ClinicCase> Read(string text)
    {
        if (text.Length > LongestText)
        {
            return Result.Fail<ClinicCase>("case", "The text is longer than 256 kB; no case is.", "Check that it is the right file.");
        }

        if (string.IsNullOrWhiteSpace(text))
        {
            return Result.Fail<ClinicCase>("case", "The file is empty.", "Write what you see, as in { \"symptoms\": { \"leaf_age\": \"older\", \"chlorosis\": \"uniform\" } }.");
        }

        if (HalfSigns.In(text, "case") is { } half)
        {
            return Result.Fail<ClinicCase>(half);
        }

        try
        {
            using var document = JsonDocument.Parse(
                text, new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip, MaxDepth = Deepest, AllowDuplicateProperties = false });
            return ClinicFileReader.Read(document.RootElement);
        }
        catch (JsonException wrong)
        {
            var line = string.Create(CultureInfo.InvariantCulture, $"case, line {(wrong.LineNumber ?? 0) + 1}");
            return wrong.Message.Contains("depth", StringComparison.OrdinalIgnoreCase)
                ? Result.Fail<ClinicCase>(line, "Braces stand too deep within braces; a case has its fields two deep.", "Compare with docs/clinic-file.md.")
                : wrong.Message.Contains("uplicate", StringComparison.Ordinal)
                    ? Result.Fail<ClinicCase>(line, "A field stands there twice.", "Write each field once; several signs are parted by commas in one text.")
                    : Result.Fail<ClinicCase>(line, "This is not JSON.", "Look for a missing comma, quote or bracket; words take quotes, figures a point and no unit.");
        }
    }

    /// <summary>The sample of <c>data/demo</c>: an invented plant.</summary>
    public static string Sample()
    {
        using var stream = typeof(PlantClinic).Assembly.GetManifestResourceStream("data/demo/pale-lantana.case.json")
            ?? throw new InvalidOperationException("The sample case is not part of the library.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
