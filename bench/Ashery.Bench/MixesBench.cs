using System.Diagnostics;
using System.Globalization;
using Ashery.Plain;
using Ashery.Solutions;

namespace Ashery.Bench;

/// <summary>100,000 random mixes in random waters: all must converge and close, from a cold start.</summary>
internal static class MixesBench
{
    private const int Seed = 1, Count = 100_000;

    public static void Run()
    {
        var mixes = new RandomMixes(Seed);
        var inputs = new SolutionInput[Count];
        for (var k = 0; k < Count; k++)
        {
            inputs[k] = mixes.Next();
        }

        double mass = 0, charge = 0, strongest = 0;
        int failed = 0, bisected = 0, most = 0, beyond = 0;
        long iterations = 0;
        var time = new Stopwatch();
        foreach (var input in inputs)
        {
            time.Start();
            var system = AqueousSystem.For(input.Chemistry, input.Totals, input.Celsius, input.Air);
            var solver = new SpeciationSolver(system);
            var converged = solver.Solve(input.Totals);
            var solution = converged ? Speciation.Snapshot(input, system, solver) : null;
            time.Stop();
            failed += converged ? 0 : 1;
            bisected += solver.Bisected ? 1 : 0;
            most = Math.Max(most, solver.Iterations);
            iterations += solver.Iterations;
            if (solution is not null)
            {
                mass = Math.Max(mass, solution.Certificate.Mass);
                charge = Math.Max(charge, Math.Abs(solution.Certificate.Charge));
                strongest = Math.Max(strongest, solution.IonicStrength);
                beyond += solution.BeyondGoodRange ? 1 : 0;
            }
        }

        Table.Head(FormattableString.Invariant($"{Count:#,0} random mixes of up to 8 of {mixes.Materials.Count} materials in random waters, 0 to 40 °C, seed {Seed}"), "what", "figure");
        Table.Row("did not converge", Table.Whole(failed));
        Table.Row("worst residual of mass, as a part of its total", Exponent(mass));
        Table.Row("worst residual of charge, as a part of all charges", Exponent(charge));
        Table.Row("iterations, mean", Table.Figure((double)iterations / Count));
        Table.Row("iterations, most", Table.Whole(most));
        Table.Row("by bisection of the ionic strength", Table.Whole(bisected));
        Table.Row("beyond the good range of the model (ionic strength above 0.5)", Table.Whole(beyond));
        Table.Row("highest ionic strength, mol/kg", Table.Figure(strongest));
        Table.Row("time, s", Table.Figure(time.Elapsed.TotalSeconds));
        Table.Row("mixes a second, laying out, solving and reading off", Table.Figure(Count / time.Elapsed.TotalSeconds));
    }

    private static string Exponent(double value) => value.ToString("0.0e-0", CultureInfo.InvariantCulture);
}
