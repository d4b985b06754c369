using Ashery.RootZone.Forcing;

namespace Ashery.RootZone.Draws;

/// <summary>A pot with every unknown at one value: ready to run.</summary>
/// <param name="Scenario">With its figures drawn.</param>
/// <param name="Plan">Worked out.</param>
/// <param name="Weather">Turns weather of the open into that of the pot.</param>
internal sealed record DrawnPot(PotScenario Scenario, PotPlan Plan, PotWeather Weather)
{
    /// <summary>The pot of a draw.</summary>
    /// <param name="scenario">As told.</param>
    /// <param name="start">First day.</param>
    /// <param name="space">What is uncertain.</param>
    /// <param name="shares">One in (0, 1) for each figure of the space.</param>
    public static DrawnPot Of(PotScenario scenario, DateOnly start, DrawSpace space, ReadOnlySpan<double> shares)
    {
        var constants = ConstantsOf(space, shares);
        var medium = DrawnMedium.Of(scenario.Medium, scenario.Medium, space, shares);
        var drawn = scenario with
        {
            Medium = medium,
            Start = Start(scenario, space, shares),
            Plant = Plant(scenario.Plant, space, shares),
            Irrigation = Irrigation(scenario.Irrigation, space, shares),
            Water = scenario.Water with { PerLitre = scenario.Water.PerLitre.Times(space.At("water-strength", shares, 1)) },
            Exposure = scenario.Exposure with
            {
                Drying = scenario.Exposure.Drying * space.At("place-drying", shares, 1),
                RainKeptOff = 1 - ((1 - scenario.Exposure.RainKeptOff) * space.At("place-rain", shares, 1)),
            },
            Events = DrawnFeeds.Of(scenario, medium, space, shares),
        };
        return new(drawn, Rates(PotPlan.Of(drawn, start, constants), space, shares), new(constants));
    }

    private static RootZoneConstants ConstantsOf(DrawSpace space, ReadOnlySpan<double> shares)
    {
        var values = new Dictionary<string, double>(space.Count, StringComparer.Ordinal);
        for (var i = 0; i < space.Count; i++)
        {
            if (RootZoneConstants.Default.Has(space.Figures[i].Id))
            {
                values.Add(space.Figures[i].Id, space.Figures[i].At(shares[i]));
            }
        }

        return RootZoneConstants.Default.With(values);
    }

    private static StartState Start(PotScenario scenario, DrawSpace space, ReadOnlySpan<double> shares)
    {
        var start = scenario.Start;
        return start with
        {
            SolutionStrength = start.SolutionStrength * space.At("start-strength", shares, 1),
            WaterShare = Math.Min(1, start.WaterShare * space.At("start-water", shares, 1)),
            PH = start.PH is { } told ? told + space.At("start-ph", shares, 0) : space.At("start-ph", shares, scenario.Medium.StartPh.Value),
            LimeGramsPerLitre = start.LimeGramsPerLitre is { } lime ? lime * space.At("start-lime", shares, 1) : space.At("start-lime", shares, scenario.Medium.Lime.Value),
        };
    }

    private static PlantSpec Plant(PlantSpec plant, DrawSpace space, ReadOnlySpan<double> shares) => plant with
    {
        CanopyStart = plant.CanopyStart * space.At("plant-canopy", shares, 1),
        CanopyMost = plant.CanopyMost * space.At("plant-most", shares, 1),
        Vigour = plant.Vigour * space.At("plant-vigour", shares, 1),
    };

    private static IrrigationRule Irrigation(IrrigationRule rule, DrawSpace space, ReadOnlySpan<double> shares) => rule with
    {
        Litres = rule.Litres * space.At("watering-amount", shares, 1),
        LeachingFraction = Math.Min(0.9, rule.LeachingFraction * space.At("watering-leaching", shares, 1)),
        Trigger = Math.Clamp(rule.Trigger + space.At("watering-trigger", shares, 0), 0, 1),
        Feed = rule.Feed.Times(space.At("can-strength", shares, 1)),
    };

    // Rates of the organic classes are rows of their own, not constants; they go into the parameters, those after repotting too.
    private static PotPlan Rates(PotPlan plan, DrawSpace space, ReadOnlySpan<double> shares)
    {
        if (space.PlaceOf("meal-rate") < 0 && space.PlaceOf("cake-rate") < 0 && space.PlaceOf("compost-rate") < 0)
        {
            return plan;
        }

        var rates = OrganicClass.Rates;
        var (meal, cake, compost) = (space.At("meal-rate", shares, rates.Meal) / rates.Meal, space.At("cake-rate", shares, rates.Cake) / rates.Cake, space.At("compost-rate", shares, rates.Compost) / rates.Compost);
        for (var i = 0; i < plan.Events.Length; i++)
        {
            if (plan.Events[i].Repotted is { } repotted)
            {
                plan.Events[i].Repotted = Put(repotted);
            }
        }

        return plan with { Parameters = Put(plan.Parameters) };

        PotParameters Put(PotParameters p) => p with { MealRate = p.MealRate * meal, CakeRate = p.CakeRate * cake, CompostRate = p.CompostRate * compost };
    }
}
