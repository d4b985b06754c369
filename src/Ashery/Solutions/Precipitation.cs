namespace Ashery.Solutions;

/// <summary>What may settle from a solution, and what is left.</summary>
/// <param name="Amounts">Solids with their amount, mol per kg of water; only those that settle.</param>
/// <param name="After">The solution left behind.</param>
/// <param name="Converged">False when the amounts still moved by more than a millionth at the last round.</param>
public sealed record Settled(IReadOnlyList<(Mineral Mineral, double Amount)> Amounts, Solution After, bool Converged)
{
    /// <summary>mol/kg of a solid by id; 0 when it stays dissolved.</summary>
    public double Amount(string mineral)
    {
        foreach (var (settled, amount) in Amounts)
        {
            if (settled.Id == mineral)
            {
                return amount;
            }
        }

        return 0;
    }
}

/// <summary>
/// Amounts that settle at equilibrium: each solid in turn is brought to its solubility product, the others held, until none moves. At
/// fixed activity coefficients this is descent on a convex function, so that the order does not matter. The kilogram of water is not
/// lessened by the water the crystals take up.
/// </summary>
public static class Precipitation
{
    private const int MostRounds = 400;

    /// <summary>Solids that settle within hours once supersaturated: the slow ones are judged by their index alone.</summary>
    public static IReadOnlyList<Mineral> Quick(Chemistry chemistry) => [.. chemistry.Minerals.Where(mineral => !mineral.Slow)];

    /// <summary>Settles the quick solids.</summary>
    public static Settled Settle(SolutionInput input) => Settle(input, Quick(input.Chemistry));

    /// <summary>Settles these solids and no others.</summary>
    public static Settled Settle(SolutionInput input, IReadOnlyList<Mineral> minerals)
    {
        var system = AqueousSystem.For(input.Chemistry, input.Totals, input.Celsius, input.Air);
        var work = new Work(input, system, minerals);
        var converged = false;
        for (var round = 0; round < MostRounds && !converged; round++)
        {
            converged = work.Round() < 1e-7;
        }

        var amounts = new List<(Mineral, double)>();
        for (var k = 0; k < minerals.Count; k++)
        {
            if (work.Amounts[k] > 0)
            {
                amounts.Add((minerals[k], work.Amounts[k]));
            }
        }

        return new(amounts, Speciation.Solve(input.WithTotals(work.Left)), converged);
    }

    private sealed class Work(SolutionInput input, AqueousSystem system, IReadOnlyList<Mineral> minerals)
    {
        private readonly SpeciationSolver solver = new(system);
        private readonly double[] trial = new double[input.Totals.Length];

        public double[] Amounts { get; } = new double[minerals.Count];

        public double[] Left { get; } = input.Totals.ToArray();

        // One pass over the solids; the largest change as a part of what there is.
        public double Round()
        {
            var change = 0.0;
            for (var k = 0; k < minerals.Count; k++)
            {
                var most = Most(minerals[k], k);
                if (most <= 0)
                {
                    continue;
                }

                var before = Amounts[k];
                var after = Root(minerals[k], before, most);
                Amounts[k] = after;
                Take(minerals[k], after - before, Left);
                change = Math.Max(change, Math.Abs(after - before) / most);
            }

            return change;
        }

        // mol that would use up the scarcest part; 0 when a part is absent. The air does not run out of carbon dioxide.
        private double Most(Mineral mineral, int k)
        {
            var most = double.PositiveInfinity;
            foreach (var (component, number) in mineral.Parts)
            {
                if (component != system.Carbonate)
                {
                    most = Math.Min(most, (Left[component] / number) + Amounts[k]);
                }
            }

            return most;
        }

        private double Root(Mineral mineral, double before, double most)
        {
            var atLow = Index(0);
            if (atLow <= 0)
            {
                return 0;
            }

            double high = most * (1 - 1e-9), atHigh = Index(high);
            if (atHigh >= 0)
            {
                return high;
            }

            var bracket = new FallingBracket(0, atLow, high, atHigh);
            for (var i = 0; i < 100 && bracket.High - bracket.Low > 1e-10 * most; i++)
            {
                var mid = bracket.Next(i);
                var at = Index(mid);
                if (Math.Abs(at) < 1e-10)
                {
                    return mid;
                }

                bracket.Put(mid, at);
            }

            return bracket.Middle;

            double Index(double amount)
            {
                Left.CopyTo(trial, 0);
                Take(mineral, amount - before, trial);
                return IndexOf(mineral);
            }
        }

        private double IndexOf(Mineral mineral)
        {
            if (!solver.Solve(trial))
            {
                throw new InvalidOperationException("The equilibrium of a solution was not found; this is a fault of the library.");
            }

            return SaturationIndex.Of(Speciation.Snapshot(input.WithTotals(trial), system, solver), mineral);
        }

        private void Take(Mineral mineral, double amount, double[] from)
        {
            foreach (var (component, number) in mineral.Parts)
            {
                if (component != system.Carbonate)
                {
                    from[component] -= number * amount;
                }
            }
        }
    }
}
