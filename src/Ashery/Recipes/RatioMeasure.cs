using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>How far a blend's nutrient shares are from the wanted ones.</summary>
/// <remarks>
/// With c_j the content of wanted nutrient j (label basis), s_j = c_j / sum_j c_j and tau_j the wanted share:
/// e = (1/d) sum_j |s_j / tau_j - 1|, over the d nutrients wanted above zero. The largest term is the second opinion.
/// </remarks>
public static class RatioMeasure
{
    /// <summary>The name to print beside the figure.</summary>
    public const string Name = "mean relative deviation of the nutrient shares";

    /// <summary>The name of the second figure.</summary>
    public const string LargestName = "largest relative deviation of a nutrient share";

    /// <summary>Mean and largest deviation of contents on the label's basis; both one when none of what is wanted is there.</summary>
    public static (double Mean, double Largest) Of(LabelAnalysis label, Wish wish) => Of(label, Wanted.Of(wish));

    internal static (double Mean, double Largest) Of(LabelAnalysis label, Wanted wanted)
    {
        if (wanted.Held(label) <= 0)
        {
            return (1, 1);
        }

        double sum = 0;
        double largest = 0;
        for (var j = 0; j < wanted.Nutrients.Length; j++)
        {
            var deviation = Math.Abs(wanted.Supply(label, j) - 1);
            sum += deviation;
            largest = Math.Max(largest, deviation);
        }

        return (sum / wanted.Nutrients.Length, largest);
    }
}
