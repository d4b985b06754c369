using Ashery.Climate.Generation;
using Ashery.RootZone.Draws;

namespace Ashery.RootZone.Calibration;

/// <summary>Runs the members of an ensemble up to the last reading.</summary>
internal sealed class Members
{
    // Pairs of runs that differ in the weather alone; years to choose from for each member.
    private const int Pairs = 128, Years = 8;

    private readonly PotForecastRequest forecast;
    private readonly DrawSpace space;
    private readonly ReadingSet readings;
    private readonly DrawRunner runner;
    private readonly bool weatherVaries;
    private double[]? other;
    private double[] last = [];

    public Members(PotForecastRequest forecast, DrawSpace space, ReadingSet readings)
    {
        (this.forecast, this.space, this.readings) = (forecast, space, readings);
        runner = new(forecast.Scenario, forecast.Weather, forecast.From, readings.Span, space);
        weatherVaries = forecast.Weather.VariesIn(forecast.From, readings.Span);
    }

    /// <summary>Predicted readings, member by member, each in weather of its own and of this round.</summary>
    public double[] Predict(double[] z, int round, IProgress<double>? progress, CancellationToken cancellation)
    {
        var (n, m) = (forecast.Draws, readings.Count);
        last = new double[n * m];
        other = weatherVaries ? new double[Math.Min(Pairs, n) * m] : null;
        runner.Each(n, forecast.Threads, (desk, i) =>
        {
            var shares = Shares(z, i);

            // Weather of the forecast itself has the numbers below n.
            var weather = n * ((2 * round) + 1);
            var sink = new ReadingSink(readings, last, i * m);
            runner.Run(desk, shares, weather + i, ref sink);
            if (other is not null && i * m < other.Length)
            {
                var again = new ReadingSink(readings, other, i * m);
                runner.Run(desk, shares, weather + n + i, ref again);
            }
        }, progress, cancellation);
        return last;
    }

    /// <summary>
    /// Number of the weather each member goes on with: of eight likely pasts one, by how well the readings fit it, p(w | z, d) ~ p(d | z, w) p(w); so that the forecast sets out from a pot
    /// that was rained on as this one was. Without unknown weather they are the members' own.
    /// </summary>
    public int[] ChooseWeather(double[] z, int rounds, IProgress<double>? progress, CancellationToken cancellation)
    {
        var (n, m) = (forecast.Draws, readings.Count);
        var chosen = new int[n];
        runner.Each(n, forecast.Threads, (desk, i) =>
        {
            chosen[i] = i;
            if (!weatherVaries)
            {
                return;
            }

            var shares = Shares(z, i);
            var predicted = new double[m];
            var random = new WeatherStream(forecast.Seed, -2000 - i);
            var (sum, best) = (0.0, double.PositiveInfinity);
            for (var year = 0; year < Years; year++)
            {
                var number = n * ((2 * rounds) + 1 + year);
                var sink = new ReadingSink(readings, predicted, 0);
                runner.Run(desk, shares, number + i, ref sink);
                var misfit = Misfit(predicted);

                // Weights against the best so far, so that none runs out of figures; one is kept by the usual reservoir.
                sum = misfit < best ? (sum * Math.Exp(misfit - best)) + 1 : sum + Math.Exp(best - misfit);
                var weight = misfit < best ? 1 : Math.Exp(best - misfit);
                best = Math.Min(best, misfit);
                if (random.Uniform() * sum < weight)
                {
                    chosen[i] = number + i;
                }
            }
        }, progress, cancellation);
        return chosen;
    }

    private double Misfit(double[] predicted)
    {
        var sum = 0.0;
        for (var i = 0; i < predicted.Length; i++)
        {
            var d = (predicted[i] - readings.Values[i]) / readings.Errors[i];
            sum += d * d / 2;
        }

        return sum;
    }

    private double[] Shares(double[] z, int member)
    {
        var shares = new double[space.Count];
        for (var k = 0; k < shares.Length; k++)
        {
            shares[k] = NormalQuantile.Share(z[(member * shares.Length) + k]);
        }

        return shares;
    }

    /// <summary>What the weather alone does to the readings of the last round: half the mean square of the difference of each pair.</summary>
    public double[]? Noise(int round)
    {
        if (other is null)
        {
            return null;
        }

        var m = readings.Count;
        var pairs = other.Length / m;
        var w = new double[m * m];
        for (var j = 0; j < pairs; j++)
        {
            for (var i = 0; i < m; i++)
            {
                for (var k = 0; k < m; k++)
                {
                    w[(i * m) + k] += (last[(j * m) + i] - other[(j * m) + i]) * (last[(j * m) + k] - other[(j * m) + k]) / (2 * pairs);
                }
            }
        }

        return w;
    }
}
