using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Solutions.Waters;

/// <summary>Something a water is judged by. Rows of data/solutions/water-figures.json and the limits of water-limits.json.</summary>
public sealed record WaterFigureKind
{
    private static readonly Lazy<IReadOnlyList<WaterFigureKind>> Rows = new(static () => DataRows.Read("data/solutions/water-figures.json", Read));

    public static IReadOnlyList<WaterFigureKind> All => Rows.Value;

    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>Empty for a ratio.</summary>
    public required string Unit { get; init; }

    /// <summary>Which sensitivity of the plant counts: salts, chloride, alkalinity or any.</summary>
    public required string ClassBy { get; init; }

    /// <summary>Rain lowers it in proportion.</summary>
    public required bool Thins { get; init; }

    /// <summary>Less than the limit is the trouble.</summary>
    public required bool Below { get; init; }

    /// <summary>What it does to the plant.</summary>
    public required string Effect { get; init; }

    public required string Remedy { get; init; }

    private static WaterFigureKind Read(JsonElement row) => new()
    {
        Id = row.Text("id"),
        Name = row.Text("name"),
        Unit = row.Text("unit"),
        ClassBy = row.Text("class"),
        Thins = row.Flag("thins"),
        Below = row.Flag("below"),
        Effect = row.Text("effect"),
        Remedy = row.Text("remedy"),
    };
}

/// <summary>A limit of a figure.</summary>
/// <param name="Value">In the unit of the figure.</param>
/// <param name="SourceId">Key of its source.</param>
/// <param name="Provenance">How it came into the data.</param>
/// <param name="Note">How the source says it.</param>
public sealed record WaterLimit(double Value, string SourceId, Provenance Provenance, string? Note)
{
    private static readonly Lazy<IReadOnlyList<(string Figure, string Class, string Level, WaterLimit Limit)>> Rows = new(static () =>
    {
        var rows = new List<(string, string, string, WaterLimit)>();
        foreach (var (figure, by, level, limit) in DataRows.Read("data/solutions/water-limits.json", static row => Tuple.Create(
            row.Text("figure"), row.Text("class"), row.Text("level"), new WaterLimit(row.Number("value"), row.Text("source"), row.Provenance(), row.TextOrNull("note")))))
        {
            rows.Add((figure, by, level, limit));
        }

        return rows;
    });

    internal static WaterLimit? Of(string figure, string sensitivity, string level)
    {
        foreach (var row in Rows.Value)
        {
            if (row.Figure == figure && row.Level == level && (row.Class == sensitivity || row.Class == "any"))
            {
                return row.Limit;
            }
        }

        return null;
    }
}
