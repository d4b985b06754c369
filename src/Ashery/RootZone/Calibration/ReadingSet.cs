namespace Ashery.RootZone.Calibration;

/// <summary>Readings in the order of their days, on the scale they are compared on: EC by its logarithm, as its error is a share of it.</summary>
internal sealed class ReadingSet
{
    private const double LeastEc = 0.01;

    private readonly PotReading[] readings;
    private readonly int[] days;

    public ReadingSet(IEnumerable<PotReading> all, DateOnly from)
    {
        readings = [.. all.OrderBy(static r => r.Date).ThenBy(static r => r.Kind)];
        days = [.. readings.Select(r => r.Date.DayNumber - from.DayNumber)];
        Values = [.. readings.Select(static r => Scale(r.Kind, r.Value))];
        Errors = [.. readings.Select(static r => r.Kind == ReadingKind.LeachateEc ? r.Deviation / Math.Max(LeastEc, r.Value) : r.Deviation)];
    }

    public int Count => readings.Length;

    public IReadOnlyList<PotReading> All => readings;

    public double[] Values { get; }

    public double[] Errors { get; }

    /// <summary>Days from the first to the last reading, both counted.</summary>
    public int Span => days.Length == 0 ? 0 : days[^1] + 1;

    public int DayOf(int i) => days[i];

    public ReadingKind Kind(int i) => readings[i].Kind;

    public static double Scale(ReadingKind kind, double value) => kind == ReadingKind.LeachateEc ? Math.Log(Math.Max(LeastEc, value)) : value;

    /// <summary>Back from the scale.</summary>
    public static double Unscale(ReadingKind kind, double scaled) => kind == ReadingKind.LeachateEc ? Math.Exp(scaled) : scaled;
}
