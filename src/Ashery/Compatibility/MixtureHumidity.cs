using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Compatibility;

/// <summary>Critical relative humidity of two salts together (percent, 30 °C): above it the mixture takes up water from the air.</summary>
internal sealed class MixtureHumidity
{
    /// <summary>
    /// Percent relative humidity that an ordinary dry room stays below: the usual upper bound for rooms people live in, and where
    /// mould begins (from memory, ASHRAE 62.1 and museum practice).
    /// </summary>
    public const double DryRoom = 65;

    private readonly Dictionary<string, Figure> pairs = new(StringComparer.Ordinal);

    private MixtureHumidity(List<HumidityRow> rows)
    {
        foreach (var row in rows)
        {
            var figure = new Figure(row.Percent, row.Source, row.Provenance, row.Note);
            foreach (var a in row.A)
            {
                foreach (var b in row.B)
                {
                    pairs[Key(a, b)] = figure;
                    pairs[Key(b, a)] = figure;
                }
            }
        }
    }

    public static MixtureHumidity Read() => new(DataRows.Read("data/compatibility/humidity.json", HumidityRow.Read));

    /// <summary>The published figure of the pair, or null.</summary>
    public Figure? Of(Material a, Material b) => pairs.GetValueOrDefault(Key(a.Id, b.Id));

    private static string Key(string a, string b) => string.Concat(a, " ", b);
}
