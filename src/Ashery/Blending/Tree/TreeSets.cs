using System.Numerics;

namespace Ashery.Blending.Tree;

/// <summary>Sets of columns as words of bits.</summary>
internal static class TreeSets
{
    public static bool Has(ReadOnlySpan<ulong> set, int i) => (set[i >> 6] >> (i & 63) & 1) != 0;

    public static void Add(Span<ulong> set, int i) => set[i >> 6] |= 1UL << (i & 63);

    public static void Remove(Span<ulong> set, int i) => set[i >> 6] &= ~(1UL << (i & 63));

    public static int Count(ReadOnlySpan<ulong> set)
    {
        var count = 0;
        foreach (var word in set)
        {
            count += BitOperations.PopCount(word);
        }

        return count;
    }
}
