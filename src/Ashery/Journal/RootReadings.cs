using Ashery.RootZone;
using Ashery.RootZone.Calibration;

namespace Ashery.Journal;

/// <summary>
/// Measured figures of the journal as the root-zone model reads them: readings for a calibration, points for a chart. EC of a meter that does not correct
/// is brought to 25 °C by 2 % a degree (usual of meters, from memory); a 1:2 extract counts as pour-through by the published conversions with their spread.
/// </summary>
public static class RootReadings
{
    // A 1:2 extract and a pour-through of one pot differ in pH by some tenths (general knowledge, no source).
    private const double ExtractPhError = 0.3, PerDegree = 0.02, GramsPerKilogram = 1000;

    // How far a conversion of EC may be off, beside the error of the meter: half of the published spread of pour-through over saturated extract, 1.3 to 2.
    private const double ConversionError = 0.2;

    /// <summary>Readings of a pot, oldest first.</summary>
    /// <param name="entries">Of the journal; others than measurements of this pot are passed over.</param>
    /// <param name="potId">Which pot.</param>
    /// <param name="drainedGrams">Weight of the same pot just drained, g; without it weights tell nothing and are left out.</param>
    public static IReadOnlyList<PotReading> Of(IEnumerable<Entry> entries, string potId, double? drainedGrams = null) =>
        [.. Measurements(entries, potId).Select(m => One(m.Day, m.Measured, drainedGrams)).OfType<PotReading>()];

    /// <summary>EC as the saturated extract would show it, mS/cm: the points of a root-zone chart, oldest first.</summary>
    public static IReadOnlyList<(DateOnly Day, double ExtractEc)> ExtractEc(IEnumerable<Entry> entries, string potId) =>
        [.. Of(entries, potId).Where(static r => r.Kind == ReadingKind.LeachateEc).Select(static r => (r.Date, r.Value / RootZoneConstants.Default["pour-through-over-extract"]))];

    private static IEnumerable<(DateOnly Day, Measured Measured)> Measurements(IEnumerable<Entry> entries, string potId) => entries
        .Where(e => e.Facts is Measured && e.Pots.Contains(potId, StringComparer.Ordinal))
        .OrderBy(static e => e.Day).ThenBy(static e => e.Time ?? TimeOnly.MinValue)
        .Select(static e => (e.Day, (Measured)e.Facts));

    private static PotReading? One(DateOnly day, Measured m, double? drainedGrams)
    {
        var constants = RootZoneConstants.Default;
        var at25 = m.Value / (1 + (PerDegree * ((m.Celsius ?? 25) - 25)));
        switch (m.What)
        {
            case MeasuredKind.LeachateEc:
                return new(day, ReadingKind.LeachateEc, at25);
            case MeasuredKind.ExtractEc:
                var pour = at25 * constants["extract-over-one-to-two"] * constants["pour-through-over-extract"];
                return new(day, ReadingKind.LeachateEc, pour, Math.Max(0.05, ConversionError * pour));
            case MeasuredKind.LeachatePh:
                return new(day, ReadingKind.LeachatePh, m.Value);
            case MeasuredKind.ExtractPh:
                return new(day, ReadingKind.LeachatePh, m.Value, ExtractPhError);
            case MeasuredKind.Weight when drainedGrams is { } drained:
                return new(day, ReadingKind.WeightBelowFull, (drained - m.Value) / GramsPerKilogram);
            default:
                return null;
        }
    }
}
