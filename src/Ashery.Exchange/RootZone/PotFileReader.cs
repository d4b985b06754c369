using System.Text.Json;
using Ashery.Crops;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Waters;
using Ashery.RootZone;
using Ashery.RootZone.Calibration;
using Ashery.RootZone.Draws;
using Ashery.Solutions.Waters;

namespace Ashery.Exchange.RootZone;

/// <summary>Reads a pot file by hand, so that every wrong field is named and a verb starts quickly.</summary>
internal static class PotFileReader
{
    private const int MostReadings = 500;

    public static PotDocument Read(Node root, FieldReader fields)
    {
        var pot = root.Object("pot");
        if (pot is null && root.IsObject)
        {
            fields.Missing("pot", "Give its litres, as in { \"litres\": 12 }.");
        }

        double? mouth = pot?.Number("mouthCm", 1, 300, "cm"), height = pot?.Number("heightCm", 1, 200, "cm");
        var litres = pot?.Number("litres", 0.02, 2000, "L");
        if (litres is null && mouth is { } width)
        {
            var shape = PotShape.OfMouth(width, height);
            (litres, height) = (shape.Litres, shape.HeightCm);
        }
        else if (pot is { IsObject: true } && litres is null && !pot.Has("litres"))
        {
            fields.Missing("pot.litres", "Give its litres, or mouthCm, the inside width at the rim, and heightCm if it is not of the usual shape.");
        }

        var read = new PotDocument
        {
            Name = root.Text("name") ?? "pot",
            From = root.NeededDate("from"),
            Days = root.Whole("days", 1, PotForecastRequest.MostDays),
            Litres = litres ?? 1,
            HeightCm = height,
            MouthCm = mouth,
            StepsPerDay = root.Whole("stepsPerDay", 1, 24),
            Medium = MediumOf(root, "medium", fields) ?? "peat-mix",
            Plant = Plant(root.Object("plant"), fields),
            Watering = Watering(root.Object("watering"), fields),
            Standing = Standing(root.Object("standing")),
            Start = Start(root.Object("start")),
            Events = PotEventReader.All(root, fields),
            Readings = [.. root.List("readings", MostReadings).Select(r => Reading(r, fields))],
        };
        if (!root.Has("medium") && root.IsObject)
        {
            fields.Missing("medium", "Name one: " + string.Join(", ", Medium.All.Select(static m => m.Id)) + ".");
        }

        if (read.HeightCm is null != read.MouthCm is null)
        {
            fields.Missing(read.HeightCm is null ? "pot.heightCm" : "pot.mouthCm", "Give both height and width, or neither.");
        }

        read = Water(root, read, fields);
        read = PotWeatherReader.Read(root, read, fields);
        pot?.Close();
        root.Close();
        return read;
    }

    public static string? MediumOf(Node node, string key, FieldReader fields)
    {
        if (node.Text(key) is not { } id)
        {
            return null;
        }

        if (Medium.Find(id) is null)
        {
            fields.Add(new(node.PathOf(key), $"There is no medium \"{id}\".", "Use one of " + string.Join(", ", Medium.All.Select(static m => m.Id)) + "."));
        }

        return id;
    }

    private static PotPlant Plant(Node? node, FieldReader fields)
    {
        if (node is null)
        {
            return new();
        }

        var crop = node.Text("crop");
        if (crop is not null && CropCatalogue.Default.Find(crop) is null)
        {
            var near = CropCatalogue.Default.Suggest(crop);
            fields.Add(new(node.PathOf("crop"), $"There is no crop \"{crop}\" in the catalogue.", near.Count > 0 ? "Did you mean " + string.Join(" or ", near) + "?" : "List crops with `ashery crops`."));
        }

        var plant = new PotPlant
        {
            Crop = crop,
            Filled = node.Number("filled", 0.02, 1, ""),
            Canopy = node.Number("canopy", 1e-4, 20, "m²"),
            CanopyMost = node.Number("canopyMost", 1e-4, 20, "m²"),
            FlowerLoad = node.Number("flowerLoad", 0, 1, ""),
            EcLimit = node.Number("ecLimit", 0.1, 50, "mS/cm"),
            SaltSlope = node.Number("saltSlope", 0, 100, "% for each mS/cm"),
            Vigour = node.Number("vigour", 0.05, 5, ""),
        };
        node.Close();
        return plant;
    }

    private static IrrigationRule Watering(Node? node, FieldReader fields)
    {
        var rule = new IrrigationRule();
        if (node is null)
        {
            return rule;
        }

        rule = new()
        {
            Kind = fields.Word<IrrigationKind>(node.Text("rule"), node.PathOf("rule"), IrrigationKind.ByWeight),
            Trigger = node.Number("trigger", 0, 1, "") ?? rule.Trigger,
            EveryDays = node.Whole("everyDays", 1, 366) ?? rule.EveryDays,
            Litres = node.Number("litres", 0, 1000, "L"),
            LeachingFraction = node.Number("leachingFraction", 0, 0.9, "") ?? rule.LeachingFraction,
        };
        node.Close();
        return rule;
    }

    private static Exposure Standing(Node? node)
    {
        if (node is null)
        {
            return Exposure.Open;
        }

        var standing = new Exposure(node.Number("rainKeptOff", 0, 1, "") ?? 0, node.Number("shade", 0, 1, "") ?? 0, node.Number("warming", 0, 5, "") ?? 1, node.Number("drying", 0.1, 5, "") ?? 1);
        node.Close();
        return standing;
    }

    private static StartState Start(Node? node)
    {
        if (node is null)
        {
            return new();
        }

        var start = new StartState(node.Number("pH", 3, 9, ""), node.Number("ec", 0, 10, "mS/cm") ?? 0.8, node.Number("water", 0.3, 1, "") ?? 0.95, node.Number("lime", 0, 50, "g/L"));
        node.Close();
        return start;
    }

    private static PotDocument Water(Node root, PotDocument read, FieldReader fields)
    {
        if (root.Raw("water") is not { } water)
        {
            return read;
        }

        if (water.ValueKind == JsonValueKind.String)
        {
            var id = water.GetString()!;
            if (id is "pure")
            {
                return read;
            }

            if (SourceWaters.Default.Find(id) is null)
            {
                fields.Add(new("water", "There is no water of this name.", "Use pure, " + string.Join(", ", SourceWaters.Default.All.Select(static w => w.Report.Id)) + ", or write its report here."));
            }

            return read with { Water = id };
        }

        if (water.ValueKind != JsonValueKind.Object)
        {
            fields.Add(new("water", $"Here stands {Node.Kind(water)}, not a name or a report.", "Write \"hard\", or a report as in { \"ions\": { \"Ca\": 62 }, \"alkalinity\": 140 }."));
            return read;
        }

        var own = WaterFileReader.ReadElement(water);
        fields.AddRange(own.Problems.Select(static p => p with { Field = "water." + p.Field }));
        return own.Ok ? read with { OwnWater = own.Value } : read;
    }

    private static PotReading Reading(Node node, FieldReader fields)
    {
        var date = node.NeededDate("date");
        (string Key, ReadingKind Kind, double Low, double High, string Unit)[] kinds =
        [
            ("leachateEc", ReadingKind.LeachateEc, 0, 50, "mS/cm"), ("leachatePh", ReadingKind.LeachatePh, 2, 11, ""), ("kgBelowFull", ReadingKind.WeightBelowFull, -0.5, 2000, "kg"),
        ];
        PotReading? reading = null;
        var count = 0;
        foreach (var (key, kind, low, high, unit) in kinds)
        {
            if (node.Has(key))
            {
                count++;
                reading = new(date, kind, node.Number(key, low, high, unit) ?? low);
            }
        }

        var error = node.Number("error", 1e-6, 1000, "");
        if (count != 1 && node.IsObject)
        {
            fields.Add(new(node.PathOf("date"), count == 0 ? "There is no reading at this date." : "There is more than one reading in one entry.", "Give one of leachateEc (mS/cm), leachatePh, kgBelowFull in each entry."));
        }

        node.Close();
        return (reading ?? new(date, ReadingKind.LeachatePh, 7)) with { Error = error };
    }
}
