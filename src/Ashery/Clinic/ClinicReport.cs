using Ashery.Problems;
using Ashery.Sources;

namespace Ashery.Clinic;

/// <summary>What may be wrong, how sure that is, what would settle it, what to do.</summary>
public sealed record ClinicReport
{
    public required ClinicCase Case { get; init; }

    /// <summary>All causes, likeliest first. The probabilities add up to 1 with <see cref="SomethingElse"/> among them.</summary>
    public required IReadOnlyList<ClinicCause> Causes { get; init; }

    /// <summary>Probability that it is none of the causes known here.</summary>
    public required double SomethingElse { get; init; }

    /// <summary>What to look at or test next, most worth its trouble first.</summary>
    public required IReadOnlyList<ClinicLook> NextLooks { get; init; }

    /// <summary>The first of <see cref="NextLooks"/>; null when nothing is worth its trouble.</summary>
    public ClinicLook? NextLook => NextLooks.Count > 0 ? NextLooks[0] : null;

    /// <summary>How each answer was understood, in the order of the questions.</summary>
    public required IReadOnlyList<ClinicReading> Read { get; init; }

    /// <summary>Measured figures against their ranges.</summary>
    public required IReadOnlyList<Tests.TestFinding> Tests { get; init; }

    /// <summary>Leaf analysis as ratios to nitrogen, for woody plants; empty for others.</summary>
    public required IReadOnlyList<Tests.LeafBalance> Balance { get; init; }

    /// <summary>Doubt left, in bits: 0 is sure, each bit a halving.</summary>
    public required double Doubt { get; init; }

    /// <summary>True when the first cause is likely enough to act on by itself (above <see cref="PlantClinic.Settled"/>).</summary>
    public required bool Settled { get; init; }

    /// <summary>Words that were not understood, contradictions, what was assumed.</summary>
    public required IReadOnlyList<Problem> Notes { get; init; }

    /// <summary>Said before any remedy: check pH and EC first, one change at a time, label first.</summary>
    public required IReadOnlyList<string> First { get; init; }
}

/// <summary>One cause.</summary>
public sealed record ClinicCause
{
    /// <summary>Key: <c>iron-deficiency</c>; two at once are joined by <c>+</c>.</summary>
    public required string Id { get; init; }

    /// <summary>As a grower says it: "iron deficiency".</summary>
    public required string Name { get; init; }

    public required CauseKind Kind { get; init; }

    /// <summary>0 to 1.</summary>
    public required double Probability { get; init; }

    /// <summary>Before anything was answered, for this crop.</summary>
    public required double Before { get; init; }

    /// <summary>What spoke for it, strongest first.</summary>
    public required IReadOnlyList<ClinicReason> Because { get; init; }

    /// <summary>What spoke against it, strongest first.</summary>
    public required IReadOnlyList<ClinicReason> Against { get; init; }

    /// <summary>What tells it from its look-alikes.</summary>
    public required IReadOnlyList<string> Separates { get; init; }

    /// <summary>What usually brings it about.</summary>
    public required IReadOnlyList<string> Brings { get; init; }

    /// <summary>What to do, in order.</summary>
    public required IReadOnlyList<ClinicRemedy> Remedies { get; init; }

    /// <summary>A drawing of its typical leaf; null for none.</summary>
    public string? PictureId { get; init; }
}

/// <summary>Kinds of causes.</summary>
public enum CauseKind
{
    Shortage,
    Excess,

    /// <summary>Water, air, warmth, light.</summary>
    Culture,

    /// <summary>Animals.</summary>
    Pest,

    /// <summary>Fungi, bacteria, viruses.</summary>
    Disease,

    /// <summary>Sprays and weedkillers.</summary>
    Injury,

    /// <summary>Two shortages at once.</summary>
    Pair,

    /// <summary>None of those known here.</summary>
    Unknown,
}

/// <summary>One answer and how far it moved a cause.</summary>
/// <param name="QuestionId">Which answer; <c>crop</c> for the crop itself.</param>
/// <param name="Words">In words: "the youngest leaves are yellow between green veins".</param>
/// <param name="Times">How many times likelier it makes the cause, against all others together; below 1 speaks against.</param>
/// <param name="SourceIds">Whose knowledge this is.</param>
/// <param name="Provenance">How it came into the data: the best of its rows.</param>
public sealed record ClinicReason(string QuestionId, string Words, double Times, IReadOnlyList<string> SourceIds, Provenance Provenance)
{
    /// <summary>log2 of <see cref="Times"/>.</summary>
    public double Bits => Math.Log2(Times);
}

/// <summary>Something worth finding out.</summary>
/// <param name="Question">What to ask or test.</param>
/// <param name="Gain">Doubt it is expected to take away, bits.</param>
/// <param name="PerEffort">Gain a unit of effort, by which looks are ranked.</param>
/// <param name="Words">What it would tell apart.</param>
/// <param name="Answers">For each answer: how likely it is, and which cause would lead then.</param>
public sealed record ClinicLook(ClinicQuestion Question, double Gain, double PerEffort, string Words, IReadOnlyList<ClinicOutlook> Answers);

/// <summary>What an answer would do.</summary>
public sealed record ClinicOutlook(string ChoiceId, double Probability, string LeadingCauseId, double LeadingProbability);

/// <summary>How an answer was understood.</summary>
/// <param name="QuestionId">Which question.</param>
/// <param name="Given">What was given, as said.</param>
/// <param name="Choices">The answers it may be, with weights up to 1.</param>
/// <param name="Words">In plain words.</param>
public sealed record ClinicReading(string QuestionId, string Given, IReadOnlyList<(string ChoiceId, double Weight)> Choices, string Words);

/// <summary>One thing to do about a cause.</summary>
/// <param name="Id">Key, for the record of what was done.</param>
/// <param name="Words">What to do.</param>
/// <param name="Rate">How much; empty where that is no question of amount.</param>
/// <param name="Route">Drench, spray, feed, culture.</param>
/// <param name="Mind">What to mind; null for nothing beyond the cautions.</param>
/// <param name="CautionIds">Keys of the room of cautions.</param>
/// <param name="SourceId">Whose advice it is.</param>
/// <param name="Provenance">How it came into the data.</param>
public sealed record ClinicRemedy(
    string Id, string Words, string Rate, string Route, string? Mind, IReadOnlyList<string> CautionIds, string SourceId, Provenance Provenance);
