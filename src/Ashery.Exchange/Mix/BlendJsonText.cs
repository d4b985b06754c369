using System.Text.Json;

namespace Ashery.Exchange.Mix;

/// <summary>Writes one blend field by field; see <see cref="MixJsonText"/> for why.</summary>
internal static class BlendJsonText
{
    public static void Write(Utf8JsonWriter json, BlendJson blend)
    {
        json.WriteStartObject();
        json.WriteStartArray("parts");
        foreach (var part in blend.Parts)
        {
            Part(json, part);
        }

        json.WriteEndArray();
        json.WriteNumber("batchGrams", blend.BatchGrams);
        json.Numbers("grade", blend.Grade);
        json.Numbers("elements", blend.Elements);
        json.WriteStartObject("nitrogen");
        json.WriteNumber("ammonium", blend.Nitrogen.Ammonium);
        json.WriteNumber("nitrate", blend.Nitrogen.Nitrate);
        json.WriteNumber("urea", blend.Nitrogen.Urea);
        json.WriteNumber("organic", blend.Nitrogen.Organic);
        json.WriteNumber("slowSynthetic", blend.Nitrogen.SlowSynthetic);
        json.WriteEndObject();
        json.WriteNumber("ratioError", blend.RatioError);
        json.WriteNumber("largestDeviation", blend.LargestDeviation);
        json.WriteNumber("strength", blend.Strength);
        json.Number("cost", blend.Cost);
        json.Number("costPerKgNutrient", blend.CostPerKgNutrient);
        json.Number("saltIndex", blend.SaltIndex);
        json.Number("osmolalityPerGram", blend.OsmolalityPerGram);
        json.Number("limeEquivalent", blend.LimeEquivalent);
        Storage(json, blend.Storage);
        json.WriteStartArray("pairs");
        foreach (var pair in blend.Pairs)
        {
            Pair(json, pair);
        }

        json.WriteEndArray();
        json.WriteStartArray("cautions");
        foreach (var caution in blend.Cautions)
        {
            json.WriteStartObject();
            json.WriteString("id", caution.Id);
            json.WriteString("words", caution.Words);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Problems("notes", blend.Notes);
        Uncertainty(json, blend.Uncertainty);
        json.WriteEndObject();
    }

    public static void Pair(Utf8JsonWriter json, PairJson pair)
    {
        json.WriteStartObject();
        json.WriteString("a", pair.A);
        json.WriteString("b", pair.B);
        json.WriteString("dryToday", Words.Of(pair.DryToday));
        json.WriteString("dryStored", Words.Of(pair.DryStored));
        json.WriteString("inSolution", Words.Of(pair.InSolution));
        json.WriteString("reason", pair.Reason);
        json.WriteString("source", pair.Source);
        json.WriteStartObject("details");
        Judgement(json, "dryToday", pair.Details.DryToday);
        Judgement(json, "dryStored", pair.Details.DryStored);
        Judgement(json, "inSolution", pair.Details.InSolution);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Part(Utf8JsonWriter json, PartJson part)
    {
        json.WriteStartObject();
        json.WriteString("material", part.Material);
        json.WriteString("name", part.Name);
        json.WriteNumber("grams", part.Grams);
        json.WriteNumber("share", part.Share);
        if (part.Scoops is { } scoops)
        {
            json.WriteNumber("scoops", scoops);
        }
        else
        {
            json.WriteNull("scoops");
        }

        json.Number("millilitres", part.Millilitres);
        json.Number("cost", part.Cost);
        json.WriteEndObject();
    }

    private static void Storage(Utf8JsonWriter json, StorageJson storage)
    {
        json.WriteStartObject("storage");
        json.WriteString("class", Words.Of(storage.Class));
        json.WriteString("reason", storage.Reason);
        json.Number("criticalRelativeHumidity", storage.CriticalRelativeHumidity);
        json.WriteString("source", storage.Source);
        json.WriteEndObject();
    }

    private static void Judgement(Utf8JsonWriter json, string name, JudgementJson judgement)
    {
        json.WriteStartObject(name);
        json.WriteString("verdict", Words.Of(judgement.Verdict));
        json.WriteString("reason", judgement.Reason);
        json.WriteString("source", judgement.Source);
        json.WriteString("limit", judgement.Limit);
        json.WriteBoolean("hardStop", judgement.HardStop);
        json.WriteEndObject();
    }

    private static void Uncertainty(Utf8JsonWriter json, UncertaintyJson? spread)
    {
        if (spread is null)
        {
            json.WriteNull("uncertainty");
            return;
        }

        json.WriteStartObject("uncertainty");
        json.WriteNumber("median", spread.Median);
        json.WriteNumber("percentile95", spread.Percentile95);
        json.WriteNumber("worstCase", spread.WorstCase);
        json.WriteNumber("nitrogenLow", spread.NitrogenLow);
        json.WriteNumber("nitrogenHigh", spread.NitrogenHigh);
        json.WriteEndObject();
    }
}
