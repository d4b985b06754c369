using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Materials;

/// <summary>The materials a grower may find in a shop, by id. Rows are read when asked for, so that a verb with three materials pays for three.</summary>
public sealed class MaterialCatalogue
{
    private static readonly string[] Files = ["straights", "secondary", "trace", "acids", "organic"];
    private static readonly Lazy<MaterialCatalogue> Shared = new(static () => new MaterialCatalogue());

    private readonly Dictionary<string, Row> rows = new(StringComparer.Ordinal);
    private readonly Lock reading = new();
    private int filesRead;
    private Material[]? all;

    private MaterialCatalogue()
    {
    }

    public static MaterialCatalogue Default => Shared.Value;

    /// <summary>Every material, in the order of the data files.</summary>
    public IReadOnlyList<Material> All
    {
        get
        {
            lock (reading)
            {
                while (ReadNextFile())
                {
                }

                return all ??= [.. rows.Values.Select(static row => row.Material)];
            }
        }
    }

    /// <summary>The material with this id; null when there is none.</summary>
    public Material? Find(string id) => Locate(id)?.Material;

    /// <summary>The ids most like what was typed, nearest first; empty when nothing is near.</summary>
    public IReadOnlyList<string> Suggest(string id, int count = 3) => NearestName.Find(
        id,
        All.SelectMany(static m => m.OtherNames.Append(m.Name).Append(m.Id).Select(name => (m.Id, name))),
        count);

    /// <summary>Every published figure of a material with its source, chosen or not, for its data sheet.</summary>
    public IReadOnlyList<MaterialFigure> FiguresOf(string id) => Locate(id) is { } row ? MaterialFigures.Read(row.Json) : [];

    // Files are read one by one until the id turns up: most mixes need only the first.
    private Row? Locate(string id)
    {
        lock (reading)
        {
            while (true)
            {
                if (rows.TryGetValue(id, out var row))
                {
                    return row;
                }

                if (!ReadNextFile())
                {
                    return null;
                }
            }
        }
    }

    private bool ReadNextFile()
    {
        if (filesRead == Files.Length)
        {
            return false;
        }

        // Never disposed: the elements live as long as the catalogue.
        var document = JsonDocument.Parse(EmbeddedData.Read($"data/materials/{Files[filesRead++]}.json"));
        foreach (var json in document.RootElement.GetProperty("materials").EnumerateArray())
        {
            rows.Add(json.GetProperty("id").GetString()!, new Row(json));
        }

        return true;
    }

    /// <summary>A row as written, and as a material once someone asks.</summary>
    private sealed class Row(JsonElement json)
    {
        private Material? material;

        public JsonElement Json => json;

        // Two threads may read it at once; both get equal values and the first one written stays.
        public Material Material => material ?? Interlocked.CompareExchange(ref material, MaterialRow.Read(json), null) ?? material;
    }
}
