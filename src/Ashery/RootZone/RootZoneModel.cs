using Ashery.Climate;
using Ashery.Problems;
using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone;

/// <summary>The daily model of a pot.</summary>
public static class RootZoneModel
{
    /// <summary>Runs a scenario through a series of weather and keeps every day.</summary>
    public static Result<PotRun> Run(PotScenario scenario, WeatherSeries weather, RootZoneConstants? constants = null)
    {
        var problems = ScenarioCheck.Of(scenario, weather);
        if (problems.Exists(static p => p.Severity == Severity.Error))
        {
            return Result.Fail<PotRun>(problems);
        }

        var used = constants ?? RootZoneConstants.Default;
        var start = weather.Days[0].Date;
        var plan = PotPlan.Of(scenario, start, used);
        var open = weather.Days as DailyWeather[] ?? [.. weather.Days];
        var days = new DayForcing[open.Length];
        new PotWeather(used).Fill(open, scenario.Exposure, scenario.Shape.Litres, days);
        var pools = plan.Start;
        PotLedger ledger = default;
        var kept = new PotDay[days.Length];
        var recorder = new DayRecorder(start, kept, plan.Start);
        RootZoneEngine.Run(plan, days, ref pools, ref ledger, ref recorder);
        return Result.Of(new PotRun { Scenario = scenario, Days = kept, Start = plan.Start, End = pools, Ledger = ledger, Balance = recorder.Worst, Notes = problems }, problems);
    }
}
