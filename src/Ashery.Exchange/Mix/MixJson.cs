using System.Text.Json.Serialization;
using Ashery.Exchange.Json;
using Ashery.Recipes;

namespace Ashery.Exchange.Mix;

/// <summary>The answer of <c>ashery mix --json</c>.</summary>
/// <remarks>
/// Units: <c>share</c> and every error are fractions; grades and contents percent by weight; <c>strength</c> the sum of N, P2O5 and K2O in
/// percent; <c>limeEquivalent</c> kg CaCO3 a kg of blend, positive acidifies; <c>cost</c> a kg of blend; <c>saltIndex</c> by weight with sodium
/// nitrate = 100; masses in g.
/// </remarks>
public sealed record MixJson
{
    /// <summary>The wish as understood.</summary>
    public required WishJson Wish { get; init; }

    /// <summary>What was asked besides the wish, with what was filled in.</summary>
    public required AskedJson Asked { get; init; }

    /// <summary>What <c>ratioError</c> measures.</summary>
    public required string ErrorMeasure { get; init; }

    /// <summary>What <c>largestDeviation</c> measures.</summary>
    public required string SecondMeasure { get; init; }

    /// <summary>Best first: by error, cost a kg of nutrient, number of materials, names; or by the 95th percentile where asked.</summary>
    public required IReadOnlyList<BlendJson> Blends { get; init; }

    /// <summary>True when no other blend within the limits comes before those listed.</summary>
    public required bool Proved { get; init; }

    /// <summary>In whole steps and not proved: how much lower the error of the best could still be; else 0.</summary>
    public required double WholeStepGap { get; init; }

    /// <summary>In whole steps: the ratio error of the best blend in free amounts, which no steps can better; else null.</summary>
    public required double? FreeError { get; init; }

    /// <summary>Multipliers that prove the bound on the best error, checkable by hand; null in whole steps.</summary>
    public required CertificateJson? Certificate { get; init; }

    /// <summary>The strongest blend at exactly the ratio; null when none has it.</summary>
    public required BlendJson? AtExactRatio { get; init; }

    /// <summary>Set when the wish cannot be met (exit code 1); else null.</summary>
    public required OutOfReachJson? OutOfReach { get; init; }

    /// <summary>Set when there are blends and none has quite the wanted ratio; else null.</summary>
    public required OutOfReachJson? NearMiss { get; init; }

    /// <summary>
    /// Blends none of which is worse than another in error, cost, number of materials and strength all at once: those up to an error of
    /// 0.25, and the best of each number of materials whatever its error.
    /// </summary>
    public required IReadOnlyList<BlendJson> Trade { get; init; }

    /// <summary>True when every set of materials within the limits was looked at or ruled out for <c>trade</c>.</summary>
    public required bool TradeExact { get; init; }

    /// <summary>How many more blends would trade, beyond those listed.</summary>
    public required int TradeLeft { get; init; }

    /// <summary>For a warning of the first blend, by its field: the best blend that avoids it.</summary>
    public required IReadOnlyDictionary<string, BlendJson> Instead { get; init; }

    /// <summary>Materials that no blend within the limits can use.</summary>
    public required IReadOnlyList<LeftOutJson> LeftOut { get; init; }

    /// <summary>Notes and warnings on the answer as a whole.</summary>
    public required IReadOnlyList<ProblemJson> Problems { get; init; }

    /// <summary>The JSON text of an answer.</summary>
    public static string Write(MixAnswer answer)
    {
        var record = From(answer);
        return JsonFields.Text(json => MixJsonText.Write(json, record));
    }

    public static MixJson From(MixAnswer answer) => new()
    {
        Wish = WishJson.From(answer.Wish),
        Asked = AskedJson.From(answer.Request),
        ErrorMeasure = RatioMeasure.Name,
        SecondMeasure = RatioMeasure.LargestName,
        Blends = [.. answer.Blends.Select(BlendJson.From)],
        Proved = answer.Proved,
        WholeStepGap = answer.WholeStepGap,
        FreeError = answer.FreeError,
        Certificate = CertificateJson.From(answer),
        AtExactRatio = answer.AtExactRatio is { } exact ? BlendJson.From(exact) : null,
        OutOfReach = OutOfReachJson.From(answer.OutOfReach),
        NearMiss = OutOfReachJson.From(answer.NearMiss),
        Trade = [.. answer.Trade.Select(BlendJson.From)],
        TradeExact = answer.TradeExact,
        TradeLeft = answer.TradeLeft,
        Instead = answer.Instead.ToDictionary(static i => i.Key, static i => BlendJson.From(i.Value), StringComparer.Ordinal),
        LeftOut = [.. answer.LeftOut.Select(static l => new LeftOutJson(l.MaterialId, l.Reason))],
        Problems = ProblemJson.From(answer.Problems),
    };
}

/// <summary>A material that was offered and cannot be used.</summary>
/// <param name="Material">Its key.</param>
/// <param name="Reason">The limit that rules it out.</param>
public sealed record LeftOutJson(string Material, string Reason);
