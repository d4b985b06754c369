using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Materials;

/// <summary>The materials a grower may find in a shop, by id. Rows are read when asked for, so that a verb with three materials pays for three.</summary>
public sealed class MaterialCatalogue
{
    private static readonly string[] Files = ["straights", "secondary", "trace", "acids", "organic"];
    private static readonly Lazy<MaterialCatalogue> Shared = new(static () => new MaterialCatalogue(Rows()));

    private readonly Dictionary<string, JsonElement> rows;
    private readonly Dictionary<string, Material> read = new(StringComparer.Ordinal);
    private readonly Lock reading = new();
    private readonly Lazy<IReadOnlyList<Material>> all;

    private MaterialCatalogue(Dictionary<string, JsonElement> rows)
    {
        this.rows = rows;
        all = new(() => this.rows.Keys.Select(id => Find(id)!).ToArray());
    }

    public static MaterialCatalogue Default => Shared.Value;

    /// <summary>Every material, in the order of the data files.</summary>
    public IReadOnlyList<Material> All => all.Value;

    /// <summary>The ids, without reading the rows.</summary>
    public IReadOnlyCollection<string> Ids => rows.Keys;

    /// <summary>The material with this id; null when there is none.</summary>
    public Material? Find(string id)
    {
        if (!rows.TryGetValue(id, out var row))
        {
            return null;
        }

        lock (reading)
        {
            if (!read.TryGetValue(id, out var material))
            {
                read.Add(id, material = MaterialRow.Read(row));
            }

            return material;
        }
    }

    /// <summary>The ids most like what was typed, nearest first; empty when nothing is near.</summary>
    public IReadOnlyList<string> Suggest(string id, int count = 3) => NearestName.Find(
        id,
        All.SelectMany(static m => m.OtherNames.Append(m.Name).Append(m.Id).Select(name => (m.Id, name))),
        count);

    /// <summary>Every published figure of a material with its source, chosen or not, for its data sheet.</summary>
    public IReadOnlyList<MaterialFigure> FiguresOf(string id) =>
        rows.TryGetValue(id, out var row) ? MaterialFigures.Read(row) : [];

    private static Dictionary<string, JsonElement> Rows()
    {
        var found = new Dictionary<string, JsonElement>(StringComparer.Ordinal);
        foreach (var file in Files)
        {
            // Never disposed: the elements live as long as the catalogue.
            var document = JsonDocument.Parse(EmbeddedData.Read($"data/materials/{file}.json"));
            foreach (var row in document.RootElement.GetProperty("materials").EnumerateArray())
            {
                found.Add(row.GetProperty("id").GetString()!, row);
            }
        }

        return found;
    }
}
