namespace Ashery.Compatibility;

/// <summary>May two materials be together? Dry today, dry and stored, and in concentrated solution are three questions.</summary>
public sealed record PairVerdict(string A, string B, Judgement DryToday, Judgement DryStored, Judgement InSolution);

/// <summary>A verdict with its chemistry.</summary>
/// <param name="Verdict">Fine, limited, stop, or not known.</param>
/// <param name="Reason">The chemistry, in a sentence.</param>
/// <param name="Source">Citation, or that it is reasoning, or that nothing published says so.</param>
/// <param name="Limit">How strong or how long, when limited.</param>
/// <param name="IsHardStop">True for the few that no setting may override.</param>
public sealed record Judgement(Verdict Verdict, string Reason, string Source, string? Limit = null, bool IsHardStop = false);

public enum Verdict
{
    Fine,
    Limited,
    Stop,
    Unknown,
}
