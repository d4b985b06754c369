using System.Globalization;
using System.Text.Json;
using Ashery.Climate;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Mix;
using Ashery.Exchange.Waters;
using Ashery.RootZone;
using Ashery.RootZone.Calibration;

namespace Ashery.Exchange.RootZone;

/// <summary>Writes a pot file; what is as usual is left out where leaving out means the same.</summary>
internal static class PotFileWriter
{
    public static string Write(PotDocument pot) => JsonFields.Text(json =>
    {
        json.WriteStartObject();
        json.WriteString("name", pot.Name);
        json.WriteString("from", Day(pot.From));
        Optional(json, "days", pot.Days);
        Optional(json, "stepsPerDay", pot.StepsPerDay);
        json.WriteStartObject("pot");
        json.WriteNumber("litres", pot.Litres);
        Optional(json, "heightCm", pot.HeightCm);
        Optional(json, "mouthCm", pot.MouthCm);
        json.WriteEndObject();
        json.WriteString("medium", pot.Medium);
        Plant(json, pot.Plant);
        Watering(json, pot.Watering);
        json.WriteStartObject("standing");
        json.WriteNumber("rainKeptOff", pot.Standing.RainKeptOff);
        json.WriteNumber("shade", pot.Standing.Shade);
        json.WriteNumber("warming", pot.Standing.Warming);
        json.WriteNumber("drying", pot.Standing.Drying);
        json.WriteEndObject();
        Water(json, pot);
        json.WriteStartObject("start");
        Optional(json, "pH", pot.Start.PH);
        json.WriteNumber("ec", pot.Start.SolutionStrength);
        json.WriteNumber("water", pot.Start.WaterShare);
        Optional(json, "lime", pot.Start.LimeGramsPerLitre);
        json.WriteEndObject();
        Place(json, pot.Place);
        Optional(json, "weatherFile", pot.WeatherFile);
        json.WriteStartArray("events");
        foreach (var e in pot.Events)
        {
            Event(json, e);
        }

        json.WriteEndArray();
        json.WriteStartArray("readings");
        foreach (var r in pot.Readings)
        {
            json.WriteStartObject();
            json.WriteString("date", Day(r.Date));
            json.WriteNumber(r.Kind switch { ReadingKind.LeachateEc => "leachateEc", ReadingKind.LeachatePh => "leachatePh", _ => "kgBelowFull" }, r.Value);
            Optional(json, "error", r.Error);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    });

    private static void Plant(Utf8JsonWriter json, PotPlant plant)
    {
        json.WriteStartObject("plant");
        Optional(json, "crop", plant.Crop);
        Optional(json, "filled", plant.Filled);
        Optional(json, "canopy", plant.Canopy);
        Optional(json, "canopyMost", plant.CanopyMost);
        Optional(json, "flowerLoad", plant.FlowerLoad);
        Optional(json, "ecLimit", plant.EcLimit);
        Optional(json, "saltSlope", plant.SaltSlope);
        Optional(json, "vigour", plant.Vigour);
        json.WriteEndObject();
    }

    private static void Watering(Utf8JsonWriter json, IrrigationRule rule)
    {
        json.WriteStartObject("watering");
        json.WriteString("rule", GardenWriter.Word(rule.Kind));
        json.WriteNumber("trigger", rule.Trigger);
        json.WriteNumber("everyDays", rule.EveryDays);
        Optional(json, "litres", rule.Litres);
        json.WriteNumber("leachingFraction", rule.LeachingFraction);
        json.WriteEndObject();
    }

    private static void Water(Utf8JsonWriter json, PotDocument pot)
    {
        if (pot.OwnWater is { } own)
        {
            json.WritePropertyName("water");
            WaterFileWriter.Object(json, own);
        }
        else
        {
            json.WriteString("water", pot.Water ?? "pure");
        }
    }

    private static void Place(Utf8JsonWriter json, Place? place)
    {
        if (place is null)
        {
            return;
        }

        json.WriteStartObject("place");
        json.WriteString("name", place.Name);
        json.WriteNumber("latitude", place.Latitude);
        Optional(json, "elevation", place.ElevationMetres);
        json.WriteBoolean("nearCoast", place.NearCoast);
        if (place.Normals is { } normals)
        {
            json.WriteStartArray("normals");
            foreach (var m in normals)
            {
                json.WriteStartObject();
                json.WriteNumber("meanMax", m.MeanMax);
                json.WriteNumber("meanMin", m.MeanMin);
                json.WriteNumber("rain", m.RainMm);
                Optional(json, "wetDays", m.WetDays);
                Optional(json, "wind", m.WindMs);
                Optional(json, "humidity", m.Humidity);
                Optional(json, "radiation", m.RadiationMj);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void Event(Utf8JsonWriter json, PotDocumentEvent e)
    {
        json.WriteStartObject();
        json.WriteString("date", Day(e.Date));
        switch (e.Kind)
        {
            case PotEventKind.Feed:
                Parts(json, "feed", e);
                break;
            case PotEventKind.Can:
                Parts(json, "can", e);
                Optional(json, "mgNPerLitre", e.NitrogenMg);
                json.WriteNumber("litres", e.Litres);
                break;
            case PotEventKind.Coated:
                json.WriteStartObject("coated");
                foreach (var (nutrient, percent) in e.Parts)
                {
                    json.WriteNumber(nutrient, percent);
                }

                json.WriteNumber("days", e.CoatDays);
                json.WriteEndObject();
                json.WriteNumber("grams", e.Grams);
                break;
            case PotEventKind.Flush:
                json.WriteNumber("flush", e.Litres);
                break;
            case PotEventKind.Prune:
                json.WriteNumber("prune", e.Share);
                break;
            default:
                json.WriteStartObject("repot");
                json.WriteNumber("litres", e.Litres);
                Optional(json, "medium", e.Medium);
                json.WriteNumber("oldKept", e.Share);
                json.WriteEndObject();
                break;
        }

        json.WriteEndObject();
    }

    private static void Parts(Utf8JsonWriter json, string name, PotDocumentEvent e)
    {
        json.WriteStartObject(name);
        foreach (var (id, amount) in e.Parts)
        {
            json.WriteNumber(id, amount);
        }

        json.WriteEndObject();
    }

    private static void Optional(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } v)
        {
            json.WriteNumber(name, v);
        }
    }

    private static void Optional(Utf8JsonWriter json, string name, string? value)
    {
        if (value is not null)
        {
            json.WriteString(name, value);
        }
    }

    private static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
