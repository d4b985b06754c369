using Ashery.Materials;

namespace Ashery.Compatibility;

/// <summary>How a mix keeps: a moisture class with its reason.</summary>
public static class StorageJudge
{
    /// <summary>Judges a mix of materials by mass fraction.</summary>
    public static Storage Judge(IReadOnlyList<(Material Material, double Share)> parts, CompatibilityChart chart) =>
        new(StorageClass.Unknown, "The chart is being filled in.", null, "nothing published was read yet");
}
