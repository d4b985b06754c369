using Ashery.Crops;
using Ashery.Gardens;
using Ashery.Pots;
using Ashery.RootZone;
using Ashery.Solutions.Waters;

namespace Ashery.Planning.Fit;

/// <summary>A pot of the garden as the model of the root zone sees it, without feeds.</summary>
/// <param name="Pot">The pot.</param>
/// <param name="Crop">What grows in it.</param>
/// <param name="Scenario">What the model runs.</param>
/// <param name="Assumed">What the garden does not tell and was taken.</param>
public sealed record GardenPot(Pot Pot, Crop Crop, PotScenario Scenario, IReadOnlyList<string> Assumed)
{
    // Part of its last size a plant has at a stage (ours).
    private const double SeedlingSize = 0.04, LinerSize = 0.12, YoungSize = 0.35, MatureSize = 0.8, DormantSize = 0.5;

    /// <summary>The scenario of a pot on the first day of a run.</summary>
    public static GardenPot Of(Garden garden, Pot pot, Crop crop, RuleBook rules, DateOnly from, PotAssumptions? assumptions = null)
    {
        var assume = assumptions ?? new();
        List<string> said = [];
        var shape = PotShape.Of(pot);
        if (pot.Size is null)
        {
            said.Add(FormattableString.Invariant($"A round pot of the usual shape: {shape.MouthCm:0} cm wide, {shape.HeightCm:0} cm of medium."));
        }

        var medium = Medium.Of(pot.Medium);
        said.Add($"Medium: {medium.Name}.");
        var stage = PlantAge.StageOn(pot, from, rules);
        var plant = PlantSpec.Of(crop, shape, Size(stage)) with { FlowerLoad = assume.FlowerLoad };
        said.Add(FormattableString.Invariant($"The crown covers {plant.CanopyStart:0.00} m² at first and {plant.CanopyMost:0.00} m² at most, in flower half of the time."));
        said.Add(FormattableString.Invariant($"Watered when {assume.WaterAt * 100:0} % of the available water is left, {assume.LeachingFraction * 100:0} % running out below."));
        if (assume.Exposure == Exposure.Open)
        {
            said.Add("It stands in the open: all rain and sun reach it.");
        }

        var start = Start(pot, from, assume, said);
        var scenario = new PotScenario
        {
            Name = pot.Name,
            Shape = shape,
            Medium = medium,
            Plant = plant,
            Irrigation = IrrigationRule.ByWeight(assume.WaterAt, assume.LeachingFraction),
            Exposure = assume.Exposure,
            Water = Water(garden, said),
            Start = start,
        };
        return new(pot, crop, scenario, said);
    }

    private static StartState Start(Pot pot, DateOnly from, PotAssumptions assume, List<string> said)
    {
        var age = pot.LastRepotted is { } repotted && repotted <= from ? from.DayNumber - repotted.DayNumber : (int?)null;
        if (age < assume.FreshDays)
        {
            said.Add("The medium is fresh, with its starter charge and lime.");
            return new();
        }

        var lime = age < assume.LimeDays;
        said.Add(FormattableString.Invariant($"Salts left from before: {assume.OldStrength:0.0} mS/cm in the pore water{(lime ? "" : "; the lime of the mix is used up")}."));
        return new(SolutionStrength: assume.OldStrength, LimeGramsPerLitre: lime ? null : 0);
    }

    private static WaterSupply Water(Garden garden, List<string> said)
    {
        if (garden.Settings.Water is not { } id)
        {
            said.Add("No water report is chosen: pure water is taken.");
            return WaterSupply.Pure;
        }

        if (garden.Waters.FirstOrDefault(w => w.Id == id) is { } report && WaterReports.Read(report) is { Ok: true } reading)
        {
            return WaterSupply.Of(report.Name, reading.Value.Water.ToInput());
        }

        if (SourceWaters.Default.Find(id) is { } shipped)
        {
            return WaterSupply.Of(shipped.Name, shipped.ToInput());
        }

        said.Add($"The water \"{id}\" cannot be read: pure water is taken.");
        return WaterSupply.Pure;
    }

    private static double Size(PlantStage stage) => stage switch
    {
        PlantStage.Seedling => SeedlingSize,
        PlantStage.Liner => LinerSize,
        PlantStage.Young => YoungSize,
        PlantStage.RootBound => 1,
        PlantStage.Dormant => DormantSize,
        _ => MatureSize,
    };
}
