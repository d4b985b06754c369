using Ashery.Crops;
using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Solutions.Can;

/// <summary>Where a crop wants a feed: a range of pH, and the conductivities of this feed at the crop's strengths.</summary>
/// <param name="Crop">For whom.</param>
/// <param name="PH">The pH of the medium the crop wants, which a feed should not pull away from; else the usual pH of feeds.</param>
/// <param name="Ec">mS/cm at 25 °C of this feed in this water at the crop's nitrogen; null where no nitrogen range or no nitrogen is there.</param>
/// <param name="Nitrogen">mg/L of nitrogen of a constant feed, the range behind <see cref="Ec"/>.</param>
public sealed record CanWindow(Crop Crop, SourcedRange PH, (double Low, double High)? Ec, SourcedRange? Nitrogen)
{
    /// <summary>True when a solution lies within the ranges that are known.</summary>
    public bool Holds(CanState state) => state.PH >= PH.Low && state.PH <= PH.High && (Ec is not { } ec || (state.Ec25 >= ec.Low && state.Ec25 <= ec.High));

    /// <summary>The window of a crop for a can.</summary>
    public static CanWindow For(Crop crop, CanReport report)
    {
        var ph = crop.MediumPh ?? new SourcedRange(
            CanLimit.Of("feedPhLow").Value, CanLimit.Of("feedPhHigh").Value, CanLimit.Of("feedPhLow").SourceId, Provenance.CommonPractice);
        var ec = crop.LiquidNitrogen is { } nitrogen && At(report, nitrogen.Low) is { } low && At(report, nitrogen.High) is { } high
            ? (low, high) : ((double, double)?)null;
        return new(crop, ph, ec, crop.LiquidNitrogen);
    }

    // EC of the same parts at a nitrogen strength. The nitrogen of the water counts, so that a water rich in nitrate needs less of the feed.
    private static double? At(CanReport report, double milligrams)
    {
        var request = report.Request;
        var now = 0.0;
        foreach (var addition in request.Additions)
        {
            now += addition.Grams * addition.Material.Content(Nutrient.N) * 1000;
        }

        var wanted = milligrams - (IonNutrients.GramsOf(Nutrient.N, request.Water.Totals) * 1000);
        if (!(now > 0 && wanted > 0))
        {
            return null;
        }

        var scaled = new List<CanAddition>();
        foreach (var addition in request.Additions)
        {
            scaled.Add(addition with { Grams = addition.Grams * wanted / now });
        }

        var solved = CanMaker.Dissolve(request with { Additions = scaled });
        return solved.Ok ? Conductivity.At25(solved.Value) : null;
    }
}
