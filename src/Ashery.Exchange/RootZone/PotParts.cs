using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Exchange.RootZone;

/// <summary>Materials of a pot file, with the label of their own bag where one is told: <c>urea</c> or <c>neem-cake=4-1-1</c>.</summary>
internal static class PotParts
{
    public static Result<Material> Read(string word) => InlineMaterial.Parse(word, MaterialCatalogue.Default);

    /// <summary>Of a word that was read before.</summary>
    public static Material Material(string word) => Read(word).Value!;

    public static bool HasOwnLabel(string word) => word.Contains('=', StringComparison.Ordinal);

    /// <summary>What each part is taken times for grams a litre: 1, or what brings the can to its mg N/L.</summary>
    public static double Strength(PotDocumentEvent can)
    {
        if (can.NitrogenMg is not { } wanted)
        {
            return 1;
        }

        var sum = Nitrogen(can.Parts);
        return sum > 0 ? wanted / 1000 / sum : 0;
    }

    /// <summary>g N in the parts as they stand.</summary>
    public static double Nitrogen(IReadOnlyList<KeyValuePair<string, double>> parts)
    {
        var sum = 0.0;
        foreach (var (word, part) in parts)
        {
            sum += part * Material(word).Label[Nutrient.N];
        }

        return sum;
    }
}
