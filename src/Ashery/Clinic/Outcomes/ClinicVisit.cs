namespace Ashery.Clinic.Outcomes;

/// <summary>A visit as it is kept: what was seen, what the clinic said to it, what was done and how it went.</summary>
/// <param name="PotId">Which pot; null when it was none of the garden's.</param>
/// <param name="Case">What was seen and measured.</param>
/// <param name="Outcome">What the clinic said and what came of it.</param>
public sealed record ClinicVisit(string? PotId, ClinicCase Case, ClinicOutcome Outcome);
