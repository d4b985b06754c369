using System.Diagnostics;
using Ashery.Climate;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Nutrients;
using Ashery.Planning;
using Ashery.Planning.Fit;
using Ashery.Pots;
using Ashery.RootZone.Draws;

namespace Ashery.Bench;

/// <summary>Fitting the year of an invented garden, 18 pots, on all threads: first and final plan, beside one forecast of its pots by the rule of thumb.</summary>
internal static class FitBench
{
    private static readonly DateOnly From = new(2026, 3, 1);

    public static void Run()
    {
        Table.Head("A year fitted to the root zone, 18 pots, all threads", "pots", "first plan, s", "final plan, s", "its processor time, s", "pot-days of the search", "rule of thumb through the model, 200 draws, s", "ratio", "score fitted", "rule of thumb");
        var garden = Some();
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
            var mine = garden.Pots.First(p => p.Id == pot.Fitted.PotId);
            var scenario = GardenPot.Of(garden, mine, CropCatalogue.Default.Find(mine.CropId)!, GardenRules.Of(garden).Rules, From).Scenario;
            _ = PotForecast.Run(new() { Scenario = scenario with { Events = pot.Beside.Events }, Weather = weather, From = From, Draws = 200, Threads = 1 });
        });
        var plain = watch.Elapsed.TotalSeconds;
        Table.Row(
            Table.Figure(year.Pots.Count), Table.Figure(first), Table.Figure(all), Table.Figure(processor), Table.Figure(year.PotDays), Table.Figure(plain), Table.Times(all / plain), Table.Figure(year.Fitted.Score), Table.Figure(year.BesideMeasure.Score));
    }

    /// <summary>A warm, wet-winter place with a pot of every third crop, 2 to 36 L.</summary>
    private static Garden Some() => new()
    {
        Name = "invented",
        Place = new Place { Name = "invented", Latitude = 41, Normals = [.. Enumerable.Range(0, 12).Select(m => new MonthlyNormal(20 - (9 * Math.Cos(m * Math.PI / 6)), 11 - (8 * Math.Cos(m * Math.PI / 6)), 70 + (50 * Math.Cos(m * Math.PI / 6))))] },
        Pots = [.. Enumerable.Range(0, 18).Select(i => new Pot { Id = FormattableString.Invariant($"p{i}"), Name = FormattableString.Invariant($"pot {i}"), CropId = CropCatalogue.Default.All[(3 * i) % CropCatalogue.Default.All.Count].Id, Volume = new(2 + (2 * i)), Medium = (MediumKind)(i % 4) })],
        Feeds =
        [
            Feed("salts", FeedKind.Mineral, "ammonium-sulfate", new(0.2, 0, 0, 0, 0), true),
            Feed("meals", FeedKind.Organic, "neem-cake", new(0, 0, 0, 0.04, 0), false),
        ],
        Settings = new() { ScaleStep = 0.1 },
    };

    private static Feed Feed(string id, FeedKind kind, string material, NitrogenForms nitrogen, bool dissolves) => new()
    {
        Id = id,
        Name = id,
        Kind = kind,
        Parts = new Dictionary<string, double> { [material] = 1 },
        Nitrogen = nitrogen,
        Dissolves = dissolves,
        Label = new LabelAnalysis(new Dictionary<Nutrient, double> { [Nutrient.N] = nitrogen.Total, [Nutrient.P] = 0.02, [Nutrient.K] = nitrogen.Total * 0.8 }),
    };

    private sealed class Told(Action<FitProgress> tell) : IProgress<FitProgress>
    {
        public void Report(FitProgress value) => tell(value);
    }
}
