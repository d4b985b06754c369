using Ashery.Crops;
using Ashery.RootZone.Feeding;
using Ashery.RootZone.State;
using Ashery.Solutions;

namespace Ashery.RootZone;

/// <summary>Turns a scenario and the constants into <see cref="PotParameters"/>.</summary>
public static class Parameters
{
    // meq/L of medium = eq/m³; mol of charge: 1e-3.
    private const double Milli = 1e-3;

    private static readonly (int Ion, string Name)[] MainNutrients =
    [
        (Ion.Phosphate, "phosphorus"), (Ion.Potassium, "potassium"), (Ion.Calcium, "calcium"), (Ion.Magnesium, "magnesium"), (Ion.Sulfate, "sulfur"),
    ];

    private static readonly (int Ion, string Name)[] Traces =
    [
        (Ion.Boron, "boron"), (Ion.Iron, "iron"), (Ion.Manganese, "manganese"), (Ion.Zinc, "zinc"), (Ion.Copper, "copper"),
    ];

    public static PotParameters Of(PotScenario scenario, RootZoneConstants constants) => Of(scenario, scenario.Shape, scenario.Medium, scenario.Plant.CanopyMost, constants);

    /// <summary>The same plant and rules in another pot or medium, as after repotting.</summary>
    public static PotParameters Of(PotScenario scenario, PotShape shape, Medium medium, double canopyMost, RootZoneConstants c)
    {
        var (plant, rule) = (scenario.Plant, scenario.Irrigation);
        var steps = Math.Max(1, scenario.StepsPerDay);
        var dt = 1.0 / steps;
        var half = dt / 2;
        var held = WaterHeld.Of(shape, medium, c);
        var slope = medium.Buffer.Value * Milli * shape.Litres;
        var exchange = medium.Exchange.Value * Milli * shape.Litres;
        var wantedNitrogen = plant.NitrogenWanted ?? c[plant.Feeder switch { FeederClass.Light => "nitrogen-light", FeederClass.Heavy => "nitrogen-heavy", _ => "nitrogen-medium" }];
        var rates = OrganicClass.Rates;
        var (bicarbonate, phosphateK) = CarbonAndPhosphate(c["carbon-dioxide"]);
        return new()
        {
            Litres = shape.Litres,
            Capacity = held.Capacity,
            Wilting = held.Wilting,
            Strained = held.Strained,
            Pores = held.Pores,
            MouthArea = shape.MouthArea,
            CanopyCoefficient = c["canopy-coefficient"] * plant.Vigour,
            SurfaceCoefficient = c["surface-coefficient"],
            SurfaceShaded = c["surface-shaded"],
            CanopyStorage = c["canopy-storage"],
            Mixing = medium.Mixing.Value,
            Irrigation = rule.Kind,
            TriggerLitres = held.Wilting + (Math.Clamp(rule.Trigger, 0, 1) * (held.Capacity - held.Wilting)),
            EveryDays = Math.Max(1, rule.EveryDays),
            FixedLitres = rule.Litres ?? -1,
            LeachingFraction = Math.Clamp(rule.LeachingFraction, 0, 0.9),
            WaterIons = scenario.Water.PerLitre,
            RainIons = scenario.Rain.PerLitre,
            WateringFeed = rule.Feed,
            UreaRate = c["urea-hydrolysis"] * half,
            NitrificationRate = c["nitrification"] * half,
            NitrificationPhNone = c["nitrification-ph-none"],
            NitrificationPhSpan = c["nitrification-ph-full"] - c["nitrification-ph-none"],
            AmmoniaRate = c["ammonia-exchange"] * half,
            DenitrificationRate = c["denitrification"] * half,
            DenitrificationHalf = c["denitrification-half"],
            DenitrificationStart = c["denitrification-start"],
            Perched = Math.Clamp(c["perched-water"] / shape.HeightCm, 0, 0.5),
            WetBest = c["wet-pores-best"],
            WetFall = (1 - c["wet-pores-ninety"]) / (0.9 - c["wet-pores-best"]),
            MicrobeShare = c["microbe-efficiency"] / c["microbe-cn"],
            MealRate = rates.Meal * half,
            CakeRate = rates.Cake * half,
            CompostRate = rates.Compost * half,
            SlowRate = c["slow-organic"] * half,
            HumusRate = c["humus"] * half,
            SlowMineralRate = c["slow-mineral"] * half,
            Charges = Ion.Charges,
            SorptionLitres = Sorption(medium, shape.Litres, c),
            GaponMagnesium = c["gapon-magnesium"],
            GaponPotassium = c["gapon-potassium"],
            GaponAmmonium = c["gapon-ammonium"],
            GaponSodium = c["gapon-sodium"],
            BufferSlope = slope,
            BufferZero = c["cec-ph"] - (exchange / slope),
            Bicarbonate = bicarbonate,
            PhosphateK = phosphateK,
            LimeRate = c["lime-dissolution"] * half,
            LimeEnd = c["lime-end"],
            ScalePh = c["lime-scale-ph"],
            ScaleRate = c["lime-scale"] * half,
            LightUse = c["light-use"] * c["light-taken"] * plant.Vigour * dt,
            CanopyMass = c["canopy-mass"],
            CanopyMost = canopyMost,
            BaseCelsius = plant.BaseCelsius,
            BestFrom = plant.BestFromCelsius,
            BestTo = plant.BestToCelsius,
            NitrogenWanted = wantedNitrogen / Ion.GramsPerMole(Ion.Nitrate),
            NitrogenLeast = c["nitrogen-least"],
            Wanted = Wanted(wantedNitrogen, c),
            HalfUptake = Halves(c),
            HalfNitrogen = c["half-nitrogen"],
            FlowerDemand = 1 + (plant.FlowerLoad * (c["flower-demand"] - 1)),
            CatchUp = dt / c["catch-up"],
            Luxury = c["luxury"],
            SaltWithWater = c["salt-with-water"],
            SaltThreshold = plant.SaltThreshold,
            SaltSlope = plant.SaltSlope / 100 / c["salt-yield-response"],
            ExtractOverPore = 1 / c["pour-through-over-extract"],
            Steps = steps,
        };
    }

    private static Ions Sorption(Medium medium, double litres, RootZoneConstants c)
    {
        var sorbed = default(Ions);
        sorbed[Ion.Phosphate] = medium.PhosphateSorption.Value * litres;
        sorbed[Ion.Boron] = c["sorption-boron"] * litres;
        foreach (var metal in (ReadOnlySpan<int>)[Ion.Iron, Ion.Manganese, Ion.Zinc, Ion.Copper])
        {
            sorbed[metal] = c["sorption-metals"] * litres;
        }

        return sorbed;
    }

    private static Ions Wanted(double nitrogen, RootZoneConstants c)
    {
        var wanted = default(Ions);
        foreach (var (ion, name) in MainNutrients.Concat(Traces))
        {
            wanted[ion] = nitrogen * c["want-" + name] / Ion.GramsPerMole(ion);
        }

        return wanted;
    }

    private static Ions Halves(RootZoneConstants c)
    {
        // Places without a demand have any half; it must not be zero, or nothing over nothing would be asked.
        var halves = default(Ions);
        for (var i = 0; i < Ions.Width; i++)
        {
            halves[i] = c["half-others"];
        }

        foreach (var (ion, _) in Traces)
        {
            halves[ion] = c["half-traces"];
        }

        return halves;
    }

    // HCO3- a = K pCO2 with the constants of data/solutions at 25 °C; activity coefficients are left out, pores are dilute.
    private static (double Bicarbonate, double PhosphateK) CarbonAndPhosphate(double carbonDioxide)
    {
        var chemistry = Chemistry.Default;
        double bicarbonate = Log("HCO3-") - Log("CO2"), second = Log("HPO4-2") - Log("H2PO4-");
        return (carbonDioxide * Math.Pow(10, chemistry.CarbonDioxide.At(25) + bicarbonate), Math.Pow(10, second));

        double Log(string id) => chemistry.Species.First(s => s.Id == id).LogFormation(25);
    }
}
