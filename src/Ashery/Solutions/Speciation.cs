namespace Ashery.Solutions;

/// <summary>What a solution becomes: ions, pairs, pH and ionic strength.</summary>
public static class Speciation
{
    /// <summary>Lowest and highest temperature of the constants, °C.</summary>
    public const double Coldest = 0, Warmest = 40;

    /// <summary>
    /// The equilibrium of these amounts. Mass action and mass balance by component, pH from the charge, activities by
    /// Truesdell and Jones' form (Davies' equation without parameters).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A temperature outside 0 to 40 °C, or an amount that is negative or no number.</exception>
    public static Solution Solve(SolutionInput input)
    {
        if (!(input.Celsius >= Coldest && input.Celsius <= Warmest))
        {
            throw new ArgumentOutOfRangeException(nameof(input), input.Celsius, "The constants hold from 0 to 40 °C.");
        }

        foreach (var amount in input.Totals)
        {
            if (!(amount >= 0 && double.IsFinite(amount)))
            {
                throw new ArgumentOutOfRangeException(nameof(input), amount, "An amount is not a number of at least 0.");
            }
        }

        var system = AqueousSystem.For(input.Chemistry, input.Totals, input.Celsius, input.Air);
        var solver = new SpeciationSolver(system);
        if (!solver.Solve(input.Totals))
        {
            throw new InvalidOperationException("The equilibrium of a solution was not found; this is a fault of the library.");
        }

        return Snapshot(input, system, solver);
    }

    internal static Solution Snapshot(SolutionInput input, AqueousSystem system, SpeciationSolver solver)
    {
        var chemistry = input.Chemistry;
        var ln10 = Math.Log(10);
        var found = new double[chemistry.Components.Count];
        var activities = new double[found.Length];
        Array.Fill(activities, double.NegativeInfinity);
        var amounts = new List<SpeciesAmount>(system.Species.Count + system.Inert.Length);
        double charge = 0, charges = 0, dissolved = 0;
        for (var i = 0; i < system.Species.Count; i++)
        {
            var species = system.Species[i];
            var m = solver.Molalities[i];
            Add(species, m, Math.Log10(m) + (solver.LogGamma(i) / ln10));
        }

        foreach (var c in system.Inert)
        {
            var species = chemistry.Species[c + 1];
            Add(species, input.Totals[c], Math.Log10(input.Totals[c]) + (ActivityCoefficient.Ln(species, system.Water, solver.IonicStrength) / ln10));
        }

        foreach (var c in system.Inert)
        {
            activities[c] = amounts.Find(a => a.Species == chemistry.Species[c + 1]).Log10Activity;
        }

        for (var j = 1; j < system.Unknowns; j++)
        {
            activities[system.ComponentOf[j]] = solver.LogActivities[j] / ln10;
        }

        if (system.Carbonate >= 0)
        {
            activities[system.Carbonate] = amounts.Find(a => a.Species == chemistry.Species[system.Carbonate + 1]).Log10Activity;
        }

        var mass = 0.0;
        for (var c = 0; c < found.Length; c++)
        {
            if (c != system.Carbonate && input.Totals[c] >= AqueousSystem.OneMolecule)
            {
                mass = Math.Max(mass, Math.Abs(found[c] - input.Totals[c]) / input.Totals[c]);
            }
        }

        return new Solution
        {
            Input = input,
            PH = solver.PH,
            IonicStrength = solver.IonicStrength,
            Species = amounts,
            Totals = found,
            Log10Activities = activities,
            WaterActivity = Math.Max(0.3, 1 - (WaterProperties.ActivityLowering * dissolved)),
            Certificate = new(mass, charge / charges),
            Iterations = solver.Iterations,
        };

        void Add(AqueousSpecies species, double m, double logActivity)
        {
            amounts.Add(new(species, m, logActivity));
            charge += species.Charge * m;
            charges += Math.Abs(species.Charge) * m;
            dissolved += m;
            foreach (var (component, number) in species.Parts)
            {
                found[component] += number * m;
            }
        }
    }
}
