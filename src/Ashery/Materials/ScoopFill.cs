using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Materials;

/// <summary>How full a scoop is taken.</summary>
public enum Heap
{
    /// <summary>Struck off with a straight edge: the only way that can be repeated.</summary>
    Level,

    /// <summary>As much as stays on.</summary>
    Heaped,
}

/// <summary>Grams that a scoop holds.</summary>
/// <param name="Grams">Lowest, typical, highest.</param>
/// <param name="IsCalibrated">True when the grower weighed it.</param>
/// <param name="From">Where the figure comes from, in words.</param>
public sealed record ScoopGrams(Spread Grams, bool IsCalibrated, string From);

/// <summary>What a scoop of a material weighs: by the grower's own weighing, else by bulk density, or by density for liquids.</summary>
public static class ScoopFill
{
    /// <summary>Heaped over level, for granules and powders in a spoon: common practice, no source.</summary>
    public static readonly Spread HeapedOverLevel = new(1.3, 1.5, 1.8);

    /// <summary>Null when neither a weighing nor a density is known.</summary>
    public static ScoopGrams? Of(Scoop scoop, Material material, Heap heap = Heap.Level)
    {
        var level = Level(scoop, material);
        if (level is null || heap == Heap.Level || material.IsLiquid)
        {
            return level;
        }

        var g = level.Grams;
        return new ScoopGrams(
            new Spread(g.Min * HeapedOverLevel.Min, g.Typical * HeapedOverLevel.Typical, g.Max * HeapedOverLevel.Max),
            level.IsCalibrated,
            level.From + ", heaped 1.3 to 1.8 times level (common practice)");
    }

    /// <summary>A scoop by its size: <c>5mL</c>, <c>tsp</c>, <c>1/2 tbsp</c>; without calibrations.</summary>
    public static Result<Scoop> Parse(string text, string field = "scoop")
    {
        var s = text.Trim();
        var size = s.Length > 0 && char.IsLetter(s[0]) ? "1 " + s : s;
        var read = QuantityReader.Volume(size, field, "5mL");
        return read.Ok
            ? Result.Of(new Scoop(NumberReader.Shown(s), read.Value, new Dictionary<string, Spread>(StringComparer.Ordinal)), [.. Large(read.Value, field)])
            : Result.Fail<Scoop>(read.Problems);
    }

    private static ScoopGrams? Level(Scoop scoop, Material material)
    {
        if (scoop.Calibrations.TryGetValue(material.Id, out var weighed) && weighed.Typical > 0)
        {
            return new ScoopGrams(weighed, IsCalibrated: true, "your own weighing");
        }

        var millilitres = scoop.Volume.Millilitres;
        if (material.IsLiquid)
        {
            return material.LiquidDensity is { } density and > 0
                ? new ScoopGrams(Spread.Exactly(density * millilitres), IsCalibrated: false, FormattableString.Invariant($"density {density:0.##} g/mL"))
                : null;
        }

        return material.BulkDensity is { Typical: > 0 } loose
            ? new ScoopGrams(
                new Spread(loose.Min * millilitres, loose.Typical * millilitres, loose.Max * millilitres),
                IsCalibrated: false,
                FormattableString.Invariant($"usual bulk density {loose.Typical:0.##} g/mL"))
            : null;
    }

    private static IEnumerable<Problem> Large(Volume volume, string field)
    {
        if (volume.Litres > 5)
        {
            yield return new Problem(field, FormattableString.Invariant($"{volume.Litres:0.##} L is large for a scoop."), "Check the unit: mL or L.", Severity.Warning);
        }
    }
}
