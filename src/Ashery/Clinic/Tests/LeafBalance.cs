using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Clinic.Tests;

/// <summary>
/// Elements of a leaf against its nitrogen, as printed for deciduous trees (N = 100). Balance indices of the DRIS and CND kind exist for cut roses and oranges, but the
/// figures of their norms were not seen, so none are shipped: an index with norms of another plant says nothing.
/// </summary>
/// <param name="Element">Which.</param>
/// <param name="PerHundredN">Parts for 100 parts of nitrogen.</param>
/// <param name="Low">Below this it is short.</param>
/// <param name="Optimum">What is best.</param>
/// <param name="Level">Low below <paramref name="Low"/>.</param>
/// <param name="SourceId">Whose norms.</param>
/// <param name="Provenance">How they came into the data.</param>
public sealed record LeafBalance(string Element, double PerHundredN, double Low, (double Low, double High) Optimum, TestLevel Level, string SourceId, Provenance Provenance)
{
    private static readonly Lazy<List<RatioRow>> Rows = new(static () => DataRows.Read("data/clinic/leaf-ratios.json", RatioRow.Read));

    /// <summary>Ratios of what was measured, percent of dry matter; empty without nitrogen.</summary>
    public static IReadOnlyList<LeafBalance> Of(IReadOnlyDictionary<string, double> percent)
    {
        if (!percent.TryGetValue("N", out var nitrogen) || nitrogen <= 0)
        {
            return [];
        }

        var found = new List<LeafBalance>();
        foreach (var row in Rows.Value)
        {
            if (percent.TryGetValue(row.Element, out var value))
            {
                var ratio = value / nitrogen * 100;
                found.Add(new(
                    row.Element, ratio, row.Low, row.Optimum, ratio < row.Low ? TestLevel.Low : TestLevel.Right, row.Source, row.Provenance));
            }
        }

        return found;
    }

    private sealed record RatioRow(string Element, double Low, (double Low, double High) Optimum, string Source, Provenance Provenance)
    {
        public static RatioRow Read(JsonElement row)
        {
            var optimum = row.Numbers("optimum");
            return new(row.Text("element"), row.Number("low"), (optimum[0], optimum[1]), row.Text("source"), row.Provenance());
        }
    }
}
