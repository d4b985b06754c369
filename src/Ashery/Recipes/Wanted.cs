using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>
/// The nutrients wanted above zero, in column order, with their parts. Plain arrays: dictionaries and queries over numbers are
/// compiled anew in every process, which a short command pays for.
/// </summary>
internal sealed class Wanted
{
    private Wanted(Nutrient[] nutrients, double[] parts)
    {
        Nutrients = nutrients;
        Parts = parts;
        foreach (var part in parts)
        {
            Sum += part;
        }
    }

    public Nutrient[] Nutrients { get; }

    /// <summary>Parts of the ratio, or mass fractions of the grade.</summary>
    public double[] Parts { get; }

    /// <summary>Sum of the parts.</summary>
    public double Sum { get; }

    public static Wanted Of(Wish wish)
    {
        var nutrients = new Nutrient[wish.Shares.Count];
        var parts = new double[wish.Shares.Count];
        var count = 0;
        for (var nutrient = Nutrient.N; nutrient <= Nutrient.Na; nutrient++)
        {
            if (wish.Shares.TryGetValue(nutrient, out var part) && part > 0)
            {
                nutrients[count] = nutrient;
                parts[count++] = part;
            }
        }

        Array.Resize(ref nutrients, count);
        Array.Resize(ref parts, count);
        return new Wanted(nutrients, parts);
    }

    /// <summary>Contents of the wanted nutrients, in their order.</summary>
    public double[] Contents(LabelAnalysis label)
    {
        var contents = new double[Nutrients.Length];
        for (var j = 0; j < contents.Length; j++)
        {
            contents[j] = label[Nutrients[j]];
        }

        return contents;
    }

    /// <summary>Mass fraction of all wanted nutrients together.</summary>
    public double Held(LabelAnalysis label)
    {
        double held = 0;
        foreach (var nutrient in Nutrients)
        {
            held += label[nutrient];
        }

        return held;
    }

    /// <summary>Share of wanted nutrient <paramref name="j"/> among the wanted ones, over its wanted share: 1 when met.</summary>
    public double Supply(LabelAnalysis label, int j)
    {
        var held = Held(label);
        return held > 0 ? label[Nutrients[j]] / held / (Parts[j] / Sum) : 0;
    }
}
