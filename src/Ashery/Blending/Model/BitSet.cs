namespace Ashery.Blending.Model;

/// <summary>A set of column numbers.</summary>
internal readonly struct BitSet
{
    private readonly ulong[] words;

    public BitSet(int columns) => words = new ulong[(columns + 63) / 64];

    public ReadOnlySpan<ulong> Words => words;

    public bool Has(int i) => (words[i >> 6] >> (i & 63) & 1) != 0;

    public void Add(int i) => words[i >> 6] |= 1UL << (i & 63);

    public void Remove(int i) => words[i >> 6] &= ~(1UL << (i & 63));
}
