using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Clinic;

/// <summary>The answer of <c>ashery clinic --json</c>: ranked causes, what moved them, what to look at next, what to do.</summary>
/// <param name="Crop">The crop as given, or null.</param>
/// <param name="Causes">The likeliest, likeliest first.</param>
/// <param name="SomethingElse">Probability that it is none of the causes known.</param>
/// <param name="Rest">Probability of all causes not shown.</param>
/// <param name="Settled">Whether the first is likely enough to act on.</param>
/// <param name="Doubt">Doubt left, bits.</param>
/// <param name="NextLook">What to look at or test next; null when nothing is worth its trouble.</param>
/// <param name="Looks">The next looks, most worth their trouble first; the first of them is <paramref name="NextLook"/>.</param>
/// <param name="Read">How each answer was understood.</param>
/// <param name="Tests">Measured figures against their ranges.</param>
/// <param name="Balance">Leaf analysis as ratios to nitrogen, woody plants only.</param>
/// <param name="First">What to do before any remedy.</param>
/// <param name="Notes">What was not understood or assumed.</param>
public sealed record ClinicJson(
    string? Crop,
    IReadOnlyList<ClinicCauseJson> Causes,
    double SomethingElse,
    double Rest,
    bool Settled,
    double Doubt,
    ClinicLookJson? NextLook,
    IReadOnlyList<ClinicLookJson> Looks,
    IReadOnlyList<ClinicReadJson> Read,
    IReadOnlyList<ClinicTestJson> Tests,
    IReadOnlyList<ClinicBalanceJson> Balance,
    IReadOnlyList<string> First,
    IReadOnlyList<ProblemJson> Notes);

/// <summary>One cause.</summary>
/// <param name="Id">Key.</param>
/// <param name="Cause">In words.</param>
/// <param name="Kind">Shortage, excess, culture, pest, disease, injury, pair.</param>
/// <param name="Probability">0 to 1.</param>
/// <param name="Before">Before anything was answered.</param>
/// <param name="Because">What spoke for it, strongest first.</param>
/// <param name="Against">What spoke against it, strongest first.</param>
/// <param name="Separates">What tells it from its look-alikes.</param>
/// <param name="Brings">What usually brings it about.</param>
/// <param name="Do">What to do.</param>
public sealed record ClinicCauseJson(
    string Id,
    string Cause,
    string Kind,
    double Probability,
    double Before,
    IReadOnlyList<ClinicReasonJson> Because,
    IReadOnlyList<ClinicReasonJson> Against,
    IReadOnlyList<string> Separates,
    IReadOnlyList<string> Brings,
    IReadOnlyList<ClinicRemedyJson> Do);

/// <summary>One answer and how far it moved a cause.</summary>
/// <param name="Question">Which.</param>
/// <param name="Words">In words.</param>
/// <param name="Times">How many times likelier it makes the cause; below 1 less likely.</param>
/// <param name="Sources">Citations of who says so; empty where nobody does.</param>
/// <param name="How">Seen, from memory, or common practice.</param>
public sealed record ClinicReasonJson(string Question, string Words, double Times, IReadOnlyList<string> Sources, string How);

/// <summary>One thing to do.</summary>
/// <param name="Id">Key.</param>
/// <param name="Words">What.</param>
/// <param name="Rate">How much; empty where it is no question of amount.</param>
/// <param name="Route">Drench, foliar, feed, leach, culture.</param>
/// <param name="Mind">What to mind, or null.</param>
/// <param name="Cautions">What to mind, by the hazards.</param>
/// <param name="Source">Citation.</param>
/// <param name="How">How it came into the data.</param>
public sealed record ClinicRemedyJson(string Id, string Words, string Rate, string Route, string? Mind, IReadOnlyList<string> Cautions, string Source, string How);

/// <summary>Something worth finding out.</summary>
/// <param name="Question">Key of the question.</param>
/// <param name="Words">As asked.</param>
/// <param name="How">How to look; null when the question says it.</param>
/// <param name="Effort">Minutes, a laboratory's bill counted in.</param>
/// <param name="Gain">Doubt it takes away on average, bits.</param>
/// <param name="Tells">What it tells apart.</param>
/// <param name="Answers">What each answer would do.</param>
public sealed record ClinicLookJson(string Question, string Words, string? How, double Effort, double Gain, string Tells, IReadOnlyList<ClinicOutlookJson> Answers);

/// <summary>What an answer would do.</summary>
/// <param name="Answer">Key of the answer.</param>
/// <param name="Words">In words.</param>
/// <param name="Probability">How likely it is.</param>
/// <param name="Leads">The cause that would lead then.</param>
/// <param name="With">Its probability then.</param>
public sealed record ClinicOutlookJson(string Answer, string Words, double Probability, string Leads, double With);

/// <summary>How an answer was understood.</summary>
/// <param name="Question">Key of the question.</param>
/// <param name="Given">As said.</param>
/// <param name="Words">As understood.</param>
/// <param name="Choices">Keys of the answers it may be, best first.</param>
public sealed record ClinicReadJson(string Question, string Given, string Words, IReadOnlyList<string> Choices);

/// <summary>A measured figure against its range.</summary>
/// <param name="Question">Key.</param>
/// <param name="Value">As measured.</param>
/// <param name="AsExtract">As it would be in the saturated extract, where another method was used.</param>
/// <param name="Unit">Unit of the figures.</param>
/// <param name="Low">Low end of what is right, or null.</param>
/// <param name="High">High end of what is right, or null.</param>
/// <param name="Level">low, right or high.</param>
/// <param name="OfCrop">Whether the range is of this crop.</param>
/// <param name="Words">In a line.</param>
/// <param name="Source">Citation.</param>
/// <param name="How">How it came into the data.</param>
public sealed record ClinicTestJson(
    string Question, double Value, double? AsExtract, string Unit, double? Low, double? High, string Level, bool OfCrop, string Words, string Source, string How);

/// <summary>An element of the leaf against its nitrogen (N = 100).</summary>
public sealed record ClinicBalanceJson(string Element, double PerHundredN, double Low, double OptimumLow, double OptimumHigh, string Level, string Source, string How);

/// <summary>Generated descriptions of the clinic's answer.</summary>
[JsonSerializable(typeof(ClinicJson))]
public sealed partial class ClinicJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static ClinicJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
