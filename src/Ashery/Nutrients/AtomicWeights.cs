using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Nutrients;

/// <summary>Abridged standard atomic weights in g/mol (data/nutrients/atomic-weights.json, with its source).</summary>
public static class AtomicWeights
{
    private static readonly Lazy<Dictionary<string, double>> Table = new(Load);

    public static IReadOnlyDictionary<string, double> All => Table.Value;

    /// <summary>g/mol of an element by its symbol; null when the table does not hold it.</summary>
    public static double? Find(string symbol) => Table.Value.TryGetValue(symbol, out var weight) ? weight : null;

    private static Dictionary<string, double> Load()
    {
        using var document = JsonDocument.Parse(EmbeddedData.Read("data/nutrients/atomic-weights.json"));
        var table = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var row in document.RootElement.GetProperty("weights").EnumerateObject())
        {
            table.Add(row.Name, row.Value.GetDouble());
        }

        return table;
    }
}
