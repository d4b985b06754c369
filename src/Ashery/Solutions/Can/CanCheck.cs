using Ashery.Problems;

namespace Ashery.Solutions.Can;

/// <summary>What cannot be in a request.</summary>
internal static class CanCheck
{
    public static List<Problem> Of(CanRequest request)
    {
        var problems = new List<Problem>();
        if (!(request.Celsius is >= Speciation.Coldest and <= Speciation.Warmest))
        {
            problems.Add(new("celsius", FormattableString.Invariant($"{request.Celsius:0.##} °C lies outside 0 to 40 °C, where the constants hold."), "Give a temperature from 0 to 40, such as 20."));
        }

        if (request.Additions.Count == 0)
        {
            problems.Add(new("add", "Nothing is added.", "Name at least one material with its grams in a litre, such as epsom-salt=2."));
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (material, grams) in request.Additions)
        {
            if (!seen.Add(material.Id))
            {
                problems.Add(new($"add {material.Id}", $"{material.Name} is named twice.", "Name it once with the grams added up."));
            }

            if (!(grams > 0 && double.IsFinite(grams)))
            {
                problems.Add(new($"add {material.Id}", FormattableString.Invariant($"{grams:0.###} g of {material.Name} cannot be added."), "Give more than 0 g."));
            }
            else if (grams > CanMaker.MostGrams)
            {
                problems.Add(new($"add {material.Id}", FormattableString.Invariant($"{grams:0.###} g of {material.Name} in a litre is more than {CanMaker.MostGrams:0}."), "Give grams for one litre of water; a feed has 0.5 to 2, a stock tank 50 to 200."));
            }
        }

        return problems;
    }
}
