using System.Diagnostics;
using Ashery.Exchange.Gardens;
using Ashery.Planning.Fit;
using Ashery.RootZone.Draws;

namespace Ashery.Bench;

/// <summary>Fitting the demo garden's year, 18 pots, on all threads: first and final plan, beside one forecast of its pots by the rule of thumb.</summary>
internal static class FitBench
{
    private static readonly DateOnly From = new(2026, 3, 1);

    public static void Run()
    {
        Table.Head("A year fitted to the root zone, 18 pots, all threads", "pots", "first plan, s", "final plan, s", "its processor time, s", "pot-days of the search", "rule of thumb through the model, 200 draws, s", "ratio", "score fitted", "rule of thumb");
        var garden = DemoGarden.Create(From);
        _ = YearFit.Plan(new FitRequest(garden with { Pots = [garden.Pots[0]] }, From) { Draws = 20 });
        var first = 0.0;
        using var process = Process.GetCurrentProcess();
        var used = process.TotalProcessorTime;
        var watch = Stopwatch.StartNew();
        var year = YearFit.Plan(new FitRequest(garden, From), new Told(p => first = p.First is not null ? watch.Elapsed.TotalSeconds : first)).Value!;
        var all = watch.Elapsed.TotalSeconds;
        process.Refresh();
        var processor = (process.TotalProcessorTime - used).TotalSeconds;
        watch.Restart();
        var weather = DrawnWeather.Of(garden.Place, 1).Value!;
        Parallel.ForEach(year.Pots, pot =>
        {
            var scenario = GardenPot.Of(garden, garden.Pots.First(p => p.Id == pot.Fitted.PotId), Crops.CropCatalogue.Default.Find(garden.Pots.First(p => p.Id == pot.Fitted.PotId).CropId)!, Planning.GardenRules.Of(garden).Rules, From).Scenario;
            _ = PotForecast.Run(new() { Scenario = scenario with { Events = pot.Beside.Events }, Weather = weather, From = From, Draws = 200, Threads = 1 });
        });
        var plain = watch.Elapsed.TotalSeconds;
        Table.Row(
            Table.Figure(year.Pots.Count), Table.Figure(first), Table.Figure(all), Table.Figure(processor), Table.Figure(year.PotDays), Table.Figure(plain), Table.Times(all / plain), Table.Figure(year.Fitted.Score), Table.Figure(year.BesideMeasure.Score));
    }

    private sealed class Told(Action<FitProgress> tell) : IProgress<FitProgress>
    {
        public void Report(FitProgress value) => tell(value);
    }
}
