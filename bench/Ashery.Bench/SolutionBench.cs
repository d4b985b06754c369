using Ashery.Plain;
using Ashery.Solutions;

namespace Ashery.Bench;

/// <summary>Full speciations a second on one thread, warm, beside a plain cold-start loop; every answer is checked against its balances.</summary>
internal static class SolutionBench
{
    private const double From = 0.2, To = 4;

    public static void Run()
    {
        var sweep = new FeedSweep();
        var plain = new PlainSpeciation(sweep.Input);
        Table.Head(
            FormattableString.Invariant($"The 8:1:6 feed in hard water, 0.2 to 4 g/L, {plain.Unknowns} unknowns, {plain.SpeciesCount} species"),
            "strengths", "speciations a second", "iterations", "plain loop, cold", "iterations", "ratio", "worst balance", "largest difference of pH");
        foreach (var (name, strengths) in new[] { ("400, one after another", Even(400)), ("40, one after another", Even(40)), ("400, in no order", Shuffled(400)) })
        {
            Row(name, sweep, plain, strengths);
        }

        Growth();
    }

    // A sweep of 400 over the strength of a feed to which one ion after another is added.
    private static void Growth()
    {
        Table.Head("How time grows with the number of ions: a feed at 400 strengths, one after another", "ions", "unknowns", "species", "speciations a second", "µs", "µs a species");
        string[] ions = ["potassium", "nitrate", "sulfate", "magnesium", "calcium", "carbonate", "ammonium", "phosphate", "sodium", "chloride", "borate", "manganese", "zinc", "copper", "iron", "citrate"];
        var input = SolutionInput.Pure();
        for (var count = 1; count <= ions.Length; count++)
        {
            input = input.With(ions[count - 1], count > 10 ? 2e-5 : 3e-3);
            if (count < 3 || count % 2 != 0 && count < ions.Length)
            {
                continue;
            }

            var system = AqueousSystem.For(input.Chemistry, input.Totals, 25, Air.Closed);
            var solver = new SpeciationSolver(system);
            var totals = new double[input.Totals.Length];
            var microseconds = Timing.Median(() => Sweep(input, solver, totals), 500) / 400 * 1000;
            Table.Row(Table.Whole(count), Table.Whole(system.Unknowns), Table.Whole(system.Species.Count), Table.Figure(1e6 / microseconds), Table.Figure(microseconds), Table.Figure(microseconds / system.Species.Count));
        }
    }

    private static void Sweep(SolutionInput input, SpeciationSolver solver, double[] totals)
    {
        for (var k = 0; k < 400; k++)
        {
            for (var c = 0; c < totals.Length; c++)
            {
                totals[c] = input.Totals[c] * (0.2 + (0.005 * k));
            }

            Check(solver.Solve(totals));
        }
    }

    private static void Row(string name, FeedSweep sweep, PlainSpeciation plain, double[] strengths)
    {
        var solver = new SpeciationSolver(AqueousSystem.For(sweep.Input.Chemistry, sweep.Input.Totals, 25, Air.Closed));
        double iterations = 0, plainIterations = 0, balance = 0, difference = 0;
        foreach (var strength in strengths)
        {
            Check(solver.Solve(sweep.At(strength)));
            Check(plain.Solve(sweep.At(strength)));
            iterations += solver.Iterations;
            plainIterations += plain.Iterations;
            balance = Math.Max(balance, Balance(sweep, solver, strength));
            difference = Math.Max(difference, Math.Abs(solver.PH - plain.PH));
        }

        var ours = Timing.Median(() => All(s => solver.Solve(sweep.At(s))), 1500) / strengths.Length;
        var theirs = Timing.Median(() => All(s => plain.Solve(sweep.At(s))), 1500) / strengths.Length;
        Table.Row(
            name, Table.Figure(1000 / ours), Table.Figure(iterations / strengths.Length), Table.Figure(1000 / theirs), Table.Figure(plainIterations / strengths.Length),
            Table.Times(theirs / ours), balance.ToString("0.0e-0", System.Globalization.CultureInfo.InvariantCulture), difference.ToString("0.0e-0", System.Globalization.CultureInfo.InvariantCulture));

        void All(Func<double, bool> solve)
        {
            foreach (var strength in strengths)
            {
                Check(solve(strength));
            }
        }
    }

    // Worst of mass and charge, summed here from the molalities and the rows of data.
    private static double Balance(FeedSweep sweep, SpeciationSolver solver, double strength)
    {
        var totals = sweep.At(strength);
        var found = new double[totals.Length];
        double charge = 0, charges = 0;
        var components = sweep.Input.Chemistry.Components;
        for (var i = 0; i < solver.Molalities.Length; i++)
        {
            Add(solver.System.Species[i], solver.Molalities[i]);
        }

        var chloride = sweep.Input.Chemistry.IndexOf("chloride");
        Add(sweep.Input.Chemistry.Species[chloride + 1], totals[chloride]);
        return components.Where(c => totals[c.Index] > 0).Max(c => Math.Abs(found[c.Index] - totals[c.Index]) / totals[c.Index]) is var mass && Math.Abs(charge) / charges is var net
            ? Math.Max(mass, net)
            : double.NaN;

        void Add(AqueousSpecies species, double m)
        {
            charge += species.Charge * m;
            charges += Math.Abs(species.Charge) * m;
            foreach (var (component, number) in species.Parts)
            {
                found[component] += number * m;
            }
        }
    }

    private static double[] Even(int count) => [.. Enumerable.Range(0, count).Select(k => From + ((To - From) * k / (count - 1)))];

    private static double[] Shuffled(int count)
    {
        var strengths = Even(count);
        new Random(1).Shuffle(strengths);
        return strengths;
    }

    private static void Check(bool converged)
    {
        if (!converged)
        {
            throw new InvalidOperationException("A speciation of the bench did not converge.");
        }
    }
}
