using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Materials;

/// <summary>One published figure of a material's data sheet.</summary>
/// <param name="Property">What it is: <c>label.N</c>, <c>saltIndex</c>, <c>solubility 20 °C</c>.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Min">Lowest, where a range is known.</param>
/// <param name="Typical">The figure itself; null where only a range is printed.</param>
/// <param name="Max">Highest, where a range is known.</param>
/// <param name="SourceId">Publication of the figure itself.</param>
/// <param name="Provenance">Seen, computed or from memory.</param>
/// <param name="Note">What differs elsewhere.</param>
/// <param name="Chosen">False for a figure that is kept beside the one in use.</param>
/// <param name="RangeSourceId">Publication of the lowest and highest, where not that of the figure.</param>
/// <param name="RangeProvenance">How they came into the data, where not as the figure did.</param>
public sealed record MaterialFigure(
    string Property,
    string Unit,
    double? Min,
    double? Typical,
    double? Max,
    string SourceId,
    Provenance Provenance,
    string? Note,
    bool Chosen,
    string? RangeSourceId = null,
    Provenance? RangeProvenance = null);

/// <summary>Reads all figures of a catalogue row.</summary>
internal static class MaterialFigures
{
    private static readonly (string Key, string Unit)[] Lists =
    [
        ("bulkDensity", "g/mL, loose"),
        ("saltIndex", "by weight, sodium nitrate = 100"),
        ("limeEquivalent", "kg CaCO3 a kg, positive acidifies"),
        ("criticalHumidity", "% relative humidity, 30 °C"),
    ];

    public static IReadOnlyList<MaterialFigure> Read(JsonElement row)
    {
        var figures = new List<MaterialFigure>();
        Table(row, "label", "% by weight", figures);
        Table(row, "nitrogen", "% N by weight", figures);
        foreach (var (key, unit) in Lists)
        {
            if (row.TryGetProperty(key, out var list))
            {
                var chosen = true;
                foreach (var item in list.EnumerateArray())
                {
                    // A first row marked other is for another grade: the figure in use is worked out instead.
                    figures.Add(One(key, unit, item, chosen && !(item.TryGetProperty("other", out var other) && other.GetBoolean())));
                    chosen = false;
                }
            }
        }

        Single(row, "liquidDensity", "g/mL, 20 °C", figures);
        Single(row, "carbonToNitrogen", "by weight", figures);
        Single(row, "moisture", "mass fraction as sold", figures);
        Solubility(row, figures);
        return figures;
    }

    private static void Table(JsonElement row, string key, string unit, List<MaterialFigure> figures)
    {
        if (row.TryGetProperty(key, out var table))
        {
            foreach (var item in table.EnumerateObject())
            {
                figures.Add(One($"{key}.{item.Name}", unit, item.Value, chosen: true));
            }
        }
    }

    private static void Single(JsonElement row, string key, string unit, List<MaterialFigure> figures)
    {
        if (row.TryGetProperty(key, out var item))
        {
            figures.Add(One(key, unit, item, chosen: true));
        }
    }

    private static void Solubility(JsonElement row, List<MaterialFigure> figures)
    {
        if (!row.TryGetProperty("solubility", out var list))
        {
            return;
        }

        var chosen = true;
        foreach (var item in list.EnumerateArray())
        {
            var species = item.GetProperty("species").GetString();
            foreach (var point in item.GetProperty("at").EnumerateObject())
            {
                // A curve may be recalled as a whole while single points of it were found in print.
                var seen = item.TryGetProperty("seenAt", out var places) ? RowJson.Text(places, point.Name) : null;
                figures.Add(new MaterialFigure($"solubility {point.Name} °C", $"g {species} per 1000 g water", null, point.Value.GetDouble(), null,
                    seen ?? RowJson.Text(item, "source")!, seen is null ? RowJson.How(item) : Provenance.Seen, RowJson.Text(item, "note"), chosen));
            }

            chosen = false;
        }
    }

    private static MaterialFigure One(string property, string unit, JsonElement item, bool chosen)
    {
        var hasRange = item.TryGetProperty("range", out var range);
        return new MaterialFigure(
            property, unit, RowJson.Number(item, "min"), RowJson.Number(item, "typical") ?? RowJson.Number(item, "value"),
            RowJson.Number(item, "max"), RowJson.Text(item, "source")!, RowJson.How(item), RowJson.Text(item, "note"), chosen,
            hasRange ? RowJson.Text(range, "source") : null, hasRange ? RowJson.How(range) : null);
    }
}
