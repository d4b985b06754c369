using Ashery.Nutrients;

namespace Ashery.Materials;

/// <summary>How much of a product is the salt its formula names.</summary>
public static class Purity
{
    /// <summary>Mass fraction of the pure salt that the label leaves room for: the smallest ratio of label to pure over the nutrients named.</summary>
    public static double Of(LabelAnalysis label, LabelAnalysis pure)
    {
        var purity = 1.0;
        for (var n = Nutrient.N; n <= Nutrient.Na; n++)
        {
            if (label[n] > 0 && pure[n] > 0)
            {
                purity = Math.Min(purity, label[n] / pure[n]);
            }
        }

        return purity;
    }
}
