using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Solutions.Can;

/// <summary>Reads what goes into a can as a grower types it.</summary>
public static class CanWords
{
    /// <summary>
    /// <c>epsom-salt=2</c>, grams a litre: a material of the catalogue, a bag, one with its own label as <c>urea=46-0-0=1</c>, or a formula
    /// as <c>K2SO4=1</c>.
    /// </summary>
    /// <param name="text">What was typed.</param>
    /// <param name="bag">The bag of this id on the grower's shelf, or null; looked at before the catalogue.</param>
    public static Result<CanAddition> Addition(string text, Func<string, Material?> bag)
    {
        var equals = text.LastIndexOf('=');
        var name = (equals < 0 ? text : text[..equals]).Trim();
        if (equals < 0 || name.Length == 0)
        {
            return Result.Fail<CanAddition>("add", $"'{NumberReader.Shown(text)}' does not say what and how much.", "Write a material, = and grams a litre, as in epsom-salt=2.");
        }

        var figure = text[(equals + 1)..].Trim();
        var grams = NumberReader.Positive(figure.EndsWith('g') ? figure[..^1] : figure, $"add {NumberReader.Shown(name)}", CanMaker.MostGrams, "2");
        var material = Material(name, bag);
        return grams.Ok && material.Ok
            ? Result.Of(new CanAddition(material.Value, grams.Value), material.Problems)
            : Result.Fail<CanAddition>([.. material.Ok ? [] : material.Problems, .. grams.Problems]);
    }

    /// <summary>A material, bag or formula by the word for it.</summary>
    public static Result<MaterialInWater> Material(string word, Func<string, Material?> bag)
    {
        if (bag(word) is { } own)
        {
            return MaterialInWater.OfBag(own);
        }

        if (Salt.TryFind(word, out _))
        {
            return MaterialInWater.OfFormula(word);
        }

        if (!word.Contains('=', StringComparison.Ordinal) && LooksLikeFormula(word))
        {
            var near = NearestName.Find(word, Names(), 3);
            return Result.Fail<MaterialInWater>("add", $"{NumberReader.Shown(word)} is not a salt or acid the chemistry knows.",
                near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}?" : "Take a formula such as K2SO4, MgSO4.7H2O or HNO3, or a material of the catalogue.");
        }

        var read = InlineMaterial.Parse(word, MaterialCatalogue.Default);
        if (!read.Ok)
        {
            return Result.Fail<MaterialInWater>([.. read.Problems.Select(static p => p with { Field = p.Field == "material" ? "add" : $"add {p.Field}" })]);
        }

        return word.Contains('=', StringComparison.Ordinal) ? MaterialInWater.OfBag(read.Value) : MaterialInWater.Of(read.Value);
    }

    /// <summary><c>1.5 g/L</c>, <c>150 mg/L N</c>, or <c>1:100</c> for what leaves an injector when the amounts are those of the stock.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="grams">g a litre of all that is added, for the injector.</param>
    public static Result<CanStrength> Strength(string text, double grams)
    {
        var s = text.Trim();
        if (s.StartsWith("1:", StringComparison.Ordinal))
        {
            var ratio = NumberReader.Read(s[2..], "strength", 1, 10_000, "100");
            return ratio.Ok ? Result.Of(CanStrength.Injected(grams, ratio.Value)) : Result.Fail<CanStrength>(ratio.Problems);
        }

        var slash = s.IndexOf("g/L", StringComparison.OrdinalIgnoreCase);
        if (slash > 0)
        {
            var milli = s[slash - 1] is 'm' or 'M';
            var rest = s[(slash + 3)..].Trim();
            var number = NumberReader.Positive(s[..(milli ? slash - 1 : slash)], "strength", 1e6, milli ? "150 mg/L N" : "1.5 g/L");
            if (!number.Ok)
            {
                return Result.Fail<CanStrength>(number.Problems);
            }

            if (!milli && rest.Length == 0)
            {
                return Result.Of(CanStrength.Of(number.Value));
            }

            if (milli && Element(rest) is { } nutrient)
            {
                return Result.Of(CanStrength.Of(nutrient, number.Value));
            }
        }

        return Result.Fail<CanStrength>("strength", $"'{NumberReader.Shown(s)}' is not a strength.", "Write 1.5 g/L for the whole feed, 150 mg/L N for a nutrient (N, P or K as the element), or 1:100 for a stock through an injector.");
    }

    private static Nutrient? Element(string word) => word switch
    {
        "N" or "n" => Nutrient.N,
        "P" or "p" => Nutrient.P,
        "K" or "k" => Nutrient.K,
        "Ca" => Nutrient.Ca,
        "Mg" => Nutrient.Mg,
        _ => null,
    };

    // Catalogue ids are small letters and hyphens.
    private static bool LooksLikeFormula(string word)
    {
        foreach (var c in word)
        {
            if (char.IsAsciiLetterUpper(c))
            {
                return true;
            }
        }

        return word.Length > 0 && word[0] == '(';
    }

    private static IEnumerable<(string, string)> Names()
    {
        foreach (var salt in Salt.All)
        {
            yield return (salt.Formula, salt.Formula);
        }
    }
}
