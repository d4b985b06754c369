using Ashery.Solutions;
using CsCheck;

namespace Ashery.Tests.Solutions;

/// <summary>What must hold for any mix in any water.</summary>
public class PropertyTests
{
    private static readonly Salt[] Salts = [.. Salt.All];

    // Up to 8 salts, each from a milligram to what dissolves alone, in water with up to 10 meq/L of each common ion.
    private static readonly Gen<Mix> Mixes = Gen.Select(
        Gen.Select(Gen.Int[0, Salts.Length - 1], Gen.Double[0, 1]).Array[1, 8],
        Gen.Double[-6, -2].Array[6],
        Gen.Double[0, 40],
        Gen.Bool,
        (salts, water, celsius, open) => new Mix(salts, water, celsius, open ? Air.Open : Air.Closed));

    [Fact]
    public void Charge_and_mass_close_for_random_mixes() => Mixes.Sample(
        mix =>
        {
            var solution = Speciation.Solve(mix.Can().Input());
            Assert.True(solution.Certificate.Holds, solution.Certificate.ToString());
        },
        iter: 1000, seed: "0000000000000");

    [Fact]
    public void Order_of_additions_does_not_matter() => Mixes.Sample(
        mix =>
        {
            var one = Speciation.Solve(mix.Can().Input());
            var other = Speciation.Solve((mix with { Salts = [.. mix.Salts.Reverse()] }).Can().Input());
            Assert.Equal(one.PH, other.PH, 6);
            Assert.Equal(Conductivity.Of(one), Conductivity.Of(other), 6);
        },
        iter: 300, seed: "0000000000000");

    [Fact]
    public void Diluting_and_adding_commute() => Mixes.Sample(
        mix =>
        {
            var before = Speciation.Solve(mix.Fill(mix.Start().Dilute(3)).Input());
            var after = Speciation.Solve(mix.Can().Dilute(3).Input());
            Assert.Equal(before.PH, after.PH, 6);
            Assert.Equal(Conductivity.Of(before), Conductivity.Of(after), 6);
        },
        iter: 300, seed: "0000000000000");

    [Fact]
    public void A_neutral_salt_raises_conductivity() => Mixes.Sample(
        mix =>
        {
            var can = mix.Dilutest();
            var before = Speciation.Solve(can.Input());
            if (!before.BeyondGoodRange)
            {
                Salt.TryFind("NaCl", out var salt);
                Assert.True(Conductivity.Of(Speciation.Solve(can.Add(salt!, 0.1).Input())) > Conductivity.Of(before));
            }
        },
        iter: 300, seed: "0000000000000");

    [Fact]
    public void Carbon_dioxide_of_the_air_leaves_alkalinity_alone() => Mixes.Sample(
        mix =>
        {
            var input = mix.Can().Input();
            var closed = SolutionMeasures.Alkalinity(Speciation.Solve(input.Under(Air.Closed)));
            var open = SolutionMeasures.Alkalinity(Speciation.Solve(input.Under(Air.Open)));
            Assert.Equal(closed, open, 1e-9 * (1 + Math.Abs(closed)));
        },
        iter: 200, seed: "0000000000000");

    [Fact]
    public void Amounts_of_any_size_are_solved_down_to_less_than_a_molecule()
    {
        var components = Chemistry.Default.Components.Count;
        var totals = Gen.Select(Gen.Double[-320, -0.5].Array[components], Gen.Double[0, 40], Gen.Bool);
        totals.Sample(
            draw =>
            {
                var (powers, celsius, open) = draw;
                var amounts = powers.Select(static p => Math.Pow(10, p)).ToArray();
                var solution = Speciation.Solve(SolutionInput.Pure(celsius, open ? Air.Open : Air.Closed).WithTotals(amounts));
                Assert.True(solution.Certificate.Holds, solution.Certificate.ToString());
            },
            iter: 500, seed: "0000000000000");
    }

    [Fact]
    public void A_warm_sweep_gives_the_cold_answers_and_allocates_nothing()
    {
        var water = Reference.WaterNamed("hard water");
        var can = new Dissolving(water).Add(Reference.Salt("(NH4)2SO4"), 1.0666666666666667).Add(Reference.Salt("NH4H2PO4"), 0.13333333333333333).Add(Reference.Salt("K2SO4"), 0.8).Input();
        var solver = new SpeciationSolver(AqueousSystem.For(can.Chemistry, can.Totals, 25, Air.Closed));
        var totals = new double[can.Totals.Length];
        var pH = new double[200];
        var before = 0L;
        for (var k = 0; k < pH.Length; k++)
        {
            if (k == 100)
            {
                before = GC.GetAllocatedBytesForCurrentThread();
            }

            Strength(k);
            Assert.True(solver.Solve(totals));
            Assert.False(solver.Bisected);
            pH[k] = solver.PH;
            if (k == 199)
            {
                before = GC.GetAllocatedBytesForCurrentThread() - before;
            }
        }

        Assert.True(before < 200, FormattableString.Invariant($"{before} bytes"));
        for (var k = 0; k < pH.Length; k += 20)
        {
            Strength(k);
            Assert.Equal(Speciation.Solve(can.WithTotals(totals)).PH, pH[k], 8);
        }

        void Strength(int k)
        {
            for (var c = 0; c < totals.Length; c++)
            {
                totals[c] = water.Totals[c] + ((can.Totals[c] - water.Totals[c]) * (0.2 + (0.01 * k)));
            }
        }
    }

    private sealed record Mix((int Salt, double Part)[] Salts, double[] Water, double Celsius, Air Air)
    {
        public Dissolving Start()
        {
            string[] ions = ["calcium", "magnesium", "sodium", "chloride", "sulfate", "carbonate"];
            var water = SolutionInput.Pure(Celsius, Air);
            for (var i = 0; i < ions.Length; i++)
            {
                water = water.With(ions[i], Math.Pow(10, Water[i]));
            }

            return new(water);
        }

        public Dissolving Can() => Fill(Start());

        public Dissolving Dilutest() => Fill(Start(), 0.01);

        public Dissolving Fill(Dissolving can, double factor = 1)
        {
            foreach (var (index, part) in Salts)
            {
                var salt = PropertyTests.Salts[index];
                var most = SaltSolubility.Limit(salt, Math.Max(10, Celsius)) is { } limit && double.IsFinite(limit) ? limit : 300;

                // Log-uniform over six decades.
                can.Add(salt, factor * most * Math.Pow(10, 6 * (part - 1)));
            }

            return can;
        }
    }
}
