using System.Text.Json.Serialization;
using Ashery.Compatibility;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Mix;

/// <summary>The answer of <c>ashery compatible --json</c>.</summary>
/// <param name="Pairs">Every pair of the materials named.</param>
public sealed record CompatibleJson(IReadOnlyList<PairJson> Pairs)
{
    /// <summary>The JSON text of judged pairs, written field by field as <see cref="MixJsonText"/> explains.</summary>
    public static string Write(IReadOnlyList<PairVerdict> pairs) => JsonFields.Text(json =>
    {
        json.WriteStartObject();
        json.WriteStartArray("pairs");
        foreach (var pair in pairs)
        {
            BlendJsonText.Pair(json, PairJson.From(pair));
        }

        json.WriteEndArray();
        json.WriteEndObject();
    });
}

/// <summary>May two materials be together?</summary>
/// <param name="A">Key of the one.</param>
/// <param name="B">Key of the other.</param>
/// <param name="DryToday">Mixed dry and used the same day.</param>
/// <param name="DryStored">Mixed dry and kept.</param>
/// <param name="InSolution">In one concentrated solution.</param>
/// <param name="Reason">The chemistry of the strictest of the three verdicts.</param>
/// <param name="Source">Where that verdict is from.</param>
/// <param name="Details">Reason, source and limit of each of the three.</param>
public sealed record PairJson(
    string A,
    string B,
    [property: JsonConverter(typeof(WordConverter<Verdict>))] Verdict DryToday,
    [property: JsonConverter(typeof(WordConverter<Verdict>))] Verdict DryStored,
    [property: JsonConverter(typeof(WordConverter<Verdict>))] Verdict InSolution,
    string Reason,
    string Source,
    PairDetailsJson Details)
{
    public static PairJson From(PairVerdict pair)
    {
        var strictest = Strictest(pair);
        return new(
            pair.A,
            pair.B,
            pair.DryToday.Verdict,
            pair.DryStored.Verdict,
            pair.InSolution.Verdict,
            strictest.Reason,
            strictest.Source,
            new(JudgementJson.From(pair.DryToday), JudgementJson.From(pair.DryStored), JudgementJson.From(pair.InSolution)));
    }

    // Stop before limited before not known before fine; of equals the one that lasts longer says more.
    private static Judgement Strictest(PairVerdict pair)
    {
        var strictest = pair.DryStored;
        foreach (var other in (ReadOnlySpan<Judgement>)[pair.InSolution, pair.DryToday])
        {
            if (Rank(other.Verdict) > Rank(strictest.Verdict))
            {
                strictest = other;
            }
        }

        return strictest;
    }

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Stop => 3,
        Verdict.Limited => 2,
        Verdict.Unknown => 1,
        _ => 0,
    };
}

/// <summary>The three judgements of a pair in full.</summary>
/// <param name="DryToday">Mixed dry and used the same day.</param>
/// <param name="DryStored">Mixed dry and kept.</param>
/// <param name="InSolution">In one concentrated solution.</param>
public sealed record PairDetailsJson(JudgementJson DryToday, JudgementJson DryStored, JudgementJson InSolution);

/// <summary>A verdict with its chemistry.</summary>
/// <param name="Verdict">Fine, limited, stop, or not known.</param>
/// <param name="Reason">The chemistry, in a sentence.</param>
/// <param name="Source">Citation, or that it is reasoning, or that nothing published says so.</param>
/// <param name="Limit">How strong or how long, when limited; else null.</param>
/// <param name="HardStop">True for the few that no setting may override.</param>
public sealed record JudgementJson(
    [property: JsonConverter(typeof(WordConverter<Verdict>))] Verdict Verdict, string Reason, string Source, string? Limit, bool HardStop)
{
    public static JudgementJson From(Judgement judgement) =>
        new(judgement.Verdict, judgement.Reason, judgement.Source, judgement.Limit, judgement.IsHardStop);
}
