using Ashery.Crops;
using Ashery.RootZone;
using Ashery.RootZone.Salts;

namespace Ashery.Journal;

/// <summary>Between which figures a crop does well, by the method the reading was taken with.</summary>
/// <param name="Low">Lower edge, in the unit of the reading.</param>
/// <param name="High">Upper edge.</param>
/// <param name="Words">Where it comes from.</param>
public sealed record ReadingBand(double Low, double High, string Words)
{
    public bool Holds(double value) => value >= Low && value <= High;

    /// <summary>The band of a kind of reading for a crop; null where nothing is published.</summary>
    public static ReadingBand? Of(MeasuredKind what, Crop? crop, RootZoneConstants? constants = null) => what switch
    {
        MeasuredKind.LeachateEc when crop?.SaturatedExtractEc is { } r => Ec(r, constants, static e => e.PourThrough, "what runs out below"),
        MeasuredKind.ExtractEc when crop?.SaturatedExtractEc is { } r => Ec(r, constants, static e => e.OneToTwo, "the 1:2 extract"),
        MeasuredKind.LeachatePh or MeasuredKind.ExtractPh when crop?.MediumPh is { } r => new(r.Low, r.High, $"pH of the medium published for {crop.Name}."),
        _ => null,
    };

    private static ReadingBand Ec(SourcedRange range, RootZoneConstants? constants, Func<ExtractReadings, ExtractSpread> method, string words)
    {
        var (low, high) = (method(Extracts.Of(range.Low, constants ?? RootZoneConstants.Default)), method(Extracts.Of(range.High, constants ?? RootZoneConstants.Default)));
        return new(low.Value, high.Value, FormattableString.Invariant(
            $"{range.Low:0.##} to {range.High:0.##} mS/cm in the saturated extract, as {words} would show it; the top may lie anywhere from {high.Low:0.#} to {high.High:0.#} mS/cm."));
    }
}
