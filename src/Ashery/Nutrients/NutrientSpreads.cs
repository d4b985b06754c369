using System.Collections;
using System.Diagnostics.CodeAnalysis;
using Ashery.Quantities;

namespace Ashery.Nutrients;

/// <summary>
/// Ranges by nutrient, kept in an array. A Dictionary would do, but one over value types has to be compiled anew in every process, which a
/// verb that must answer at once would notice.
/// </summary>
public sealed class NutrientSpreads : IReadOnlyDictionary<Nutrient, Spread>
{
    private readonly Spread[] spreads = new Spread[Analysis.Count];
    private readonly bool[] known = new bool[Analysis.Count];

    /// <summary>No range known.</summary>
    public static NutrientSpreads None { get; } = new();

    public int Count { get; private set; }

    public IEnumerable<Nutrient> Keys
    {
        get
        {
            for (var i = 0; i < known.Length; i++)
            {
                if (known[i])
                {
                    yield return (Nutrient)i;
                }
            }
        }
    }

    public IEnumerable<Spread> Values
    {
        get
        {
            foreach (var key in Keys)
            {
                yield return spreads[(int)key];
            }
        }
    }

    public Spread this[Nutrient key] => known[(int)key] ? spreads[(int)key] : throw new KeyNotFoundException($"No range of {LabelBasis.Symbol(key)} is known.");

    public bool ContainsKey(Nutrient key) => known[(int)key];

    public bool TryGetValue(Nutrient key, [MaybeNullWhen(false)] out Spread value)
    {
        value = spreads[(int)key];
        return known[(int)key];
    }

    public IEnumerator<KeyValuePair<Nutrient, Spread>> GetEnumerator()
    {
        foreach (var key in Keys)
        {
            yield return new KeyValuePair<Nutrient, Spread>(key, spreads[(int)key]);
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Used while filling, before anyone else sees it.</summary>
    internal void Set(Nutrient key, Spread value)
    {
        Count += known[(int)key] ? 0 : 1;
        known[(int)key] = true;
        spreads[(int)key] = value;
    }
}
