using Ashery.Climate.Generation;
using Ashery.RootZone;
using Ashery.RootZone.Calibration;
using Ashery.RootZone.Draws;
using Ashery.Tests.RootZone.Draws;

namespace Ashery.Tests.RootZone.Calibration;

/// <summary>Made readings of a made pot: a draw of all unknowns in weather of its own, read with an error.</summary>
internal static class MadeTruth
{
    /// <summary>Error of a made EC reading, a share of it; the filter is told.</summary>
    public const double EcError = 0.05;

    /// <summary>Readings of one made pot.</summary>
    /// <param name="scenario">What the grower told; the truth differs from it.</param>
    /// <param name="seed">Of the truth.</param>
    /// <param name="days">On which it is read.</param>
    /// <param name="otherModel">True for a truth that is not of the filter's own model: nitrification works at lower pH and lags in the cold as the filter's cannot, steps are half days, weather comes from normals 1.5 °C warmer with a third more rain.</param>
    /// <param name="relative">Error of an EC reading, a share of it.</param>
    public static List<(PotReading Reading, double Exact)> Of(PotScenario scenario, int seed, IReadOnlyList<int> days, bool otherModel, double relative = EcError)
    {
        var place = otherModel
            ? Terrace.Place with { Normals = [.. Terrace.Place.Normals!.Select(static n => n with { MeanMax = n.MeanMax + 1.5, MeanMin = n.MeanMin + 1.5, RainMm = n.RainMm * 1.33 })] }
            : Terrace.Place;
        var own = DrawnWeather.Of(place, 50_000 + seed).Value!;
        var told = otherModel ? scenario with { StepsPerDay = 2 } : scenario;
        var space = DrawSpace.Of(told);
        var random = new WeatherStream(seed, 77);
        var shares = new double[space.Count];
        for (var k = 0; k < shares.Length; k++)
        {
            shares[k] = random.Uniform();
        }

        var readings = days.SelectMany(static d => new[] { ReadingKind.LeachateEc, ReadingKind.LeachatePh }.Select(k => new PotReading(Terrace.Start.AddDays(d), k, 1))).ToList();
        var set = new ReadingSet(readings, Terrace.Start);
        var values = new double[set.Count];
        var pot = DrawnPot.Of(told, Terrace.Start, space, shares);
        if (otherModel)
        {
            pot = pot with { Plan = pot.Plan with { Parameters = pot.Plan.Parameters with { NitrificationPhNone = 4.8, NitrificationPhSpan = 1.4, NitrificationRate = pot.Plan.Parameters.NitrificationRate * 0.6 } } };
        }

        var open = new Ashery.Climate.DailyWeather[set.Span];
        own.Fill(open, Terrace.Start, seed);
        var forcing = new Ashery.RootZone.Forcing.DayForcing[open.Length];
        pot.Weather.Fill(open, pot.Scenario.Exposure, pot.Scenario.Shape.Litres, forcing);
        var pools = pot.Plan.Start;
        Ashery.RootZone.State.PotLedger ledger = default;
        var sink = new ReadingSink(set, values, 0);
        RootZoneEngine.Run(pot.Plan, forcing, ref pools, ref ledger, ref sink);
        return [.. set.All.Select((r, i) => (Read(r, values[i], relative, ref random), ReadingSet.Unscale(r.Kind, values[i])))];
    }

    private static PotReading Read(PotReading reading, double scaled, double relative, ref WeatherStream random)
    {
        var exact = ReadingSet.Unscale(reading.Kind, scaled);
        return reading.Kind == ReadingKind.LeachateEc
            ? Told(exact * Math.Exp(random.Normal() * relative))
            : reading with { Value = exact + (random.Normal() * reading.Deviation) };

        PotReading Told(double value) => reading with { Value = value, Error = relative * value };
    }
}
