using Ashery.Crops;

namespace Ashery.Planning.Fit;

/// <summary>The bounds of a pot's crop.</summary>
/// <param name="MostEc">Saturated extract, mS/cm: the top of the range published for the crop.</param>
/// <param name="MostNitrogen">Pore water, mg N/L: the top of the crop's liquid range, no stronger solution being published for it.</param>
/// <param name="NitrogenFromClass">True when the range is that of the feeder class.</param>
/// <param name="EcIsUsual">True when no limit is published for the crop and that of the model stands in.</param>
public sealed record FitLimits(double MostEc, double MostNitrogen, bool NitrogenFromClass, bool EcIsUsual)
{
    // Top of the usual range for crops without a figure of their own, as the model takes it.
    private const double UsualEc = 2.5;

    public static FitLimits Of(Crop crop)
    {
        var liquid = FeederRates.Default.LiquidNitrogen(crop);
        return new(crop.SaturatedExtractEc?.High ?? UsualEc, liquid.Range.High, liquid.FromClass, crop.SaturatedExtractEc is null);
    }
}
