using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Nutrients;

/// <summary>Abridged standard atomic weights in g/mol (data/nutrients/atomic-weights.json, with its source).</summary>
public static class AtomicWeights
{
    private static readonly Lazy<AtomicWeight[]> Table = new(Load);

    public static IReadOnlyList<AtomicWeight> All => Table.Value;

    /// <summary>g/mol of an element by its symbol; null when the table does not hold it.</summary>
    public static double? Find(string symbol) => IndexOf(symbol) is var i and >= 0 ? Table.Value[i].GramsPerMole : null;

    internal static int IndexOf(ReadOnlySpan<char> symbol)
    {
        var table = Table.Value;
        for (var i = 0; i < table.Length; i++)
        {
            if (symbol.SequenceEqual(table[i].Symbol))
            {
                return i;
            }
        }

        return -1;
    }

    private static AtomicWeight[] Load()
    {
        using var document = JsonDocument.Parse(EmbeddedData.Read("data/nutrients/atomic-weights.json"));
        var table = new List<AtomicWeight>();
        foreach (var row in document.RootElement.GetProperty("weights").EnumerateObject())
        {
            table.Add(new AtomicWeight(row.Name, row.Value.GetDouble()));
        }

        return [.. table];
    }
}

/// <summary>An element's weight.</summary>
/// <param name="Symbol">As in a formula.</param>
/// <param name="GramsPerMole">Abridged standard atomic weight.</param>
public sealed record AtomicWeight(string Symbol, double GramsPerMole);
