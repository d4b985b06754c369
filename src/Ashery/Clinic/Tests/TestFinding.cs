using System.Globalization;
using Ashery.Clinic.Knowledge;
using Ashery.Clinic.Words;
using Ashery.Crops;
using Ashery.Sources;

namespace Ashery.Clinic.Tests;

/// <summary>A measured figure set against its range.</summary>
/// <param name="QuestionId">Which figure.</param>
/// <param name="Name">In words: "pH of the medium".</param>
/// <param name="Value">As measured.</param>
/// <param name="AsExtract">As it would be in the saturated extract, where another method was used; null else.</param>
/// <param name="Unit">Unit of the figures.</param>
/// <param name="Low">Low end of what is right; null for none.</param>
/// <param name="High">High end of what is right; null for none.</param>
/// <param name="Level">Low, right or high.</param>
/// <param name="OfCrop">True when the range is of this crop and not a general one.</param>
/// <param name="SourceId">Whose range.</param>
/// <param name="Provenance">How it came into the data.</param>
public sealed record TestFinding(
    string QuestionId, string Name, double Value, double? AsExtract, string Unit, double? Low, double? High, TestLevel Level, bool OfCrop, string SourceId, Provenance Provenance)
{
    /// <summary>The finding in a line.</summary>
    public string Words
    {
        get
        {
            var value = string.Create(CultureInfo.InvariantCulture, $"{Value:0.###} {Unit}").TrimEnd();
            var extract = AsExtract is { } e ? string.Create(CultureInfo.InvariantCulture, $", about {e:0.##} as saturated extract") : string.Empty;
            var range = (Low, High) switch
            {
                ({ } low, { } high) => string.Create(CultureInfo.InvariantCulture, $"{low:0.###} to {high:0.###}"),
                (null, { } high) => string.Create(CultureInfo.InvariantCulture, $"up to {high:0.###}"),
                ({ } low, null) => string.Create(CultureInfo.InvariantCulture, $"from {low:0.###}"),
                _ => "no range",
            };
            var level = Level switch { TestLevel.Low => "low", TestLevel.High => "high", _ => "in range" };
            return $"{Name}: {value}{extract}: {level} ({range}{(OfCrop ? " for this crop" : string.Empty)}).";
        }
    }

    internal static TestFinding? Of(QuestionRow question, double value, double factor, Crop? crop)
    {
        if (Scales.Of(question.Id, crop) is not { } scale)
        {
            return null;
        }

        var extract = value * factor;
        var right = Array.IndexOf(scale.Choices, question.Id switch { "NH4_share" => "low", "medium_temperature" => "mild", "water_hardness" => "middle", _ => "right" });
        var at = scale.Place(extract);
        return new(
            question.Id, char.ToUpperInvariant(question.Label[0]) + question.Label[1..] is var name && question.Label.StartsWith("pH", StringComparison.Ordinal) ? question.Label : name,
            value, Math.Abs(factor - 1) > 1e-9 ? extract : null, question.Public.Unit ?? string.Empty,
            right > 0 ? scale.Edges[right - 1] : null, right < scale.Edges.Length ? scale.Edges[right] : null,
            at < right ? TestLevel.Low : at > right ? TestLevel.High : TestLevel.Right,
            crop is not null && !ReferenceEquals(scale, Scales.Of(question.Id, null)), scale.SourceId, scale.Provenance);
    }
}

/// <summary>Where a figure lies.</summary>
public enum TestLevel
{
    Low,
    Right,
    High,
}
