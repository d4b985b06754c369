using System.Diagnostics;
using Ashery.Climate;
using Ashery.Crops;
using Ashery.Materials;
using Ashery.RootZone;
using Ashery.RootZone.Feeding;
using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;
using Ashery.Solutions;

namespace Ashery.Bench;

/// <summary>Days of pots a second: on one thread, on all, by number of pots and of days, and what a day costs the memory.</summary>
internal static class RootZoneBench
{
    public static readonly DateOnly Start = new(2026, 3, 1);

    public static Place Place { get; } = new() { Name = "bench", Latitude = 30, Normals = [.. Enumerable.Range(0, 12).Select(static m => new MonthlyNormal(24 + (8 * Math.Sin((m - 3) * Math.PI / 6)), 14 + (8 * Math.Sin((m - 3) * Math.PI / 6)), 60))] };

    public static void Run()
    {
        var open = Weather();
        var plans = Plans(1000);

        Table.Head("Pot model: days of pots a second", ["pots x days x draws", "threads", "s", "million pot-days a second", "processor s", "million pot-days a processor second", "bytes allocated a pot-day"]);
        Line(plans[..100], open, 10, 1);
        Line(plans[..300], open, 10, 1);
        Line(plans, open, 10, 1);
        Line(plans[..100], open, 10, Environment.ProcessorCount);
        Line(plans, open, 10, Environment.ProcessorCount);
        Line(plans, open, 100, Environment.ProcessorCount);
    }

    /// <summary>What the fast EC saves.</summary>
    public static void RunPlain()
    {
        var open = Weather();
        Plain(Plans(20), open);
    }

    // The straightforward way to the EC of an evening is to solve the whole solution: same pots, same days, one thread.
    private static void Plain((PotScenario Scenario, PotPlan Plan)[] plans, DailyWeather[] open)
    {
        Table.Head("The same with the full solution each evening, 20 pots x 365 days, one thread", ["EC by", "s", "thousand pot-days a second"]);
        foreach (var (name, run) in new (string, Func<double>)[] { ("fast sum", () => Evenings(plans, open, default(NoSink))), ("full speciation", () => Evenings(plans, open, default(FullEc))) })
        {
            var seconds = Timing.Median(() => run(), 1500) / 1000;
            Table.Row(name, Table.Figure(seconds), Table.Figure(plans.Length * (double)open.Length / seconds / 1000));
        }
    }

    private static double Evenings<TSink>((PotScenario Scenario, PotPlan Plan)[] plans, DailyWeather[] open, TSink sink)
        where TSink : struct, IDaySink
    {
        var days = new DayForcing[open.Length];
        var pots = new PotWeather(RootZoneConstants.Default);
        var sum = 0.0;
        foreach (var (scenario, plan) in plans)
        {
            pots.Fill(open, scenario.Exposure, scenario.Shape.Litres, days);
            var pools = plan.Start;
            PotLedger ledger = default;
            RootZoneEngine.Run(plan, days, ref pools, ref ledger, ref sink);
            sum += pools.PoreEc;
        }

        return sum;
    }

    private struct FullEc : IDaySink
    {
        public double Sum { get; private set; }

        public void Evening(int day, PotParameters parameters, in DayForcing forcing, in PotPools pools, in PotLedger ledger, in DayFlows flows) =>
            Sum += Conductivity.At25(Speciation.Solve(WaterSupply.ToInput(in pools.Solution, 25).Under(Air.Open)));
    }

    private static DailyWeather[] Weather()
    {
        var weather = WeatherGenerator.Run(Place, Start, 365, 1).Value!;
        return [.. weather.Days];
    }

    private static void Line((PotScenario Scenario, PotPlan Plan)[] plans, DailyWeather[] open, int draws, int threads)
    {
        Work(plans, open, 1, threads);
        var before = GC.GetTotalAllocatedBytes(precise: true);
        using var process = Process.GetCurrentProcess();
        var busy = process.TotalProcessorTime;
        var clock = Stopwatch.StartNew();
        var check = Work(plans, open, draws, threads);
        var seconds = clock.Elapsed.TotalSeconds;
        process.Refresh();
        var processor = (process.TotalProcessorTime - busy).TotalSeconds;
        var bytes = GC.GetTotalAllocatedBytes(precise: true) - before;
        var potDays = (double)plans.Length * open.Length * draws;
        Table.Row(
            $"{Table.Whole(plans.Length)} x {Table.Whole(open.Length)} x {Table.Whole(draws)}",
            Table.Whole(threads),
            Table.Figure(seconds),
            Table.Figure(potDays / seconds / 1e6),
            Table.Figure(processor),
            Table.Figure(potDays / processor / 1e6),
            Table.Figure(bytes / potDays));
        if (!(check > 0))
        {
            throw new InvalidOperationException("The pots lived.");
        }
    }

    // Each draw meets the weather anew, as draws over weather would: the forcing is worked out for every pot and draw.
    private static double Work((PotScenario Scenario, PotPlan Plan)[] plans, DailyWeather[] open, int draws, int threads)
    {
        var sums = new double[threads];
        void Thread(int thread)
        {
            var days = new DayForcing[open.Length];
            var pots = new PotWeather(RootZoneConstants.Default);
            NoSink sink = default;
            for (var i = thread; i < plans.Length * draws; i += threads)
            {
                var (scenario, plan) = plans[i % plans.Length];
                pots.Fill(open, scenario.Exposure, scenario.Shape.Litres, days);
                var pools = plan.Start;
                PotLedger ledger = default;
                RootZoneEngine.Run(plan, days, ref pools, ref ledger, ref sink);
                sums[thread] += ledger.TakenUp.Nitrogen;
            }
        }

        if (threads == 1)
        {
            Thread(0);
        }
        else
        {
            Parallel.For(0, threads, Thread);
        }

        return sums.Sum();
    }

    private static (PotScenario Scenario, PotPlan Plan)[] Plans(int count) => [.. Scenarios(count).Select(static s => (s, PotPlan.Of(s, Start, RootZoneConstants.Default)))];

    public static PotScenario[] Scenarios(int count)
    {
        var feeds = new[] { "calcium-nitrate-double", "potassium-nitrate", "blood-meal", "neem-cake", "map-technical" }.Select(static id => FeedBuilder.Of(MaterialCatalogue.Default.Find(id)!)).ToArray();
        var made = new PotScenario[count];
        for (var i = 0; i < count; i++)
        {
            var shape = PotShape.OfLitres(1 + (i % 20));
            var most = PlantSpec.UsualCanopy(shape);
            made[i] = new()
            {
                Name = "bench",
                Shape = shape,
                Medium = Medium.All[i % Medium.All.Count],
                Plant = new() { Feeder = FeederClass.Medium, CanopyStart = most * 0.3, CanopyMost = most },
                Irrigation = i % 3 == 0 ? IrrigationRule.ByDay(2) : IrrigationRule.ByWeight(),
                Water = new("bench", Water),
                Events = [.. Enumerable.Range(0, 12).Select(k => new DryFeedEvent(Start.AddDays(20 + (k * 25)), feeds[(i + k) % feeds.Length], 0.5 * shape.Litres))],
            };
        }

        return made;
    }

    // Made water: calcium bicarbonate with some sodium chloride.
    private static Ions Water => default(Ions).With(Ion.Calcium, 1.5e-3).With(Ion.Magnesium, 5e-4).With(Ion.Sodium, 1e-3).With(Ion.Chloride, 1e-3).With(Ion.Sulfate, 5e-4);
}
