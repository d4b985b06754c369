using System.Text.Json;
using Ashery.Sources;

namespace Ashery.RootZone;

/// <summary>A constant of the pot model with its spread, row of data/rootzone/constants.json.</summary>
/// <param name="Id">Name, as <c>nitrification</c>.</param>
/// <param name="Value">What is calculated with.</param>
/// <param name="Low">Lowest of the spread; null where it is certain.</param>
/// <param name="High">Highest of the spread.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="SourceId">Publication, or <c>rootzone-choice</c>.</param>
/// <param name="Provenance">How it came into the data.</param>
/// <param name="Note">What it means and how it was chosen.</param>
public sealed record RootZoneConstant(
    string Id, double Value, double? Low, double? High, string Unit, string SourceId, Provenance Provenance, string? Note);

/// <summary>All constants of the pot model; a value that can be changed for draws, one constant at a time.</summary>
public sealed class RootZoneConstants
{
    private static readonly Lazy<RootZoneConstants> Shipped = new(static () => new(DataRows.Read("data/rootzone/constants.json", Read), null));

    private readonly Dictionary<string, RootZoneConstant> rows;
    private readonly Dictionary<string, double>? changed;

    private RootZoneConstants(List<RootZoneConstant> list, Dictionary<string, double>? changed)
    {
        rows = list.ToDictionary(static r => r.Id, StringComparer.Ordinal);
        this.changed = changed;
    }

    private RootZoneConstants(Dictionary<string, RootZoneConstant> rows, Dictionary<string, double> changed)
    {
        this.rows = rows;
        this.changed = changed;
    }

    public static RootZoneConstants Default => Shipped.Value;

    /// <summary>All rows, by id.</summary>
    public IReadOnlyCollection<RootZoneConstant> All => rows.Values;

    /// <summary>The value in use; an unknown id is our own mistake.</summary>
    public double this[string id] => changed is not null && changed.TryGetValue(id, out var value) ? value
        : rows.TryGetValue(id, out var row) ? row.Value : throw DataRows.Unknown(id);

    /// <summary>True when there is a constant of this id.</summary>
    public bool Has(string id) => rows.ContainsKey(id);

    public RootZoneConstant Row(string id) => rows.TryGetValue(id, out var row) ? row : throw DataRows.Unknown(id);

    /// <summary>The same with another value of one constant.</summary>
    public RootZoneConstants With(string id, double value)
    {
        _ = Row(id);
        return new(rows, new Dictionary<string, double>(changed ?? [], StringComparer.Ordinal) { [id] = value });
    }

    /// <summary>The same with other values of several.</summary>
    public RootZoneConstants With(IReadOnlyDictionary<string, double> values)
    {
        var all = new Dictionary<string, double>(changed ?? [], StringComparer.Ordinal);
        foreach (var (id, value) in values)
        {
            _ = Row(id);
            all[id] = value;
        }

        return new(rows, all);
    }

    private static RootZoneConstant Read(JsonElement row) => new(
        row.Text("id"), row.Number("value"), Optional(row, "low"), Optional(row, "high"), row.Text("unit"), row.Text("source"), row.Provenance(), row.TextOrNull("note"));

    private static double? Optional(JsonElement row, string key) => row.TryGetProperty(key, out var value) ? value.GetDouble() : null;
}
