namespace Ashery.Solutions.Tanks;

/// <summary>
/// Finds what is nearest to coming out of a solution at one temperature: quick minerals and salts with a published solubility. Equations of
/// a set of ions are laid out once and solved again from the last answer.
/// </summary>
internal sealed class TankProbe(Chemistry chemistry, double celsius)
{
    private static readonly double Ln10 = Math.Log(10);
    private readonly Dictionary<long, Setting> settings = [];

    public double Celsius => celsius;

    /// <summary>Solutions computed.</summary>
    public int Count { get; private set; }

    /// <summary>The worst index of these totals (mol/kg), and what it belongs to; negative infinity when nothing can come out.</summary>
    public (double Index, string? Name) Worst(ReadOnlySpan<double> totals)
    {
        var worst = double.NegativeInfinity;
        string? name = null;
        foreach (var solid in Solve(totals).Solids)
        {
            if (solid.Index > worst)
            {
                (worst, name) = (solid.Index, solid.Name);
            }
        }

        return (worst, name);
    }

    /// <summary>Every index of these totals.</summary>
    public IReadOnlyList<TankMargin> All(ReadOnlySpan<double> totals)
    {
        var solids = Solve(totals).Solids;
        var all = new TankMargin[solids.Length];
        for (var i = 0; i < all.Length; i++)
        {
            all[i] = new(solids[i].Name, celsius, solids[i].Index);
        }

        return all;
    }

    private Setting Solve(ReadOnlySpan<double> totals)
    {
        long present = 0;
        for (var c = 0; c < totals.Length; c++)
        {
            present |= totals[c] > 0 ? 1L << c : 0;
        }

        if (!settings.TryGetValue(present, out var setting))
        {
            setting = new(AqueousSystem.For(chemistry, totals, celsius, Air.Closed), totals.Length);
            settings.Add(present, setting);
        }

        Count++;
        setting.Solve(totals);
        return setting;
    }

    private sealed class Solid(string name, IReadOnlyList<(int Component, double Number)> parts, double protons, double water, double logProduct)
    {
        public string Name => name;

        public double Index { get; private set; }

        public void Judge(double[] logs, double pH, double logWater)
        {
            var sum = (water * logWater) - (protons * pH) - logProduct;
            foreach (var (component, number) in parts)
            {
                sum += number * logs[component];
            }

            Index = sum;
        }
    }

    private sealed class Setting
    {
        private readonly AqueousSystem system;
        private readonly SpeciationSolver solver;
        private readonly double[] logs;

        public Setting(AqueousSystem system, int components)
        {
            this.system = system;
            solver = new(system);
            logs = new double[components];
            var present = new bool[components];
            foreach (var c in system.Inert)
            {
                present[c] = true;
            }

            for (var j = 1; j < system.Unknowns; j++)
            {
                present[system.ComponentOf[j]] = true;
            }

            var solids = new List<Solid>();
            foreach (var mineral in system.Chemistry.Minerals)
            {
                if (!mineral.Slow && mineral.Parts.All(part => present[part.Component]))
                {
                    solids.Add(new(mineral.Id, mineral.Parts, mineral.Protons, mineral.Water, mineral.LogSolubility(system.Celsius)));
                }
            }

            foreach (var salt in SaturatedSalt.Known)
            {
                if (salt.Gives.All(part => present[part.Component]) && salt.LogProduct(system.Celsius) is { } product)
                {
                    solids.Add(new(salt.Name, salt.Gives, salt.Protons, 0, product));
                }
            }

            Solids = [.. solids];
        }

        public Solid[] Solids { get; }

        public void Solve(ReadOnlySpan<double> totals)
        {
            if (!solver.Solve(totals))
            {
                throw new InvalidOperationException("The equilibrium of a stock was not found; this is a fault of the library.");
            }

            var dissolved = 0.0;
            foreach (var m in solver.Molalities)
            {
                dissolved += m;
            }

            foreach (var c in system.Inert)
            {
                dissolved += totals[c];
                logs[c] = Math.Log10(totals[c]) + (ActivityCoefficient.Ln(system.Chemistry.Species[c + 1], system.Water, solver.IonicStrength) / Ln10);
            }

            for (var j = 1; j < system.Unknowns; j++)
            {
                logs[system.ComponentOf[j]] = solver.LogActivities[j] / Ln10;
            }

            // The same lowering of the water's activity, and the same floor, as in Speciation.
            var logWater = Math.Log10(Math.Max(0.3, 1 - (WaterProperties.ActivityLowering * dissolved)));
            foreach (var solid in Solids)
            {
                solid.Judge(logs, solver.PH, logWater);
            }
        }
    }
}
