using System.Text.Json;
using Ashery.Exchange.Mix;
using Ashery.Solutions.Can;

namespace Ashery.Exchange.Solutions;

/// <summary>Writes a can field by field, as <see cref="MixJsonText"/> explains; a test compares it with the generated serialiser.</summary>
public static class CanJsonText
{
    public static string Write(CanReport report) => JsonFields.Text(json => Write(json, CanJsonFrom.Report(report)));

    internal static void Write(Utf8JsonWriter json, CanJson can)
    {
        json.WriteStartObject();
        json.WriteString("water", can.Water);
        json.WriteNumber("celsius", can.Celsius);
        json.WriteString("air", can.Air);
        json.WriteStartArray("added");
        foreach (var added in can.Added)
        {
            json.WriteStartObject();
            json.WriteString("id", added.Id);
            json.WriteString("name", added.Name);
            json.WriteNumber("grams", added.Grams);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("pH", can.PH);
        json.WriteNumber("ecAt25C", can.EcAt25C);
        json.WriteNumber("ec", can.Ec);
        json.WriteNumber("ionicStrength", can.IonicStrength);
        json.WriteNumber("osmoticPotential", can.OsmoticPotential);
        json.WriteNumber("alkalinity", can.Alkalinity);
        json.WriteNumber("freeAmmonia", can.FreeAmmonia);
        json.WriteNumber("freeAmmoniaFraction", can.FreeAmmoniaFraction);
        json.WriteBoolean("beyondGoodRange", can.BeyondGoodRange);
        State(json, "closed", can.Closed);
        State(json, "open", can.Open);
        State(json, "settled", can.Settled);
        json.WriteStartObject("nitrogen");
        json.WriteNumber("nitrate", can.Nitrogen.Nitrate);
        json.WriteNumber("ammonium", can.Nitrogen.Ammonium);
        json.WriteNumber("urea", can.Nitrogen.Urea);
        json.WriteEndObject();
        Nutrients(json, can);
        json.Numbers("saturation", can.Saturation);
        json.Numbers("precipitates", can.Precipitates);
        json.Numbers("precipitateGrams", can.PrecipitateGrams);
        json.Numbers("mayComeOut", can.MayComeOut);
        Salts(json, can);
        Order(json, can);
        json.WriteStartObject("cold");
        json.Number("downTo", can.Cold.DownTo);
        json.WriteString("first", can.Cold.First);
        json.WriteEndObject();
        json.Number("warming", can.Warming);
        json.WriteNumber("waterMass", can.WaterMass);
        Species(json, can);
        json.Strings("cautions", can.Cautions);
        json.Strings("assumed", can.Assumed);
        json.Problems("problems", can.Problems);
        json.WriteEndObject();
    }

    internal static void State(Utf8JsonWriter json, string name, CanStateJson state)
    {
        json.WriteStartObject(name);
        json.WriteNumber("pH", state.PH);
        json.WriteNumber("ecAt25C", state.EcAt25C);
        json.WriteNumber("ec", state.Ec);
        json.WriteNumber("alkalinity", state.Alkalinity);
        json.WriteNumber("freeAmmonia", state.FreeAmmonia);
        json.WriteEndObject();
    }

    private static void Nutrients(Utf8JsonWriter json, CanJson can)
    {
        json.WriteStartArray("nutrients");
        foreach (var nutrient in can.Nutrients)
        {
            json.WriteStartObject();
            json.WriteString("nutrient", nutrient.Nutrient);
            json.WriteNumber("mgPerLitre", nutrient.MgPerLitre);
            json.WriteNumber("fromWater", nutrient.FromWater);
            json.WriteNumber("onLabelBasis", nutrient.OnLabelBasis);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Salts(Utf8JsonWriter json, CanJson can)
    {
        json.WriteStartArray("salts");
        foreach (var salt in can.Salts)
        {
            json.WriteStartObject();
            json.WriteString("formula", salt.Formula);
            json.WriteString("name", salt.Name);
            json.WriteNumber("index", salt.Index);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("limits");
        foreach (var limit in can.Limits)
        {
            json.WriteStartObject();
            json.WriteString("id", limit.Id);
            json.Number("limit", limit.Limit);
            json.WriteNumber("undissolved", limit.Undissolved);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Order(Utf8JsonWriter json, CanJson can)
    {
        json.WriteStartArray("order");
        foreach (var step in can.Order)
        {
            json.WriteStartObject();
            json.WriteString("id", step.Id);
            json.WriteString("reason", step.Reason);
            json.WriteString("nearest", step.Nearest);
            json.Number("index", step.Index);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("orderBasis", can.OrderBasis);
    }

    private static void Species(Utf8JsonWriter json, CanJson can)
    {
        json.WriteStartArray("species");
        foreach (var species in can.Species)
        {
            json.WriteStartObject();
            json.WriteString("id", species.Id);
            json.WriteNumber("molality", species.Molality);
            json.WriteNumber("log10Activity", species.Log10Activity);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("certificate");
        json.WriteNumber("mass", can.Certificate.Mass);
        json.WriteNumber("charge", can.Certificate.Charge);
        json.WriteEndObject();
    }
}
