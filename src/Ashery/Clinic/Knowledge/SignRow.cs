using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Clinic.Knowledge;

/// <summary>Who says so.</summary>
internal readonly record struct Voice(string SourceId, Provenance Provenance)
{
    public static Voice[] Read(JsonElement row)
    {
        if (!row.TryGetProperty("sources", out var list))
        {
            return [new(row.Text("source"), row.Provenance())];
        }

        var voices = new Voice[list.GetArrayLength()];
        var i = 0;
        foreach (var one in list.EnumerateArray())
        {
            voices[i++] = new(one.Text("id"), one.Provenance());
        }

        return voices;
    }
}

/// <summary>A word of likelihood with the choices it is said of: <c>usually: high|very_high</c> is said of the two together.</summary>
internal readonly record struct Said(string Grade, string[] Choices);

/// <summary>A row of <c>signs.json</c>: how often a cause (or a whole kind, with a star) shows the choices of a question.</summary>
internal sealed record SignRow(string Cause, string Sign, Said[] Said, Voice[] Voices, string[] Crops)
{
    // In this order in every row, so that a sum over them never depends on the file.
    private static readonly string[] Grades = ["always", "usually", "often", "sometimes", "rarely", "never"];

    public static SignRow Read(JsonElement row) => new(row.Text("cause"), row.Text("sign"), ReadSaid(row), Voice.Read(row), row.Texts("crops"));

    public static Said[] ReadSaid(JsonElement row)
    {
        var said = new List<Said>();
        foreach (var grade in Grades)
        {
            foreach (var choices in row.Texts(grade))
            {
                said.Add(new(grade, choices.Split('|')));
            }
        }

        return [.. said];
    }
}

/// <summary>A row of <c>families.json</c>: what shortage or excess of an element does to its figure in a test.</summary>
internal sealed record FamilyRow(string Family, CauseKind Kind, Said[] Said, Voice[] Voices)
{
    public static FamilyRow Read(JsonElement row) => new(row.Text("family"), CauseWords.Kind(row.Text("kind")), SignRow.ReadSaid(row), Voice.Read(row));
}

/// <summary>Too much of one element takes away others.</summary>
internal sealed record AntagonistRow(string Excess, string[] Shortages, Voice[] Voices)
{
    public static AntagonistRow Read(JsonElement row) => new(row.Text("excess"), row.Texts("shortages"), Voice.Read(row));
}

/// <summary>Which elements a range of pH makes scarce or plenty.</summary>
internal sealed record LockRow(string[] Choices, string[] Less, string[] More, Voice[] Voices)
{
    public static LockRow Read(JsonElement row) => new(row.Texts("choices"), row.Texts("less"), row.Texts("more"), Voice.Read(row));
}

/// <summary>How an element moves in the plant, and which leaves give it up first.</summary>
internal sealed record MobilityRow(string Element, string Mobility, string LeafAge, Voice[] Voices)
{
    public static MobilityRow Read(JsonElement row) => new(row.Text("element"), row.Text("mobility"), row.Text("leafAge"), Voice.Read(row));
}
