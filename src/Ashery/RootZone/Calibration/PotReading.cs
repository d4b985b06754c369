namespace Ashery.RootZone.Calibration;

/// <summary>What a grower measured at a pot.</summary>
/// <param name="Date">When.</param>
/// <param name="Kind">What.</param>
/// <param name="Value">mS/cm, pH, or kg.</param>
/// <param name="Error">Standard deviation, in the same unit; null for what is usual.</param>
public sealed record PotReading(DateOnly Date, ReadingKind Kind, double Value, double? Error = null)
{
    // Usual errors: hobby meter and pour-through together (general knowledge, no source).
    private const double EcRelative = 0.08, EcLeast = 0.05, PhError = 0.15, ScaleError = 0.02, ScaleRelative = 0.03;

    /// <summary>The error counted with.</summary>
    public double Deviation => Error ?? Kind switch
    {
        ReadingKind.LeachateEc => Math.Max(EcLeast, EcRelative * Value),
        ReadingKind.LeachatePh => PhError,
        _ => Math.Max(ScaleError, ScaleRelative * Math.Abs(Value)),
    };
}

public enum ReadingKind
{
    /// <summary>EC of what runs out below when water is poured on, mS/cm.</summary>
    LeachateEc,

    /// <summary>Its pH.</summary>
    LeachatePh,

    /// <summary>Weight in the evening below that of the same pot just drained, kg: the water that is missing, so that pot and medium need not be known.</summary>
    WeightBelowFull,
}
