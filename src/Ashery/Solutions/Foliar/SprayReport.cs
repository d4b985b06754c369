using Ashery.Solutions.Can;
using Ashery.Sources;

namespace Ashery.Solutions.Foliar;

/// <summary>How a figure stands against its limit.</summary>
public enum SprayLevel
{
    /// <summary>Within the limit.</summary>
    Fine,

    /// <summary>Within it, but above four fifths of it; or nothing published to judge by.</summary>
    Mind,

    /// <summary>Past the limit.</summary>
    Over,
}

/// <summary>One figure of a spray against a published one.</summary>
/// <param name="What">Salt or property.</param>
/// <param name="Level">How it stands.</param>
/// <param name="Value">The figure of this spray.</param>
/// <param name="Limit">The published one; null where there is none.</param>
/// <param name="Unit">Of both.</param>
/// <param name="Words">What it means and what to do.</param>
/// <param name="SourceId">Who says so; null where nobody does.</param>
/// <param name="Provenance">How the limit came into the data.</param>
public sealed record SprayFinding(string What, SprayLevel Level, double Value, double? Limit, string Unit, string Words, string? SourceId, Provenance Provenance)
{
    /// <summary>Other published figures for the same salt.</summary>
    public IReadOnlyList<SprayLimit> Beside { get; init; } = [];
}

/// <summary>How much to spray.</summary>
/// <param name="MillilitresPerPot">To just before it runs off.</param>
/// <param name="Litres">For all pots.</param>
/// <param name="Basis">What it was reckoned from.</param>
public sealed record SprayVolume(double MillilitresPerPot, double Litres, string Basis);

/// <summary>A rule of when to spray.</summary>
/// <param name="RuleId">Which.</param>
/// <param name="Words">What it says.</param>
/// <param name="Holds">True when it says not now; null when it depends on what was not said.</param>
public sealed record SprayGate(string RuleId, string Words, bool? Holds);

/// <summary>A spray, judged.</summary>
public sealed record SprayReport
{
    public required SprayRequest Request { get; init; }

    /// <summary>What it becomes in the water.</summary>
    public required CanReport Can { get; init; }

    /// <summary>Salts first, then the spray as a whole.</summary>
    public required IReadOnlyList<SprayFinding> Findings { get; init; }

    /// <summary>Null when neither pot nor plant was measured.</summary>
    public SprayVolume? Volume { get; init; }

    public required IReadOnlyList<SprayGate> Gates { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>The worst of all findings.</summary>
    public SprayLevel Worst => Findings.Max(static f => f.Level);

    /// <summary>By how much all strengths would have to be multiplied to come within the limits of the salts and the conductivity; 1 when they are.</summary>
    public required double Weaken { get; init; }
}
