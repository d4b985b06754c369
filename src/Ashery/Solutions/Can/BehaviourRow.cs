using System.Text.Json;
using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Solutions.Can;

/// <summary>What a material that does not simply dissolve does in the can. Rows of data/solutions/behaviour.json.</summary>
internal sealed record BehaviourRow(string? Group, MaterialKind? Kind, string Verdict, string Reason, string WayOut, IReadOnlyList<string> Leaves)
{
    private static readonly Lazy<List<BehaviourRow>> Rows = new(static () => DataRows.Read("data/solutions/behaviour.json", Read));

    public bool Refused => Verdict == "refused";

    /// <summary>The first row that fits, or null.</summary>
    public static BehaviourRow? Of(Material material) =>
        Rows.Value.Find(row => row.Kind == material.Kind || row.Group == material.CompatibilityGroup);

    private static BehaviourRow Read(JsonElement row) => new(
        row.TextOrNull("group"),
        row.TextOrNull("kind") is { } kind ? MaterialWords.Kind(kind) : null,
        row.Text("verdict"),
        row.Text("reason"),
        row.Text("wayOut"),
        row.Texts("leaves"));
}
