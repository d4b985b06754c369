using System.Numerics;
using System.Runtime.CompilerServices;
using Ashery.Materials;

namespace Ashery.Compatibility;

/// <summary>
/// Rules between two selectors. Which rules a material fits on either side is worked out once for each material and kept as bits,
/// so that a pair costs a few machine words: a shelf of 100 materials has 4,950 pairs.
/// </summary>
internal sealed class PairRules
{
    private const int WordBits = 64;

    private readonly Selector[][] left;
    private readonly Selector[][] right;
    private readonly ConditionalWeakTable<Material, Sides> known = [];
    private readonly ConditionalWeakTable<Material, Sides>.CreateValueCallback workOut;

    public PairRules(IReadOnlyList<IPairRow> rows)
    {
        left = new Selector[rows.Count][];
        right = new Selector[rows.Count][];
        for (var i = 0; i < rows.Count; i++)
        {
            left[i] = Selector.Parse(rows[i].A);
            right[i] = Selector.Parse(rows[i].B);
        }

        workOut = WorkOut;
    }

    /// <summary>Index of the first rule that fits the pair either way round, or -1.</summary>
    public int First(Material a, Material b)
    {
        var (ofA, ofB) = (known.GetValue(a, workOut), known.GetValue(b, workOut));
        for (var word = 0; word < ofA.Left.Length; word++)
        {
            if (Fits(ofA, ofB, word) is not 0 and var bits)
            {
                return (word * WordBits) + BitOperations.TrailingZeroCount(bits);
            }
        }

        return -1;
    }

    /// <summary>Indices of all rules that fit the pair either way round, in order.</summary>
    public List<int> All(Material a, Material b)
    {
        var all = new List<int>();
        var (ofA, ofB) = (known.GetValue(a, workOut), known.GetValue(b, workOut));
        for (var word = 0; word < ofA.Left.Length; word++)
        {
            for (var bits = Fits(ofA, ofB, word); bits != 0; bits &= bits - 1)
            {
                all.Add((word * WordBits) + BitOperations.TrailingZeroCount(bits));
            }
        }

        return all;
    }

    private static ulong Fits(Sides a, Sides b, int word) => (a.Left[word] & b.Right[word]) | (b.Left[word] & a.Right[word]);

    private Sides WorkOut(Material material)
    {
        var traits = MaterialTraits.Of(material);
        return new(Bits(left, material, traits), Bits(right, material, traits));
    }

    private static ulong[] Bits(Selector[][] selectors, Material material, Traits traits)
    {
        var bits = new ulong[(selectors.Length + WordBits - 1) / WordBits];
        for (var i = 0; i < selectors.Length; i++)
        {
            if (Selector.Any(selectors[i], material, traits))
            {
                bits[i / WordBits] |= 1UL << (i % WordBits);
            }
        }

        return bits;
    }

    private sealed record Sides(ulong[] Left, ulong[] Right);
}
