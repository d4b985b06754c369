using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Solutions.Waters;

/// <summary>The waters that ship: made examples, a published rain, and pure water. Rows of data/solutions/waters.json.</summary>
public sealed class SourceWaters
{
    private static readonly Lazy<SourceWaters> Shipped = new(static () => new(DataRows.Read("data/solutions/waters.json", Read)));

    private SourceWaters(IReadOnlyList<ExampleWater> all) => All = all;

    public static SourceWaters Default => Shipped.Value;

    /// <summary>In the order of the data, softest first.</summary>
    public IReadOnlyList<ExampleWater> All { get; }

    /// <summary>A water that ships, by its id or name: <c>soft</c>, <c>soft water</c>; <c>pure</c>. Null when there is none.</summary>
    public SourceWater? Find(string nameOrId) => nameOrId.Trim() is var key && Is(key, "pure") ? SourceWater.Pure : Example(key)?.Water;

    /// <summary>The report of a water that ships; null for pure water and for a name it does not have.</summary>
    public ExampleWater? Example(string nameOrId)
    {
        foreach (var example in All)
        {
            if (Is(nameOrId.Trim(), example.Report.Id) || string.Equals(nameOrId.Trim(), example.Report.Name, StringComparison.OrdinalIgnoreCase))
            {
                return example;
            }
        }

        return null;
    }

    private static bool Is(string key, string id) =>
        string.Equals(key, id, StringComparison.OrdinalIgnoreCase) || string.Equals(key, id + " water", StringComparison.OrdinalIgnoreCase);

    private static ExampleWater Read(JsonElement row)
    {
        var lines = new List<WaterLine>();
        foreach (var ion in row.GetProperty("mgPerLitre").EnumerateObject())
        {
            lines.Add(new(ion.Name, ion.Value.GetDouble()));
        }

        lines.Add(new("alkalinity", row.Number("alkalinity")));
        return new(
            new WaterReport { Id = row.Text("id"), Name = row.Text("name"), Lines = lines, PH = row.TryGetProperty("pH", out var pH) ? pH.GetDouble() : null },
            row.Text("about"), row.Text("source"), row.Provenance(), row.TextOrNull("note"));
    }
}
