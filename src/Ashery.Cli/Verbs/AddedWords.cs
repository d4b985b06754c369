using Ashery.Cli.Frame;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Solutions.Can;

namespace Ashery.Cli.Verbs;

/// <summary>What <c>--add</c> names, with the bags of the garden where one is named.</summary>
internal static class AddedWords
{
    public static IReadOnlyList<CanAddition> Read(Given given, Terminal terminal, ValueOption add, GardenSource garden)
    {
        var shelf = garden.IsNamed(given) ? garden.Load(given, terminal)?.Shelf ?? [] : [];
        var additions = new List<CanAddition>();
        foreach (var text in given.Texts(add))
        {
            if (given.Take(CanWords.Addition(text, id => Bag(shelf, id))) is { } addition)
            {
                additions.Add(addition);
            }
        }

        if (additions.Count == 0 && !given.Wrong)
        {
            given.Add(new Problem("add", "Nothing is added.", "Name at least one material with its grams in a litre, such as --add epsom-salt=1.5."));
        }

        return additions;
    }

    private static Material? Bag(IReadOnlyList<Bag> shelf, string id)
    {
        foreach (var bag in shelf)
        {
            if (bag.Id == id || bag.Material.Id == id)
            {
                return bag.Material;
            }
        }

        return null;
    }
}
