using System.Text.Json;
using Ashery.Pots;
using Ashery.Sources;

namespace Ashery.RootZone;

/// <summary>A growing medium: parts of volume are 0 to 1. Rows of data/rootzone/media.json.</summary>
public sealed record Medium
{
    private static readonly Lazy<List<Medium>> Rows = new(static () => DataRows.Read("data/rootzone/media.json", Read));

    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>The broad kind a garden tells.</summary>
    public required MediumKind Kind { get; init; }

    public required SpreadFigure Porosity { get; init; }

    /// <summary>Water held after drainage, in a core of standard height.</summary>
    public required SpreadFigure ContainerCapacity { get; init; }

    public required SpreadFigure AirSpace { get; init; }

    /// <summary>Water a plant takes without strain, 10 to 50 cm of suction.</summary>
    public required SpreadFigure EasilyAvailable { get; init; }

    /// <summary>Water left when the plant wilts.</summary>
    public required SpreadFigure Unavailable { get; init; }

    /// <summary>g/cm³.</summary>
    public required SpreadFigure BulkDensity { get; init; }

    /// <summary>Cation exchange, meq/L of medium at pH 7.</summary>
    public required SpreadFigure Exchange { get; init; }

    /// <summary>meq/L and pH unit.</summary>
    public required SpreadFigure Buffer { get; init; }

    /// <summary>Unreacted lime, g CaCO3/L.</summary>
    public required SpreadFigure Lime { get; init; }

    public required SpreadFigure StartPh { get; init; }

    /// <summary>Part of the drainage that is pore water; the rest is what was poured on, run past.</summary>
    public required SpreadFigure Mixing { get; init; }

    /// <summary>Phosphate held by the solid against that in water, L a litre of medium.</summary>
    public required SpreadFigure PhosphateSorption { get; init; }

    /// <summary>Parts of the exchange filled by Ca, Mg, K, Na and NH4 in fresh medium.</summary>
    public required IReadOnlyList<double> StartCations { get; init; }

    public static IReadOnlyList<Medium> All => Rows.Value;

    /// <summary>The medium with this id, or null.</summary>
    public static Medium? Find(string id) => Rows.Value.Find(m => m.Id == id);

    /// <summary>What stands for a kind when nothing closer is told: the first row of that kind.</summary>
    public static Medium Of(MediumKind kind) => Rows.Value.Find(m => m.Kind == kind) ?? Rows.Value[0];

    private static Medium Read(JsonElement row) => new()
    {
        Id = row.Text("id"),
        Name = row.Text("name"),
        Kind = Enum.Parse<MediumKind>(row.Text("kind")),
        Porosity = SpreadFigure.Read(row, "porosity"),
        ContainerCapacity = SpreadFigure.Read(row, "containerCapacity"),
        AirSpace = SpreadFigure.Read(row, "airSpace"),
        EasilyAvailable = SpreadFigure.Read(row, "easilyAvailable"),
        Unavailable = SpreadFigure.Read(row, "unavailable"),
        BulkDensity = SpreadFigure.Read(row, "bulkDensity"),
        Exchange = SpreadFigure.Read(row, "exchange"),
        Buffer = SpreadFigure.Read(row, "buffer"),
        Lime = SpreadFigure.Read(row, "lime"),
        StartPh = SpreadFigure.Read(row, "startPh"),
        Mixing = SpreadFigure.Read(row, "mixing"),
        PhosphateSorption = SpreadFigure.Read(row, "phosphateSorption"),
        StartCations = [.. row.GetProperty("startCations").GetProperty("shares").EnumerateArray().Select(static n => n.GetDouble())],
    };
}
