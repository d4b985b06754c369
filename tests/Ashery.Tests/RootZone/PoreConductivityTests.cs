using Ashery.RootZone;
using Ashery.RootZone.Forcing;
using Ashery.RootZone.Salts;
using Ashery.RootZone.State;
using Ashery.Solutions;

namespace Ashery.Tests.RootZone;

/// <summary>
/// The fast EC of the pot model against the full speciation and conductivity of <see cref="Solutions"/>, which is itself held to 127
/// cases of a general reference code: within 2 % over random pore waters, as the model makes them and as drawn.
/// </summary>
public class PoreConductivityTests(ITestOutputHelper output)
{
    private const double Limit = 0.02, MostStrength = 0.2, Faintest = 0.1;

    [Fact]
    public void Within_two_percent_over_pore_waters_of_the_model()
    {
        var waters = new List<(Ions, double)>();
        for (var seed = 1; seed <= 120; seed++)
        {
            var keep = new Keep(waters);
            var scenario = RandomScenarios.Scenario(seed);
            var plan = PotPlan.Of(scenario, RandomScenarios.Start, RootZoneConstants.Default);
            var days = new DayForcing[365];
            new PotWeather(RootZoneConstants.Default).Fill([.. RandomScenarios.Weather(seed, 365).Days], scenario.Exposure, scenario.Shape.Litres, days);
            var (pools, ledger) = (plan.Start, default(PotLedger));
            RootZoneEngine.Run(plan, days, ref pools, ref ledger, ref keep);
        }

        Compare(waters, "pore waters of the model");
    }

    [Fact]
    public void Within_two_percent_over_drawn_waters()
    {
        var waters = new List<(Ions, double)>();
        var random = new Random(7);
        for (var i = 0; i < 2000; i++)
        {
            var water = default(Ions);
            double anions = Math.Exp(Uniform(Math.Log(3e-4), Math.Log(0.12))), no3 = random.NextDouble(), so4 = random.NextDouble(), cl = random.NextDouble(), p = random.NextDouble() * 0.3, sum = no3 + so4 + cl + p;
            water[Ion.Nitrate] = anions * no3 / sum;
            water[Ion.Sulfate] = anions * so4 / sum / 2;
            water[Ion.Chloride] = anions * cl / sum;
            water[Ion.Phosphate] = anions * p / sum;
            var pH = Uniform(4, 7.8);
            double ca = random.NextDouble(), mg = random.NextDouble(), k = random.NextDouble(), na = random.NextDouble(), nh4 = random.NextDouble() * 0.5, all = ca + mg + k + na + nh4;
            var cations = anions + (6e-11 / Math.Pow(10, -pH)) + (water[Ion.Phosphate] * 6.2e-8 / (6.2e-8 + Math.Pow(10, -pH)));
            water[Ion.Calcium] = cations * ca / all / 2;
            water[Ion.Magnesium] = cations * mg / all / 2;
            water[Ion.Potassium] = cations * k / all;
            water[Ion.Sodium] = cations * na / all;
            water[Ion.Ammonium] = cations * nh4 / all;
            waters.Add((water, Math.Pow(10, -pH)));
        }

        Compare(waters, "drawn waters");

        double Uniform(double low, double high) => low + ((high - low) * random.NextDouble());
    }

    private void Compare(List<(Ions Water, double Proton)> waters, string what)
    {
        var (worst, sum, counted, at) = (0.0, 0.0, 0, 0.0);
        double least = double.PositiveInfinity, most = 0;
        foreach (var (water, proton) in waters)
        {
            var full = Full(water, proton);
            if (full.IonicStrength > MostStrength || full.PH is < 3.8 or > 8.2 || Conductivity.At25(full) < Faintest)
            {
                continue;
            }

            var ec = Conductivity.At25(full);
            var fast = PoreConductivity.At25(in water, Math.Pow(10, -full.PH));
            var off = (fast / ec) - 1;
            counted++;
            sum += off * off;
            (least, most) = (Math.Min(least, ec), Math.Max(most, ec));
            if (Math.Abs(off) > Math.Abs(worst))
            {
                (worst, at) = (off, ec);
            }
        }

        output.WriteLine(FormattableString.Invariant($"{counted} {what}, {least:0.00} to {most:0.0} mS/cm: root mean square {100 * Math.Sqrt(sum / counted):0.00} %, worst {100 * worst:0.00} % at {at:0.00} mS/cm."));
        Assert.True(counted > 500);
        Assert.InRange(Math.Abs(worst), 0, Limit);
    }

    // The same ions with as much carbonate as gives the pH: what is short of charge is bicarbonate.
    private static Solution Full(Ions water, double proton)
    {
        var input = WaterSupply.ToInput(in water, 25);
        var (carbonate, _) = CarbonateFromPh.Find(input, -Math.Log10(proton));
        return Speciation.Solve(input.With("carbonate", carbonate));
    }

    private readonly struct Keep(List<(Ions, double)> waters) : IDaySink
    {
        public void Evening(int day, PotParameters parameters, in DayForcing forcing, in PotPools pools, in PotLedger ledger, in DayFlows flows)
        {
            if (day % 29 == 3)
            {
                waters.Add((pools.Solution, pools.Proton));
            }
        }
    }
}
