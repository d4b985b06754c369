using Ashery.Materials;

namespace Ashery.Compatibility;

/// <summary>Judges pairs of materials by published verdicts and by the chemistry of their ions.</summary>
public sealed class CompatibilityChart
{
    private static readonly Lazy<CompatibilityChart> Shipped = new(static () => new());

    private readonly Judgement unknown = new(Verdict.Unknown, "The chart is being filled in.", "nothing published was read yet");

    private CompatibilityChart()
    {
    }

    /// <summary>The chart of <c>data/compatibility</c>, read at first use.</summary>
    public static CompatibilityChart Default => Shipped.Value;

    /// <summary>Dry today, dry and stored, in concentrated solution. The order of the two does not matter.</summary>
    public PairVerdict Judge(Material a, Material b) => new(a.Id, b.Id, unknown, unknown, unknown);
}
