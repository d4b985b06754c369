using System.Collections;

namespace Ashery.Materials;

/// <summary>A set of hazards as bits of one number, for the same reason as <see cref="Nutrients.NutrientSpreads"/>: nothing to compile at start-up.</summary>
public sealed class HazardSet : IReadOnlySet<Hazard>
{
    private readonly uint bits;

    private HazardSet(uint bits) => this.bits = bits;

    public static HazardSet None { get; } = new(0);

    public int Count => System.Numerics.BitOperations.PopCount(bits);

    /// <summary>The set with one more.</summary>
    public HazardSet With(Hazard hazard) => new(bits | (1u << (int)hazard));

    public bool Contains(Hazard item) => (bits & (1u << (int)item)) != 0;

    public bool IsProperSubsetOf(IEnumerable<Hazard> other) => IsProperSubset(bits, Of(other));

    public bool IsProperSupersetOf(IEnumerable<Hazard> other) => IsProperSubset(Of(other), bits);

    public bool IsSubsetOf(IEnumerable<Hazard> other) => (bits & ~Of(other)) == 0;

    public bool IsSupersetOf(IEnumerable<Hazard> other) => (Of(other) & ~bits) == 0;

    public bool Overlaps(IEnumerable<Hazard> other) => (bits & Of(other)) != 0;

    public bool SetEquals(IEnumerable<Hazard> other) => bits == Of(other);

    public IEnumerator<Hazard> GetEnumerator()
    {
        for (var i = 0; i < 32; i++)
        {
            if ((bits & (1u << i)) != 0)
            {
                yield return (Hazard)i;
            }
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private static bool IsProperSubset(uint small, uint large) => (small & ~large) == 0 && small != large;

    private static uint Of(IEnumerable<Hazard> hazards)
    {
        var sum = 0u;
        foreach (var hazard in hazards)
        {
            sum |= 1u << (int)hazard;
        }

        return sum;
    }
}
