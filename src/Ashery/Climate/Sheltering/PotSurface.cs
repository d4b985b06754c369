using Ashery.Sources;

namespace Ashery.Climate.Sheltering;

/// <summary>Outside of a pot, and how strongly the sun warms what is in it. Rows of data/climate/pot-surface.json.</summary>
/// <param name="Id">Short name: <c>black</c>.</param>
/// <param name="Name">In words.</param>
/// <param name="Warming">Warming by the sun relative to a usual pot.</param>
/// <param name="Note">What was seen and what is our own reading.</param>
/// <param name="SourceId">Key of a publication, or of our own reasoning.</param>
/// <param name="Provenance">How the figure came into the data.</param>
public sealed record PotSurface(string Id, string Name, Share Warming, string? Note, string SourceId, Provenance Provenance)
{
    private static readonly Lazy<IReadOnlyList<PotSurface>> Rows = new(static () => DataRows.Read(
        "data/climate/pot-surface.json",
        static r => new PotSurface(r.Text("id"), r.Text("name"), Shares.Of(r, "factor"), r.TextOrNull("note"), r.Text("source"), r.Provenance())));

    /// <summary>All kinds, hottest first.</summary>
    public static IReadOnlyList<PotSurface> All => Rows.Value;

    /// <summary>The kind of this name, or null.</summary>
    public static PotSurface? Find(string id) => Rows.Value.FirstOrDefault(s => s.Id.Equals(id, StringComparison.OrdinalIgnoreCase));
}
