namespace Ashery.Solutions;

/// <summary>
/// Newton's method in the logarithms of activities and the ionic strength, all at once. Starts from its last answer, so that a sweep over
/// strengths costs a few iterations a point and allocates nothing. One solver serves one thread.
/// </summary>
public sealed partial class SpeciationSolver
{
    private const int MostIterations = 60;
    private const double Tolerance = 1e-12;

    private readonly AqueousSystem system;
    private readonly int n;
    private readonly int padded;
    private readonly double[] x;
    private readonly double[] totals;
    private readonly double[] m;
    private readonly double[] slope;
    private readonly double[] residual;
    private readonly double[] hessian;
    private readonly double[] step;
    private readonly double[] side;
    private readonly double[] border;
    private readonly double[] weights;
    private readonly double[] movings;
    private readonly int stride;
    private double inertStrength;
    private double chargeScale;
    private double strengthResidual;
    private double strengthByStrength;
    private double protonDiagonal;
    private bool warm;

    public SpeciationSolver(AqueousSystem system)
    {
        this.system = system;
        n = system.Unknowns;
        padded = system.LogK.Length;
        stride = Cholesky.Stride(n);
        var width = system.Width;
        x = new double[n];
        totals = new double[width];
        m = new double[padded];
        slope = new double[padded];
        weights = new double[padded];
        movings = new double[padded];
        residual = new double[width];
        hessian = new double[n * stride];
        step = new double[n];
        side = new double[width];
        border = new double[width];
        bestX = new double[n];
        answers = [new double[n + 1], new double[n + 1], new double[n + 1], new double[n + 1]];
        origin = new double[n];
        direction = new double[n];
        lastTotals = new double[n];
        logTotals = new double[width];
        totals.AsSpan(n).Fill(1);
    }

    /// <summary>What it solves.</summary>
    public AqueousSystem System => system;

    /// <summary>mol/kg.</summary>
    public double IonicStrength { get; private set; }

    /// <summary>-log10 of the activity of H+.</summary>
    public double PH => -x[0] / Math.Log(10);

    /// <summary>Molality of each species of the system, mol/kg.</summary>
    public ReadOnlySpan<double> Molalities => m.AsSpan(0, system.Species.Count);

    /// <summary>Natural logarithm of the activity of each unknown, H+ first.</summary>
    public ReadOnlySpan<double> LogActivities => x;

    /// <summary>Natural logarithm of the activity coefficient of a species of the system at the present ionic strength.</summary>
    public double LogGamma(int species) => ActivityCoefficient.Ln(system.Species[species], system.Water, IonicStrength);

    /// <summary>Iterations of the last solve.</summary>
    public int Iterations { get; private set; }

    /// <summary>True when the last solve had to fall back on bisection of the ionic strength.</summary>
    public bool Bisected { get; private set; }

    /// <summary>
    /// Finds the equilibrium for total amounts (mol/kg water) by component index; protons follow from the charge. False only when
    /// neither Newton's method nor bisection met the tolerance, which no mix has done so far.
    /// </summary>
    public bool Solve(ReadOnlySpan<double> amounts)
    {
        Load(amounts);
        Iterations = 0;
        Bisected = false;
        if (warm)
        {
            Foretell();
            if (Newton())
            {
                Remember(afresh: false);
                return true;
            }
        }

        ColdStart();
        warm = Newton();
        if (!warm)
        {
            Bisected = true;
            warm = Bisect() && Newton();
        }

        if (warm)
        {
            Remember(afresh: true);
        }

        return warm;
    }

    /// <summary>Forgets the last answer, so that the next solve starts cold.</summary>
    public void Forget() => warm = false;

    private void Load(ReadOnlySpan<double> amounts)
    {
        var components = system.Chemistry.Components;
        double charge = 0, strength = 0, scale = 0, bare = 0;
        foreach (var c in system.Inert)
        {
            var z = components[c].Charge;
            charge += z * amounts[c];
            strength += z * z * amounts[c];
            scale += Math.Abs(z) * amounts[c];
        }

        for (var j = 1; j < n; j++)
        {
            var c = system.ComponentOf[j];
            totals[j] = amounts[c];
            if (!(totals[j] > 0))
            {
                throw new ArgumentException($"The system was laid out with {components[c].Name}, of which there is none.", nameof(amounts));
            }

            var z = components[c].Charge;
            charge += z * amounts[c];
            scale += Math.Abs(z) * amounts[c];
            bare += z * z * amounts[c];
        }

        // Net protons over the components: what makes the whole neutral.
        totals[0] = -charge;
        inertStrength = strength / 2;
        bareStrength = inertStrength + (bare / 2) + 1e-7;
        chargeScale = scale;
    }

    private bool Newton()
    {
        for (var k = 0; k < MostIterations; k++)
        {
            Iterations++;
            Residuals();
            if (Converged())
            {
                return true;
            }

            if (!Step())
            {
                return false;
            }
        }

        return false;
    }

    private bool Converged()
    {
        for (var j = 1; j < n; j++)
        {
            if (!(Math.Abs(residual[j]) <= Tolerance * totals[j]))
            {
                return false;
            }
        }

        // The proton balance is judged by what it does to pH (its own diagonal), down to rounding, and by the charge.
        return Math.Abs(residual[0]) <= Math.Max(1e-9 * protonDiagonal, 3e-15 * chargeScale)
            && Math.Abs(residual[0]) <= 1e-11 * (chargeScale + protonDiagonal)
            && Math.Abs(strengthResidual) <= Tolerance * (IonicStrength + 1e-9);
    }

    // [H c; r d] by the Cholesky factors of H and the Schur complement of d, damped.
    private bool Step()
    {
        // F_j + H dx + c dI = 0 with c = side; F_I + r dx + d dI = 0 with r = border and d = strengthByStrength - 1.
        Slopes();
        if (!Cholesky.Solve(hessian, n, step, side))
        {
            return false;
        }

        double rStep = 0, rSide = 0;
        for (var j = 0; j < n; j++)
        {
            rStep += border[j] * step[j];
            rSide += border[j] * side[j];
        }

        var d = strengthByStrength - 1 - rSide;
        var dI = d < -0.05 ? -(strengthResidual + rStep) / d : strengthResidual + rStep;
        var largest = 0.0;
        for (var j = 0; j < n; j++)
        {
            step[j] -= side[j] * dI;
            largest = Math.Max(largest, Math.Abs(step[j]));
        }

        if (!double.IsFinite(largest) || !double.IsFinite(dI))
        {
            return false;
        }

        var damp = largest > 3 ? 3 / largest : 1;
        if (dI < -0.7 * IonicStrength)
        {
            damp = Math.Min(damp, -0.7 * IonicStrength / dI);
        }
        else if (dI > (2 * IonicStrength) + 1e-6)
        {
            damp = Math.Min(damp, ((2 * IonicStrength) + 1e-6) / dI);
        }

        for (var j = 0; j < n; j++)
        {
            x[j] += damp * step[j];
        }

        IonicStrength += damp * dI;
        return true;
    }
}
