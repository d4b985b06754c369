using Ashery.Materials;

namespace Ashery.Compatibility;

/// <summary>What a rule of the chart speaks of: a group, a material (<c>@id</c>), a property (<c>#name</c>), an ion, or anything (<c>*</c>).</summary>
internal sealed class Selector
{
    private readonly Sort sort;
    private readonly string word;
    private readonly Traits trait;

    private Selector(Sort sort, string word, Traits trait = Traits.None) => (this.sort, this.word, this.trait) = (sort, word, trait);

    private enum Sort
    {
        Anything,
        Group,
        Material,
        Trait,
        Ion,
    }

    /// <summary>Reads a word of the data files. A bare word is a group in capitals, else an ion. A word that does not exist throws.</summary>
    public static Selector Parse(string word) => word[0] switch
    {
        '*' => new(Sort.Anything, word),
        '@' => new(Sort.Material, word[1..]),
        '#' => new(Sort.Trait, word, MaterialTraits.Parse(word[1..])),
        >= 'A' and <= 'Z' => new(Sort.Group, word),
        _ => new(Sort.Ion, word),
    };

    public static Selector[] Parse(string[] words) => Array.ConvertAll(words, Parse);

    public bool Matches(Material material, Traits traits) => sort switch
    {
        Sort.Anything => true,
        Sort.Group => material.CompatibilityGroup == word,
        Sort.Material => material.Id == word,
        Sort.Trait => (traits & trait) != Traits.None,
        _ => material.Ions.Contains(word),
    };

    public static bool Any(Selector[] selectors, Material material, Traits traits)
    {
        foreach (var selector in selectors)
        {
            if (selector.Matches(material, traits))
            {
                return true;
            }
        }

        return false;
    }
}
