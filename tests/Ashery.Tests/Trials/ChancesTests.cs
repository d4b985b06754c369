using Ashery.Trials.Chances;

namespace Ashery.Tests.Trials;

/// <summary>Distributions beside R 4.2.2 (stats; mvtnorm 1.1 for Dunnett and for looks), as eng/trials-in-r.R printed them.</summary>
public class ChancesTests
{
    [Theory]
    [InlineData(1, 3, 27, 0.2385946)]
    [InlineData(3.5, 3, 27, 0.9495093)]
    [InlineData(3.877676, 3, 27, 0.9720322)]
    [InlineData(5, 3, 27, 0.99588)]
    [InlineData(3.5, 6, 10, 0.781344)]
    [InlineData(4, 4, double.PositiveInfinity, 0.9758167)]
    public void The_studentised_range(double q, int groups, double df, double printed) => Assert.Equal(printed, Families.StudentisedRange(q, groups, df), 6e-7);

    [Theory]
    [InlineData(2, 5, 3.635351)]
    [InlineData(3, 27, 3.506426)]
    [InlineData(6, 60, 4.163161)]
    public void Its_limits(int groups, double df, double printed) => Assert.Equal(printed, Math.Sqrt(2) * Families.Quantile(c => Families.AllPairs(c, groups, df), 0.95), 1e-5);

    /// <summary>R integrates by a seeded draw, to about 1e-4.</summary>
    [Fact]
    public void Dunnett_of_three_against_a_control() => Assert.Equal(2.6829, Families.Quantile(c => Families.AgainstControl(c, 4, [4, 4, 4], 12), 0.95), 3e-4);

    [Theory]
    [InlineData(2.1, 18, 2.8, 0.2453818)]
    [InlineData(-1, 6, 1.5, 0.00884983)]
    [InlineData(3, 4, 0.5, 0.9523203)]
    public void The_noncentral_t(double x, double df, double shift, double printed) => Assert.Equal(printed, NoncentralT.Below(x, df, shift), 6e-8);

    /// <summary>power.t.test(n = 12, delta = 0.25, sd = 0.2), which counts one side: the other side adds less than one in a million.</summary>
    [Fact]
    public void Power_of_a_t_test() => Assert.Equal(0.8329475, NoncentralT.Power(Laws.StudentBothSides(0.05, 22), 22, 0.25 / 0.2 * Math.Sqrt(6)), 2e-6);

    /// <summary>R integrates the multivariate normal by a seeded draw, good to about 1e-3 in the limit.</summary>
    [Theory]
    [InlineData(SpendingRule.OBrienFleming, new[] { 0.2, 0.4, 0.6, 0.8, 1 }, new[] { 4.876885, 3.357012, 2.68028, 2.289643, 2.031074 })]
    [InlineData(SpendingRule.OBrienFleming, new[] { 0.3, 0.7, 1 }, new[] { 3.928574, 2.438743, 2.000008 })]
    [InlineData(SpendingRule.Pocock, new[] { 0.2, 0.4, 0.6, 0.8, 1 }, new[] { 2.437977, 2.426811, 2.410211, 2.396586, 2.385838 })]
    public void Limits_of_looks(SpendingRule rule, double[] fractions, double[] printed)
    {
        var limits = Spending.Limits(rule, fractions);
        for (var k = 0; k < printed.Length; k++)
        {
            Assert.Equal(printed[k], limits[k].Limit, 1e-3);
        }

        Assert.Equal(0.05, limits[^1].Spent, 1e-12);
    }

    [Fact]
    public void One_look_is_a_plain_test()
    {
        var only = Assert.Single(Spending.Limits(SpendingRule.Pocock, [1]));
        Assert.Equal(1.959964, only.Limit, 1e-6);
        Assert.Equal(0.05, only.Level, 1e-9);
    }

    /// <summary>p.adjust of R.</summary>
    [Fact]
    public void Holm_steps()
    {
        Assert.All(Holm.Adjust([0.01, 0.04, 0.03, 0.005]).Zip([0.03, 0.06, 0.06, 0.02]), static pair => Assert.Equal(pair.Second, pair.First, 1e-12));
    }

    /// <summary>ψ′(1) = π²/6 and ψ′(1/2) = π²/2.</summary>
    [Fact]
    public void Trigamma_of_two_known_places()
    {
        Assert.Equal(Math.PI * Math.PI / 6, Laws.Trigamma(1), 1e-12);
        Assert.Equal(Math.PI * Math.PI / 2, Laws.Trigamma(0.5), 1e-12);
    }
}
