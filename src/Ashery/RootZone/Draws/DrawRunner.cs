using Ashery.Climate;
using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Draws;

/// <summary>Runs draws of one pot. Each hangs on its own number alone, so that the answer is the same on any number of threads.</summary>
internal sealed class DrawRunner(PotScenario scenario, DrawnWeather weather, DateOnly from, int days, DrawSpace space)
{
    public int Days => days;

    public DrawSpace Space => space;

    /// <summary>Buffers of one thread.</summary>
    public Desk NewDesk() => new(days);

    /// <summary>One draw.</summary>
    /// <param name="desk">Buffers.</param>
    /// <param name="shares">Of the figures.</param>
    /// <param name="weatherDraw">Number of its weather.</param>
    /// <param name="sink">Takes its evenings.</param>
    public PotParameters Run<TSink>(Desk desk, ReadOnlySpan<double> shares, int weatherDraw, ref TSink sink)
        where TSink : struct, IDaySink
    {
        var pot = DrawnPot.Of(scenario, from, space, shares);
        if (desk.Drawn != weatherDraw || desk.Owner != weather)
        {
            weather.Fill(desk.Open, from, weatherDraw);
            (desk.Drawn, desk.Owner) = (weatherDraw, weather);
        }

        pot.Weather.Fill(desk.Open, pot.Scenario.Exposure, pot.Scenario.Shape.Litres, desk.AtPot);
        var pools = pot.Plan.Start;
        PotLedger ledger = default;
        RootZoneEngine.Run(pot.Plan, desk.AtPot, ref pools, ref ledger, ref sink);
        return pot.Plan.Parameters;
    }

    /// <summary>All draws of a work, in parallel; a draw is handed its desk and number.</summary>
    public void Each(int draws, int threads, Action<Desk, int> draw, IProgress<double>? progress, CancellationToken cancellation)
    {
        var done = 0;
        if (threads == 1)
        {
            var desk = NewDesk();
            for (var i = 0; i < draws; i++)
            {
                cancellation.ThrowIfCancellationRequested();
                draw(desk, i);
                progress?.Report((i + 1.0) / draws);
            }

            return;
        }

        var options = new ParallelOptions { MaxDegreeOfParallelism = threads <= 0 ? Environment.ProcessorCount : threads, CancellationToken = cancellation };
        Parallel.For(0, draws, options, NewDesk, (i, _, desk) =>
        {
            draw(desk, i);
            progress?.Report(Interlocked.Increment(ref done) / (double)draws);
            return desk;
        }, static _ => { });
    }

    /// <summary>Weather buffers of a thread, used draw after draw.</summary>
    internal sealed class Desk(int days)
    {
        public DailyWeather[] Open { get; } = new DailyWeather[days];

        public DayForcing[] AtPot { get; } = new DayForcing[days];

        public int Drawn { get; set; } = -1;

        public DrawnWeather? Owner { get; set; }
    }
}
