using System.Text.Json;
using Ashery.Crops;
using Ashery.Sources;

namespace Ashery.Clinic.Tests;

/// <summary>Scales of all figures; a crop's own published range goes before the general one.</summary>
internal static class Scales
{
    private static readonly Lazy<Dictionary<string, Scale>> General = new(static () => DataRows.Read("data/clinic/scales.json", Scale.Read).ToDictionary(static s => s.Question, StringComparer.Ordinal));

    private static readonly Lazy<Dictionary<string, LeafRow>> Leaves = new(static () => DataRows.Read("data/clinic/leaf-ranges.json", LeafRow.Read).ToDictionary(static r => r.Crop, StringComparer.Ordinal));

    private static readonly Lazy<List<MethodRow>> Methods = new(static () => DataRows.Read("data/clinic/methods.json", MethodRow.Read));

    /// <summary>The scale of a question for a crop; null when it takes no figures.</summary>
    public static Scale? Of(string question, Crop? crop)
    {
        if (!General.Value.TryGetValue(question, out var general))
        {
            return null;
        }

        if (crop is null)
        {
            return general;
        }

        return question switch
        {
            // How far beyond what suits a crop is "very low", "very high" or "extreme" is our own reading.
            "medium_pH" when crop.MediumPh is { } p => general with { Edges = [p.Low - 0.4, p.Low, p.High, p.High + 0.6], SourceId = p.SourceId, Provenance = p.Provenance },
            "EC" when crop.SaturatedExtractEc is { } e => general with { Edges = [e.Low, e.High, e.High * 1.6], SourceId = e.SourceId, Provenance = e.Provenance },
            _ => Leaf(question, crop.Id) is { } own ? general with { Edges = [own.Low, own.High], Ends = (0, own.High * 2), SourceId = own.Row.Source, Provenance = own.Row.Provenance } : general,
        };
    }

    /// <summary>Factor from the figure of a method to that of the saturated extract; null for a method that is not known.</summary>
    public static double? ToExtract(string? method)
    {
        if (string.IsNullOrWhiteSpace(method))
        {
            return 1;
        }

        var text = method.Trim().ToLowerInvariant();
        foreach (var row in Methods.Value)
        {
            if (row.Method == text || Array.IndexOf(row.Words, text) >= 0)
            {
                return row.ToExtract;
            }
        }

        return null;
    }

    public static IReadOnlyList<string> MethodNames => [.. Methods.Value.Select(static m => m.Method)];

    /// <summary>Is a figure of this question measured in an extract of the medium?</summary>
    public static bool IsExtract(string question) => question == "EC" || (question.StartsWith("medium_", StringComparison.Ordinal) && question is not ("medium_pH" or "medium_temperature"));

    private static (double Low, double High, LeafRow Row)? Leaf(string question, string cropId)
    {
        if (!question.StartsWith("leaf_", StringComparison.Ordinal) || !Leaves.Value.TryGetValue(cropId, out var row))
        {
            return null;
        }

        return row.Ranges.TryGetValue(question["leaf_".Length..], out var range) ? (range.Low, range.High, row) : null;
    }

    private sealed record MethodRow(string Method, string[] Words, double ToExtract)
    {
        public static MethodRow Read(JsonElement row) => new(row.Text("method"), row.Texts("words"), row.Number("toExtract"));
    }

    private sealed record LeafRow(string Crop, Dictionary<string, (double Low, double High)> Ranges, string Source, Provenance Provenance)
    {
        public static LeafRow Read(JsonElement row)
        {
            var ranges = new Dictionary<string, (double Low, double High)>(StringComparer.Ordinal);
            foreach (var range in row.GetProperty("ranges").EnumerateObject())
            {
                ranges.Add(range.Name, (range.Value[0].GetDouble(), range.Value[1].GetDouble()));
            }

            return new(row.Text("crop"), ranges, row.Text("source"), row.Provenance());
        }
    }
}
