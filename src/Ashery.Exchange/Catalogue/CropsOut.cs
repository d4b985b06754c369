using Ashery.Crops;
using Ashery.Sources;

namespace Ashery.Exchange.Catalogue;

/// <summary>From crops to their JSON.</summary>
public static class CropsOut
{
    /// <summary>A line of the list.</summary>
    public static CropJson Line(Crop crop) => new(
        crop.Id,
        crop.Name,
        crop.Latin,
        crop.Feeder,
        new(crop.Ratio.N, crop.Ratio.P2O5, crop.Ratio.K2O, crop.Ratio.AsPrinted, SourceIndex.Default.Cite(crop.Ratio.SourceId), crop.Ratio.Provenance, crop.Ratio.Note),
        Sheet: null);

    /// <summary>With everything known of it.</summary>
    public static CropJson WithSheet(Crop crop) => Line(crop) with
    {
        Sheet = new(
            Range(FeederRates.Default.LiquidNitrogen(crop)),
            Range(FeederRates.Default.SeasonNitrogen(crop)),
            Range(crop.MediumPh),
            Range(crop.SaturatedExtractEc),
            crop.BaseCelsius,
            crop.Phosphorus,
            crop.AcidLoving,
            crop.ChlorideSensitive,
            crop.Notes),
    };

    private static CropRangeJson Range(CropRate rate) => Range(rate.Range)! with { FromFeederClass = rate.FromClass };

    private static CropRangeJson? Range(SourcedRange? range) => range is null
        ? null
        : new(range.Low, range.High, SourceIndex.Default.Cite(range.SourceId), range.Provenance, range.Note, FromFeederClass: false);
}
