namespace Ashery.Solutions;

/// <summary>
/// Electrical conductivity of a mixture: Debye, Hückel and Onsager's limiting law with ion sizes for each ion, summed by equivalents
/// (Kohlrausch), ion pairs counted as the ions they are. Equations in docs/science/solutions.md.
/// </summary>
public static class Conductivity
{
    private const double Kelvin25 = 298.15;

    /// <summary>mS/cm at the temperature of the solution.</summary>
    public static double Of(Solution solution)
    {
        var sums = new Sums();
        foreach (var amount in solution.Species)
        {
            sums.Add(amount.Species, amount.Molality, solution.Celsius);
        }

        if (sums.Cations <= 0 || sums.Anions <= 0)
        {
            return 0;
        }

        var water = WaterProperties.At(solution.Celsius);
        var terms = new Terms(sums, water, solution.IonicStrength);
        var total = 0.0;
        foreach (var amount in solution.Species)
        {
            total += terms.Share(amount.Species, amount.Molality, solution.Celsius);
        }

        // Volume of the solution with a kg of water, L. Squared in the model the constants belong to: once for the
        // concentration, once for the viscosity of the solution, which rises about as its volume does.
        var volume = (1 / water.Density) + (WaterProperties.EquivalentVolume * sums.CationCharge);
        return total / (volume * volume);
    }

    /// <summary>mS/cm of the same solution brought to 25 °C, what a meter that corrects to 25 °C should show.</summary>
    public static double At25(Solution solution) => solution.Celsius == 25
        ? Of(solution)
        : Of(Speciation.Solve(solution.Input.WithTotals([.. solution.Totals]).Under(Air.Closed).At(25)));

    /// <summary>Limiting molar conductivity over charge, S cm²/mol of charge at a temperature: |z| F² D(T)/(R 298.15).</summary>
    public static double Limiting(AqueousSpecies species, double celsius) => species.Mobility is { } ion
        ? Math.Abs(species.Charge) * WaterProperties.Faraday * WaterProperties.Faraday * Diffusion(ion, celsius) * 1e-5
            / (WaterProperties.GasConstant * Kelvin25)
        : 0;

    // 1e-9 m²/s; times 1e-5 above: to m²/s and then S m² to S cm².
    private static double Diffusion(IonMobility ion, double celsius) =>
        ion.Diffusion25 * Math.Exp(ion.TemperatureFactor * ((1 / (celsius + 273.15)) - (1 / Kelvin25)))
        * WaterProperties.At(25).Viscosity / WaterProperties.At(celsius).Viscosity;

    private struct Sums
    {
        public double Cations, CationCharge, CationDiffusion, Anions, AnionCharge, AnionDiffusion;

        public void Add(AqueousSpecies species, double m, double celsius)
        {
            if (species.Mobility is not { } ion || species.Charge == 0)
            {
                return;
            }

            var z = Math.Abs(species.Charge);
            if (species.Charge > 0)
            {
                Cations += m;
                CationCharge += z * m;
                CationDiffusion += z * m * Diffusion(ion, celsius);
            }
            else
            {
                Anions += m;
                AnionCharge += z * m;
                AnionDiffusion += z * m * Diffusion(ion, celsius);
            }
        }
    }

    private readonly struct Terms
    {
        private readonly double root, bodyB, electrophoretic, relaxation, cationCharge;

        public Terms(Sums s, WaterProperties water, double ionicStrength)
        {
            root = Math.Sqrt(ionicStrength);
            bodyB = water.B;
            var kelvin = water.Celsius + 273.15;

            // e² N_A kappa/(6 pi eta): SI gives S m²/mol, 1e4 to cm²; viscosity from mPa s.
            electrophoretic = WaterProperties.Charge * WaterProperties.Charge * WaterProperties.Avogadro * water.Kappa
                / (6 * Math.PI * water.Viscosity * 1e-3) * 1e4;
            cationCharge = s.CationCharge / s.Cations;
            var anionCharge = s.AnionCharge / s.Anions;
            var dp = s.CationDiffusion / s.Cations;
            var dm = s.AnionDiffusion / s.Anions;
            var t = dp / (dp + dm);
            var q = 1 / (((t / cationCharge) + ((1 - t) / anionCharge)) * (cationCharge + anionCharge));
            relaxation = WaterProperties.Charge * WaterProperties.Charge * water.Kappa
                / (12 * Math.PI * WaterProperties.VacuumPermittivity * water.Permittivity * WaterProperties.Boltzmann * kelvin)
                * cationCharge * anionCharge * q / (1 + Math.Sqrt(q));
        }

        public double Share(AqueousSpecies species, double m, double celsius)
        {
            if (species.Mobility is not { } ion || species.Charge == 0)
            {
                return 0;
            }

            var z = Math.Abs(species.Charge);
            var size = species.Charge < 0 ? Math.Max(0, ion.Size - (WaterProperties.AnionShrinking * z * (cationCharge - 1))) : ion.Size;
            var ka = 1 + (bodyB * size * root);
            var lambda = (Limiting(species, celsius) - (electrophoretic * z * root / ka)) * (1 - (relaxation * root / (ka * ka)));
            return z * m * Math.Max(0, lambda);
        }
    }
}
