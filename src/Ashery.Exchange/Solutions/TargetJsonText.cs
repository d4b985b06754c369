using System.Text.Json;
using Ashery.Exchange.Mix;
using Ashery.Solutions.Targets;

namespace Ashery.Exchange.Solutions;

/// <summary>Writes a target's answer field by field, as <see cref="MixJsonText"/> explains; a test compares it with the generated serialiser.</summary>
public static class TargetJsonText
{
    public static string Write(TargetAnswer answer) => JsonFields.Text(json => Write(json, TargetJsonFrom.Answer(answer)));

    private static void Write(Utf8JsonWriter json, TargetJson answer)
    {
        json.WriteStartObject();
        json.WriteString("water", answer.Water);
        json.WriteNumber("litres", answer.Litres);
        json.WriteNumber("celsius", answer.Celsius);
        json.WriteString("air", answer.Air);
        json.WriteStartObject("target");
        json.Strings("wishes", answer.Target.Wishes);
        json.Number("ec", answer.Target.Ec);
        json.Number("pH", answer.Target.PH);
        json.WriteEndObject();
        json.WriteBoolean("proved", answer.Proved);
        json.Number("bound", answer.Bound);
        json.Problem("outOfReach", answer.OutOfReach);
        json.WriteStartArray("waterExceeds");
        foreach (var excess in answer.WaterExceeds)
        {
            json.WriteStartObject();
            json.WriteString("item", excess.Item);
            json.WriteNumber("water", excess.Water);
            json.WriteNumber("most", excess.Most);
            json.WriteNumber("replace", excess.Replace);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("recipes");
        foreach (var recipe in answer.Recipes)
        {
            Recipe(json, recipe);
        }

        json.WriteEndArray();
        json.Strings("assumed", answer.Assumed);
        json.Problems("problems", answer.Problems);
        json.WriteEndObject();
    }

    private static void Recipe(Utf8JsonWriter json, TargetRecipeJson recipe)
    {
        json.WriteStartObject();
        json.WriteNumber("error", recipe.Error);
        json.WriteNumber("largestDeviation", recipe.LargestDeviation);
        json.WriteNumber("strength", recipe.Strength);
        json.WriteNumber("ecAt25C", recipe.EcAt25C);
        json.WriteNumber("pH", recipe.PH);
        json.WriteBoolean("tuned", recipe.Tuned);
        json.Number("costPerLitre", recipe.CostPerLitre);
        json.WriteStartArray("parts");
        foreach (var part in recipe.Parts)
        {
            json.WriteStartObject();
            json.WriteString("id", part.Id);
            json.WriteString("name", part.Name);
            json.WriteNumber("gramsPerLitre", part.GramsPerLitre);
            json.WriteNumber("grams", part.Grams);
            json.Number("millilitres", part.Millilitres);
            json.WriteBoolean("bringsPH", part.BringsPH);
            json.Number("steps", part.Steps);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("nutrients");
        foreach (var nutrient in recipe.Nutrients)
        {
            Nutrient(json, nutrient);
        }

        json.WriteEndArray();
        CanJsonText.State(json, "closed", recipe.Closed);
        CanJsonText.State(json, "open", recipe.Open);
        json.Numbers("precipitates", recipe.Precipitates);
        json.Strings("mayComeOut", recipe.MayComeOut);
        json.Strings("cautions", recipe.Cautions);
        json.WriteEndObject();
    }

    private static void Nutrient(Utf8JsonWriter json, TargetNutrientJson nutrient)
    {
        json.WriteStartObject();
        json.WriteString("item", nutrient.Item);
        json.Number("low", nutrient.Low);
        json.Number("high", nutrient.High);
        json.WriteNumber("water", nutrient.Water);
        json.WriteStartArray("byPart");
        foreach (var amount in nutrient.ByPart)
        {
            json.WriteNumberValue(amount);
        }

        json.WriteEndArray();
        json.WriteNumber("total", nutrient.Total);
        json.Number("deviation", nutrient.Deviation);
        json.WriteEndObject();
    }
}
