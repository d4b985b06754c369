using System.Text.Json;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Mix;

/// <summary>
/// Writes the answer of <c>mix</c> field by field. The generated serialiser writes the same text (a test compares the two), but
/// compiles about a thousand methods at its first use, which is most of the time a command may take.
/// </summary>
internal static class MixJsonText
{
    public static void Write(Utf8JsonWriter json, MixJson answer)
    {
        json.WriteStartObject();
        Wish(json, answer.Wish);
        Asked(json, answer.Asked);
        json.WriteString("errorMeasure", answer.ErrorMeasure);
        json.WriteString("secondMeasure", answer.SecondMeasure);
        Blends(json, "blends", answer.Blends);
        json.WriteBoolean("proved", answer.Proved);
        json.WriteNumber("wholeStepGap", answer.WholeStepGap);
        json.Number("freeError", answer.FreeError);
        Certificate(json, answer.Certificate);
        Blend(json, "atExactRatio", answer.AtExactRatio);
        Reach(json, "outOfReach", answer.OutOfReach);
        Reach(json, "nearMiss", answer.NearMiss);
        Blends(json, "trade", answer.Trade);
        json.WriteBoolean("tradeExact", answer.TradeExact);
        json.WriteNumber("tradeLeft", answer.TradeLeft);
        json.WriteStartObject("instead");
        foreach (var (field, blend) in answer.Instead)
        {
            Blend(json, field, blend);
        }

        json.WriteEndObject();
        json.WriteStartArray("leftOut");
        foreach (var left in answer.LeftOut)
        {
            json.WriteStartObject();
            json.WriteString("material", left.Material);
            json.WriteString("reason", left.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Problems("problems", answer.Problems);
        json.WriteEndObject();
    }

    private static void Wish(Utf8JsonWriter json, WishJson wish)
    {
        json.WriteStartObject("wish");
        json.WriteString("name", wish.Name);
        json.WriteString("kind", wish.Kind);
        json.Numbers("nutrients", wish.Nutrients);
        json.WriteEndObject();
    }

    private static void Asked(Utf8JsonWriter json, AskedJson asked)
    {
        json.WriteStartObject("asked");
        json.Strings("materials", asked.Materials);
        json.Strings("limits", asked.Limits);
        json.WriteNumber("atMost", asked.AtMost);
        json.WriteNumber("best", asked.Best);
        json.WriteString("use", Words.Of(asked.Use));
        json.Number("batchFrom", asked.BatchFrom);
        json.Number("batchTo", asked.BatchTo);
        json.Number("stepGrams", asked.StepGrams);
        json.Number("scoopMillilitres", asked.ScoopMillilitres);
        json.WriteString("rankedBy", Words.Of(asked.RankedBy));
        json.WriteNumber("draws", asked.Draws);
        json.WriteNumber("seed", asked.Seed);
        json.WriteEndObject();
    }

    private static void Certificate(Utf8JsonWriter json, CertificateJson? certificate)
    {
        if (certificate is null)
        {
            json.WriteNull("certificate");
            return;
        }

        json.WriteStartObject("certificate");
        json.Numbers("nutrients", certificate.Nutrients);
        json.WriteNumber("share", certificate.Share);
        json.Numbers("rows", certificate.Rows);
        json.Number("bound", certificate.Bound);
        json.WriteEndObject();
    }

    private static void Reach(Utf8JsonWriter json, string name, OutOfReachJson? reach)
    {
        if (reach is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("why", reach.Why);
        Blend(json, "nearest", reach.Nearest);
        json.WriteString("fallsShort", reach.FallsShort);
        if (reach.ToBuy is { } buy)
        {
            json.WriteStartObject("toBuy");
            json.WriteString("material", buy.Material);
            json.WriteString("name", buy.Name);
            json.WriteNumber("remainingError", buy.RemainingError);
            json.Number("strength", buy.Strength);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("toBuy");
        }

        json.WriteEndObject();
    }

    private static void Blends(Utf8JsonWriter json, string name, IReadOnlyList<BlendJson> blends)
    {
        json.WriteStartArray(name);
        foreach (var blend in blends)
        {
            BlendJsonText.Write(json, blend);
        }

        json.WriteEndArray();
    }

    private static void Blend(Utf8JsonWriter json, string name, BlendJson? blend)
    {
        if (blend is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WritePropertyName(name);
        BlendJsonText.Write(json, blend);
    }
}
