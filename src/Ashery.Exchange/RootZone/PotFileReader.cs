using Ashery.Crops;
using Ashery.Exchange.Waters;
using Ashery.Pots;
using Ashery.Problems;
using Ashery.RootZone;
using Ashery.Solutions.Waters;

namespace Ashery.Exchange.RootZone;

/// <summary>Turns the fields of a file into a scenario.</summary>
internal sealed class PotFileReader(List<Problem> problems)
{
    private const int MostEvents = 5000;

    public PotScenario? Read(JsonFields root)
    {
        root.Only("name", "pot", "medium", "plant", "water", "watering", "exposure", "start", "events", "stepsPerDay", "$schema");
        var shape = Shape(root.Object("pot"));
        var medium = MediumOf(root.Text("medium") ?? "peat-mix", "medium");
        var water = Water(root);
        var events = new PotEventReader(problems);
        if (shape is null || medium is null || water is null)
        {
            return null;
        }

        return new()
        {
            Name = root.Text("name") ?? "pot",
            Shape = shape,
            Medium = medium,
            Plant = Plant(root.Object("plant"), shape),
            Water = water,
            Irrigation = Watering(root.Object("watering")),
            Exposure = ExposureOf(root.Object("exposure")),
            Start = Start(root.Object("start")),
            Events = [.. root.Objects("events", MostEvents).Select(e => events.Read(e, shape)).OfType<PotEvent>()],
            StepsPerDay = (int)(root.Number("stepsPerDay", 1, 96) ?? 1),
        };
    }

    /// <summary>By litres, or by diameter and height in cm.</summary>
    public PotShape? Shape(JsonFields? pot)
    {
        if (pot is null)
        {
            problems.Add(new("pot", "The pot is missing.", "Give { \"litres\": 5 }, or { \"diameter\": 24, \"height\": 22 } in cm."));
            return null;
        }

        pot.Only("litres", "diameter", "height", "bottom");
        if (pot.Has("litres"))
        {
            var litres = pot.Needed("litres", 0.02, 2000);
            var usual = PotShape.OfLitres(litres);
            return new(litres, pot.Number("height", 3, 200) ?? usual.HeightCm, pot.Number("diameter", 3, 200) ?? usual.MouthCm);
        }

        var size = new PotSize(pot.Needed("diameter", 3, 200), pot.Needed("height", 3, 200), pot.Number("bottom", 3, 200));
        var volume = PotVolume.From(size, pot.Path);
        problems.AddRange(volume.Problems);
        return volume.Ok ? new(volume.Value.Litres, size.Height * PotVolume.FillFraction, size.TopDiameter) : null;
    }

    public Medium? MediumOf(string id, string field)
    {
        if (Medium.Find(id) is { } medium)
        {
            return medium;
        }

        problems.Add(new(field, $"There is no medium {id}.", $"Use {string.Join(", ", Medium.All.Select(static m => m.Id))}."));
        return null;
    }

    private PlantSpec Plant(JsonFields? plant, PotShape shape)
    {
        plant?.Only("crop", "grown", "canopy", "canopyMost", "flowering", "vigour", "saltThreshold", "saltSlope");
        var grown = plant?.Number("grown", 0.02, 1) ?? 0.6;
        var most = plant?.Number("canopyMost", 1e-4, 20) ?? PlantSpec.UsualCanopy(shape);
        var spec = new PlantSpec { CanopyStart = grown * most, CanopyMost = most };
        if (plant?.Text("crop") is { } id)
        {
            if (CropCatalogue.Default.Find(id) is { } crop)
            {
                spec = PlantSpec.Of(crop, shape, grown) with { CanopyStart = grown * most, CanopyMost = most };
            }
            else
            {
                problems.Add(new(plant.At("crop"), $"There is no crop {id}.", "List crops with `ashery crops`."));
            }
        }

        return plant is null ? spec : spec with
        {
            CanopyStart = plant.Number("canopy", 1e-4, 20) ?? spec.CanopyStart,
            FlowerLoad = plant.Number("flowering", 0, 1) ?? 0,
            Vigour = plant.Number("vigour", 0.1, 3) ?? 1,
            SaltThreshold = plant.Number("saltThreshold", 0, 20) ?? spec.SaltThreshold,
            SaltSlope = plant.Number("saltSlope", 0, 100) ?? spec.SaltSlope,
        };
    }

    // The name of a water that ships, or a report as in a water file.
    private WaterSupply? Water(JsonFields root)
    {
        if (!root.Has("water"))
        {
            return WaterSupply.Pure;
        }

        if (root.IsText("water"))
        {
            if (SourceWaters.Default.Find(root.Text("water")!) is { } known)
            {
                return WaterSupply.Of(known);
            }

            problems.Add(new("water", "There is no such water.", $"Use pure, {string.Join(", ", SourceWaters.Default.All.Select(static w => w.Report.Id))}, or a report in braces as in a water file."));
            return null;
        }

        var report = WaterFile.Read(root.Raw("water")!);
        var reading = report.Ok ? WaterReports.Read(report.Value) : null;
        foreach (var problem in reading?.Problems ?? report.Problems)
        {
            if (problem.Severity == Severity.Error)
            {
                problems.Add(problem with { Field = "water." + problem.Field });
            }
        }

        return reading is { Ok: true } ? WaterSupply.Of(reading.Value.Water) : null;
    }

    private IrrigationRule Watering(JsonFields? rule)
    {
        if (rule is null)
        {
            return new();
        }

        rule.Only("rule", "trigger", "everyDays", "litres", "leachingFraction");
        var leaching = rule.Number("leachingFraction", 0, 0.9) ?? 0.15;
        switch (rule.Text("rule") ?? "weight")
        {
            case "weight": return IrrigationRule.ByWeight(rule.Number("trigger", 0, 1) ?? 0.6, leaching);
            case "days": return IrrigationRule.ByDay((int)(rule.Number("everyDays", 1, 60) ?? 1), rule.Number("litres", 0, 1000), leaching);
            case "rain": return IrrigationRule.RainOnly;
            default:
                rule.Wrong("rule", "weight, days or rain");
                return new();
        }
    }

    private static Exposure ExposureOf(JsonFields? exposure)
    {
        exposure?.Only("rainKeptOff", "shade", "warming", "drying");
        return exposure is null ? Exposure.Open : new(
            exposure.Number("rainKeptOff", 0, 1) ?? 0, exposure.Number("shade", 0, 1) ?? 0, exposure.Number("warming", 0, 5) ?? 1, exposure.Number("drying", 0.1, 5) ?? 1);
    }

    private static StartState Start(JsonFields? start)
    {
        start?.Only("pH", "strength", "water", "lime");
        var usual = new StartState();
        return start is null ? usual : new(
            start.Number("pH", 3, 9), start.Number("strength", 0, 10) ?? usual.SolutionStrength, start.Number("water", 0.3, 1) ?? usual.WaterShare, start.Number("lime", 0, 50));
    }
}
