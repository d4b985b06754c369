using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Crops;

/// <summary>The crops the library ships, in order of id.</summary>
public sealed class CropCatalogue
{
    private static readonly Lazy<CropCatalogue> Shipped = new(
        static () => new(DataRows.Read("data/crops/crops.json", CropRow.Read)));

    private readonly Dictionary<string, Crop> byId;

    public CropCatalogue(IEnumerable<Crop> crops)
    {
        All = [.. crops];
        byId = All.ToDictionary(static crop => crop.Id, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>The catalogue of <c>data/crops</c>, read at first use.</summary>
    public static CropCatalogue Default => Shipped.Value;

    public IReadOnlyList<Crop> All { get; }

    /// <summary>The crop of this id, or null.</summary>
    public Crop? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>Ids a misspelt one may have meant, nearest first.</summary>
    public IReadOnlyList<string> Suggest(string id, int count = 3) =>
        NearestName.Find(id, All.SelectMany(static crop => new[] { (crop.Id, crop.Id), (crop.Id, crop.Name) }), count);
}
