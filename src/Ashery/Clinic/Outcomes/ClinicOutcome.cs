namespace Ashery.Clinic.Outcomes;

/// <summary>What the clinic said, what was done and whether it cleared. Ready to be stored.</summary>
/// <param name="On">Day of the visit.</param>
/// <param name="Ranked">What the clinic gave: causes with probabilities, likeliest first (all, or those above a percent).</param>
/// <param name="Done">Keys of remedies taken, or the grower's own words.</param>
/// <param name="Cleared">Whether new growth came clean.</param>
/// <param name="SettledOn">Day it was judged; null while it is open.</param>
/// <param name="ConfirmedCauseId">What it turned out to be; null when it was never known.</param>
/// <param name="Notes">The grower's words.</param>
public sealed record ClinicOutcome(
    DateOnly On,
    IReadOnlyList<RankedCause> Ranked,
    IReadOnlyList<string> Done,
    Cleared Cleared = Cleared.NotYet,
    DateOnly? SettledOn = null,
    string? ConfirmedCauseId = null,
    string? Notes = null)
{
    /// <summary>A new outcome from what the clinic just said; causes below a percent are left out, "something else" is kept.</summary>
    public static ClinicOutcome Of(DateOnly on, ClinicReport report, IReadOnlyList<string> done) =>
        new(on, [.. report.Causes.Where(static c => c.Probability >= 0.01).Select(static c => new RankedCause(c.Id, c.Probability))], done);
}

/// <summary>A cause and its probability at the visit.</summary>
public sealed record RankedCause(string CauseId, double Probability);

/// <summary>How it went.</summary>
public enum Cleared
{
    NotYet,
    Yes,
    Partly,
    No,
}
