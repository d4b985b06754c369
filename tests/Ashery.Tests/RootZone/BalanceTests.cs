using Ashery.RootZone;
using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.Tests.RootZone;

/// <summary>
/// Closed balances over random scenarios (conservation of matter: no publication needed). 300 in every run; ten thousand by
/// <c>ASHERY_SCENARIOS=10000 dotnet test --project tests/Ashery.Tests --filter-class "*RootZone.BalanceTests"</c>, which prints the residuals.
/// </summary>
public class BalanceTests(ITestOutputHelper output)
{
    private static int Count => RandomScenarios.Count(300);

    [Fact]
    public void Water_and_every_element_balance_on_every_day_and_no_pool_is_negative()
    {
        var worst = new Watch(default);
        var lowest = double.PositiveInfinity;
        double leached = 0, taken = 0;
        for (var seed = 1; seed <= Count; seed++)
        {
            var weather = RandomScenarios.Weather(seed, 365);
            var scenario = RandomScenarios.Scenario(seed);
            var plan = PotPlan.Of(scenario, RandomScenarios.Start, RootZoneConstants.Default);
            var days = new DayForcing[365];
            new PotWeather(RootZoneConstants.Default).Fill([.. weather.Days], scenario.Exposure, scenario.Shape.Litres, days);
            var (pools, ledger, watch) = (plan.Start, default(PotLedger), new Watch(plan.Start));
            RootZoneEngine.Run(plan, days, ref pools, ref ledger, ref watch);
            Assert.True(watch.Finite, scenario.Name);
            Assert.True(watch.Lowest >= 0, FormattableString.Invariant($"{scenario.Name}: {watch.Lowest}"));
            Assert.True(watch.Elements <= BalanceResiduals.Limit && watch.Water <= BalanceResiduals.Limit, FormattableString.Invariant($"{scenario.Name}: water {watch.Water}, {watch.Element} {watch.Elements}"));
            worst = worst.Worse(watch);
            lowest = Math.Min(lowest, watch.Lowest);
            leached += ledger.Leached.Nitrogen;
            taken += ledger.TakenUp.Nitrogen;
        }

        output.WriteLine(FormattableString.Invariant($"{Count} scenarios of 365 days: worst residual of water {worst.Water:E1}, of an element {worst.Elements:E1} ({worst.Element}); lowest pool {lowest:E1}."));
        Assert.True(leached > 0 && taken > 0, "The scenarios leach and feed.");
    }

    private struct Watch(PotPools first) : IDaySink
    {
        private readonly PotPools first = first;

        public double Water { get; private set; }

        public double Elements { get; private set; }

        public string Element { get; private set; } = "";

        public double Lowest { get; private set; } = double.PositiveInfinity;

        public bool Finite { get; private set; } = true;

        public void Evening(int day, PotParameters parameters, in DayForcing forcing, in PotPools pools, in PotLedger ledger, in DayFlows flows)
        {
            var r = Balance.Of(in first, in pools, in ledger);
            Finite &= double.IsFinite(r.Water) && double.IsFinite(r.Elements) && double.IsFinite(pools.PoreEc) && double.IsFinite(pools.PH) && double.IsFinite(pools.Exchange);
            Lowest = Math.Min(Lowest, Balance.Lowest(in pools));
            Water = Math.Max(Water, r.Water);
            if (r.Elements > Elements)
            {
                (Elements, Element) = (r.Elements, r.WorstElement);
            }
        }

        public readonly Watch Worse(Watch other) => other.Elements > Elements
            ? this with { Elements = other.Elements, Element = other.Element, Water = Math.Max(Water, other.Water) }
            : this with { Water = Math.Max(Water, other.Water) };
    }
}
