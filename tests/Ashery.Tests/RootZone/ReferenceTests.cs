using Ashery.RootZone;
using Ashery.RootZone.State;

namespace Ashery.Tests.RootZone;

/// <summary>
/// Parts of the daily step against solutions of their differential equations by other means: Bateman's closed form (1910) of a chain of
/// first-order reactions, and the fourth-order Runge-Kutta method with a hundred steps a day.
/// </summary>
public class ReferenceTests
{
    [Theory]
    [InlineData(12)]
    [InlineData(25)]
    public void Urea_ammonium_nitrate_follow_the_chain_of_two_reactions(double celsius)
    {
        // pH stays above 6.8, nothing is lost to the air: rates are constant.
        var constants = RootZoneConstants.Default.With(new Dictionary<string, double> { ["ammonia-exchange"] = 0, ["denitrification"] = 0, ["slow-organic"] = 0, ["lime-scale"] = 0 });
        var scenario = Trials.Bare with
        {
            Shape = PotShape.OfLitres(20),
            Start = new(PH: 7.7, SolutionStrength: 0, WaterShare: 0.95, LimeGramsPerLitre: 0),
            Events = [new DryFeedEvent(RandomScenarios.Start, Trials.Feed("urea"), 1)],
        };
        var days = new Ashery.RootZone.Forcing.DayForcing();
        new Ashery.RootZone.Forcing.TemperatureFactors(constants).Set(ref days, celsius);
        var plan = PotPlan.Of(scenario, RandomScenarios.Start, constants);
        var start = plan.Start;
        var moist = Ashery.RootZone.Nitrogen.Moisture.Aerobic(in start, plan.Parameters);
        double k1 = constants["urea-hydrolysis"] * days.Urea * (0.5 + (0.5 * moist)), k2 = constants["nitrification"] * days.Nitrification * moist;
        var urea = 0.46 / 14.007;
        var first = plan.Start.Mobile[Ion.Ammonium];
        foreach (var t in new[] { 1, 3, 7, 14, 30 })
        {
            var end = RootZoneModel.Run(scenario, Trials.Steady(t, celsius, 0, 0), constants).Value!.End;
            Assert.Equal(urea * Math.Exp(-k1 * t), end.Mobile[Ion.Urea], 0.003 * urea);
            var ammonium = (first * Math.Exp(-k2 * t)) + (urea * k1 / (k2 - k1) * (Math.Exp(-k1 * t) - Math.Exp(-k2 * t)));
            Assert.Equal(ammonium, end.Mobile[Ion.Ammonium], 0.005 * (urea + first));
        }
    }

    [Fact]
    public void Drying_down_follows_Runge_and_Kutta()
    {
        var scenario = Trials.Bare with { Plant = new() { CanopyStart = 0.1, CanopyMost = 0.1, SaltThreshold = 100, BaseCelsius = 40, BestFromCelsius = 41, BestToCelsius = 42 } };
        var run = RootZoneModel.Run(scenario, Trials.Steady(25, 24, 15, 4)).Value!;
        var held = WaterHeld.Of(scenario.Shape, scenario.Medium, RootZoneConstants.Default);
        var c = RootZoneConstants.Default;
        var wanted = (c["canopy-coefficient"] * 4 * 0.1) + (c["surface-coefficient"] * 4 * scenario.Shape.MouthArea * c["surface-shaded"]);
        double Loss(double w) => -wanted * Math.Clamp((w - held.Wilting) / (held.Strained - held.Wilting), 0, 1);
        var water = run.Start.Water;
        foreach (var day in run.Days)
        {
            for (var i = 0; i < 100; i++)
            {
                const double h = 0.01;
                var k1 = Loss(water);
                var k2 = Loss(water + (h / 2 * k1));
                var k3 = Loss(water + (h / 2 * k2));
                var k4 = Loss(water + (h * k3));
                water += h / 6 * (k1 + (2 * k2) + (2 * k3) + k4);
            }

            Assert.Equal(water, day.Water, 0.004 * held.Capacity);
        }
    }
}
