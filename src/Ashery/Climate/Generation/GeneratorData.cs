using Ashery.Sources;

namespace Ashery.Climate.Generation;

/// <summary>A coefficient row of data/climate/generator.json, with where it comes from.</summary>
/// <param name="Id">Name of the row.</param>
/// <param name="Coefficients">The figures, in the order the row's note says.</param>
/// <param name="Breaks">Where one polynomial takes over from the other, °C; empty where there is only one.</param>
/// <param name="Source">Key of the publication.</param>
/// <param name="Provenance">How the figures came into the data.</param>
internal sealed record GeneratorRow(string Id, double[] Coefficients, double[] Breaks, string Source, Provenance Provenance);

/// <summary>Published figures of the weather generator.</summary>
internal static class GeneratorData
{
    private static readonly Lazy<Dictionary<string, GeneratorRow>> Rows = new(static () =>
    {
        var rows = new Dictionary<string, GeneratorRow>(StringComparer.Ordinal);
        foreach (var row in DataRows.Read("data/climate/generator.json", static r => new GeneratorRow(
            r.Text("id"), r.Numbers("coefficients"), r.Numbers("breaks"), r.Text("source"), r.Provenance())))
        {
            rows.Add(row.Id, row);
        }

        return rows;
    });

    public static IReadOnlyCollection<GeneratorRow> All => Rows.Value.Values;

    /// <summary>Figures of a row.</summary>
    public static double[] Of(string id) => Rows.Value[id].Coefficients;

    /// <summary>Standard deviation, °C, by a row of four pieces (line, two polynomials of degree 5, line), held between 0.5 and 12 °C.</summary>
    public static double Spread(string id, double celsius)
    {
        var row = Rows.Value[id];
        var (c, b) = (row.Coefficients, row.Breaks);
        var (from, degree) = celsius <= b[0] ? (0, 1) : celsius <= b[1] ? (2, 5) : celsius <= b[2] ? (8, 5) : (14, 1);
        var sum = 0.0;
        for (var k = degree; k >= 0; k--)
        {
            sum = (sum * celsius) + c[from + k];
        }

        return Math.Clamp(sum, 0.5, 12);
    }
}
