using Ashery.Plain;
using Ashery.Solutions;
using CsCheck;

namespace Ashery.Judges.Tests;

/// <summary>The library's solver, warm and cold, against the loop of the textbooks, which has no line search, no memory and no vectors.</summary>
public class JudgedSpeciationTests
{
    private static readonly Salt[] Salts = [.. Salt.All];

    private static readonly Gen<(int Salt, double Grams)[]> Feeds =
        Gen.Select(Gen.Int[0, Salts.Length - 1], Gen.Double[0.01, 3]).Array[2, 6];

    [Fact]
    public void Both_find_the_same_molalities()
    {
        var judged = 0;
        Feeds.Sample(
            feed =>
            {
                var water = SolutionInput.Pure().With("calcium", 1e-3).With("carbonate", 2e-3).With("sodium", 5e-4);
                var can = new Dissolving(water);
                foreach (var (salt, grams) in feed)
                {
                    can.Add(Salts[salt], grams);
                }

                var full = can.Input();
                var plain = new PlainSpeciation(full);
                var solver = new SpeciationSolver(AqueousSystem.For(full.Chemistry, full.Totals, 25, Air.Closed));
                foreach (var part in new[] { 1.0, 0.98, 0.96, 0.94, 0.92, 0.3, 0.31, 0.7 })
                {
                    var totals = full.Totals.ToArray().Select(t => t * part).ToArray();

                    // The textbook loop may wander off; what it finds is right.
                    if (plain.Solve(totals))
                    {
                        Interlocked.Increment(ref judged);
                        Assert.True(solver.Solve(totals));
                        Assert.Equal(plain.PH, solver.PH, 1e-8);
                        Assert.Equal(plain.Strength, solver.IonicStrength, 1e-9 * plain.Strength);
                    }
                }
            },
            iter: 300, seed: "0000000000000");
        Assert.True(judged > 2000, FormattableString.Invariant($"{judged} of 2400 judged"));
    }
}
