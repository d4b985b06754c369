namespace Ashery.Compatibility;

/// <summary>May two materials be together? Dry today, dry and stored, and in concentrated solution are three questions.</summary>
public sealed record PairVerdict(string A, string B, Judgement DryToday, Judgement DryStored, Judgement InSolution)
{
    /// <summary>The reasons of the three answers as one text: dry first, then in solution.</summary>
    public string Reason => DryToday.Reason == DryStored.Reason
        ? $"Dry: {DryStored.Reason} In solution: {InSolution.Reason}"
        : $"Dry today: {DryToday.Reason} Stored: {DryStored.Reason} In solution: {InSolution.Reason}";

    /// <summary>The sources of the three answers as one text.</summary>
    public string Source => DryStored.Source == InSolution.Source
        ? DryStored.Source
        : $"Dry: {DryStored.Source} In solution: {InSolution.Source}";

    /// <summary>True when one of the three answers is a stop that no setting may override.</summary>
    public bool HasHardStop => DryToday.IsHardStop || DryStored.IsHardStop || InSolution.IsHardStop;
}

/// <summary>A verdict with its chemistry.</summary>
/// <param name="Verdict">Fine, limited, stop, or not known.</param>
/// <param name="Reason">The chemistry, in a sentence.</param>
/// <param name="Source">Citation, or that it is reasoning, or that nothing published says so.</param>
/// <param name="Limit">How strong or how long, when limited.</param>
/// <param name="IsHardStop">True for the few that no setting may override.</param>
/// <param name="Basis">What the verdict stands on.</param>
/// <param name="OnlyInStock">True for a stop of concentrates that a feed of usual strength may pass, as its reason says.</param>
public sealed record Judgement(
    Verdict Verdict, string Reason, string Source, string? Limit = null, bool IsHardStop = false, VerdictBasis Basis = VerdictBasis.None, bool OnlyInStock = false);

public enum Verdict
{
    Fine,
    Limited,
    Stop,
    Unknown,
}

/// <summary>What a verdict stands on, from nothing to a text that was read.</summary>
public enum VerdictBasis
{
    /// <summary>Nothing published was found and the chemistry is not clear.</summary>
    None,

    /// <summary>Custom of growers.</summary>
    Practice,

    /// <summary>Our own chemical reasoning; no publication says it of this pair.</summary>
    Chemistry,

    /// <summary>In the source named, but recalled and not looked up.</summary>
    Recalled,

    /// <summary>Worked out from published figures.</summary>
    Computed,

    /// <summary>The statement was read in the source named.</summary>
    Published,
}
