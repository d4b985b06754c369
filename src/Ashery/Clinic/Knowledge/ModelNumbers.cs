using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Clinic.Knowledge;

/// <summary>Numbers of the model that no publication gives: <c>model.json</c>.</summary>
internal sealed record ModelNumbers
{
    /// <summary>What a word of likelihood is worth.</summary>
    public required IReadOnlyDictionary<string, double> Grades { get; init; }

    /// <summary>Part of answers that have nothing to do with the cause: a slip, a second trouble, a bad look.</summary>
    public required double Noise { get; init; }

    /// <summary>The same for a measurement.</summary>
    public required double TestNoise { get; init; }

    /// <summary>Correlation of answers within a group, beyond what the cause explains.</summary>
    public required double Correlation { get; init; }

    /// <summary>Probability, before anything is known, that it is none of the causes.</summary>
    public required double SomethingElse { get; init; }

    /// <summary>Weight of words in brackets or from another field.</summary>
    public required double Aside { get; init; }

    /// <summary>How much of its sign a shortage shows when the other of a pair shows nothing there.</summary>
    public required double PairShare { get; init; }

    /// <summary>Effort of asking at all, added to that of each question.</summary>
    public required double Asking { get; init; }

    public static ModelNumbers Read()
    {
        using var document = JsonDocument.Parse(EmbeddedData.Read("data/clinic/model.json"));
        var root = document.RootElement;
        var grades = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var grade in root.GetProperty("grades").EnumerateObject())
        {
            grades.Add(grade.Name, grade.Value.GetDouble());
        }

        return new()
        {
            Grades = grades,
            Noise = root.Number("noise"),
            TestNoise = root.Number("testNoise"),
            Correlation = root.Number("correlation"),
            SomethingElse = root.Number("somethingElse"),
            Aside = root.Number("aside"),
            PairShare = root.Number("pairShare"),
            Asking = root.Number("asking"),
        };
    }
}
