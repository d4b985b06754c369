using System.Text.Json;
using Ashery.Sources;

namespace Ashery.RootZone.Draws;

/// <summary>Rows of data/rootzone/spreads.json and groups.json.</summary>
internal static class SpreadRows
{
    private static readonly Lazy<Dictionary<string, UncertainFigure>> Figures = new(static () =>
        DataRows.Read("data/rootzone/spreads.json", Figure).ToDictionary(static f => f.Id, StringComparer.Ordinal));

    private static readonly Lazy<List<GroupRow>> GroupRows = new(static () =>
        DataRows.Read("data/rootzone/groups.json", static row => new GroupRow(row.Text("id"), row.Text("name"), row.Texts("constants"))));

    /// <summary>Groups with the constants that belong to them; <c>none</c> for those not drawn.</summary>
    public static IReadOnlyList<GroupRow> Groups => GroupRows.Value;

    public static UncertainFigure Of(string id) => Figures.Value.TryGetValue(id, out var figure) ? figure : throw DataRows.Unknown(id);

    /// <summary>A group in words.</summary>
    public static string NameOf(UncertainGroup group) => GroupRows.Value.Find(r => r.Id == group.ToString())!.Name;

    private static UncertainFigure Figure(JsonElement row) =>
        new(row.Text("id"), row.Text("name"), Enum.Parse<UncertainGroup>(row.Text("group")), row.Number("low"), row.Number("value"), row.Number("high"));
}

/// <summary>A row of groups.json.</summary>
internal sealed record GroupRow(string Id, string Name, IReadOnlyList<string> Constants);
