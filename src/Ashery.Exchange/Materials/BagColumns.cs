using Ashery.Materials;

namespace Ashery.Exchange.Materials;

/// <summary>The columns of a CSV of bags. Every nutrient may stand in its column as oxide or element; what is written out is N, P2O5, K2O and elements.</summary>
public static class BagColumns
{
    public const string Id = "id";
    public const string Material = "material";
    public const string Name = "name";
    public const string Kind = "kind";
    public const string BulkDensity = "bulk density g/mL";
    public const string LiquidDensity = "liquid density g/mL";
    public const string Dissolves = "dissolves";
    public const string SaltIndex = "salt index";
    public const string LimeEquivalent = "lime equivalent";
    public const string Left = "left";
    public const string Size = "size";
    public const string Price = "price";

    /// <summary>Label lines in the order they are written.</summary>
    internal static readonly LabelItem[] Items =
    [
        LabelItem.N, LabelItem.AmmoniumN, LabelItem.NitrateN, LabelItem.UreaN, LabelItem.OrganicN, LabelItem.SlowN, LabelItem.P2O5, LabelItem.K2O,
        LabelItem.Ca, LabelItem.Mg, LabelItem.S, LabelItem.Fe, LabelItem.Mn, LabelItem.Zn, LabelItem.Cu, LabelItem.B, LabelItem.Mo, LabelItem.Cl, LabelItem.Na,
    ];

    private static readonly string[] Before = [Id, Material, Name, Kind];
    private static readonly string[] After = [BulkDensity, LiquidDensity, Dissolves, SaltIndex, LimeEquivalent, Left, Size, Price];

    /// <summary>All columns in the order they are written.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Before, .. Items.Select(LabelItems.Symbol), .. After];

    /// <summary>True for a column that is not a nutrient.</summary>
    internal static bool IsPlain(string header) =>
        Before.Contains(header, StringComparer.OrdinalIgnoreCase) || After.Contains(header, StringComparer.OrdinalIgnoreCase);
}
