using System.Text.Json;
using Ashery.Sources;

namespace Ashery.RootZone.Feeding;

/// <summary>A slow or coated feed: days until 80 % is out at 21 °C. Rows of data/rootzone/slow.json.</summary>
public sealed record SlowFeed(string Id, SpreadFigure Days, IReadOnlyList<string> Materials)
{
    private static readonly Lazy<List<SlowFeed>> Rows = new(static () => DataRows.Read("data/rootzone/slow.json", Read));

    public static IReadOnlyList<SlowFeed> All => Rows.Value;

    /// <summary>Row of a material; the first one, a usual coat, when it is not listed.</summary>
    public static SlowFeed Of(string materialId) => Rows.Value.Find(r => r.Materials.Contains(materialId)) ?? Rows.Value[0];

    /// <summary>First-order rate, 1/day, of a longevity: k = -ln(1 - 0.8)/days.</summary>
    public static double Rate(double days) => -Math.Log(1 - RootZoneConstants.Default["coated-longevity-share"]) / days;

    private static SlowFeed Read(JsonElement row) => new(row.Text("id"), SpreadFigure.Read(row, "days"), row.Texts("materials"));
}
