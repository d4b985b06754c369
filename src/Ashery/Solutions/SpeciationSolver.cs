using System.Runtime.Intrinsics;

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
    private double inertStrength;
    private double chargeScale;
    private double strengthResidual;
    private double strengthByStrength;
    private bool warm;

    public SpeciationSolver(AqueousSystem system)
    {
        this.system = system;
        n = system.Unknowns;
        padded = system.LogK.Length;
        x = new double[n];
        totals = new double[n];
        m = new double[padded];
        slope = new double[padded];
        residual = new double[n];
        hessian = new double[n * n];
        step = new double[n];
        side = new double[n];
        bestX = new double[n];
    }

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
        if (warm && Newton())
        {
            return true;
        }

        ColdStart();
        warm = Newton();
        if (!warm)
        {
            Bisected = true;
            warm = Bisect() && Newton();
        }

        return warm;
    }

    /// <summary>Forgets the last answer, so that the next solve starts cold.</summary>
    public void Forget() => warm = false;

    private void Load(ReadOnlySpan<double> amounts)
    {
        var components = system.Chemistry.Components;
        double charge = 0, strength = 0, scale = 0;
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

            charge += components[c].Charge * amounts[c];
            scale += Math.Abs(components[c].Charge) * amounts[c];
        }

        // Net protons over the components: what makes the whole neutral.
        totals[0] = -charge;
        inertStrength = strength / 2;
        chargeScale = scale;
    }

    private bool Newton()
    {
        for (var k = 0; k < MostIterations; k++)
        {
            Iterations++;
            Evaluate();
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

    // Molalities and their slopes with ionic strength, residuals and the Hessian (lower triangle).
    private void Evaluate()
    {
        Molality();
        Array.Clear(hessian);
        for (var j = 0; j < n; j++)
        {
            residual[j] = -totals[j];
            side[j] = 0;
        }

        double strength = 0, byStrength = 0;
        var index = system.PartIndex;
        var number = system.PartNumber;
        var charge = system.Charge;
        for (var i = 0; i < system.PartCount.Length; i++)
        {
            var mi = m[i];
            var z2m = charge[i] * charge[i] * mi;
            strength += z2m;
            byStrength += z2m * slope[i];
            var start = i * AqueousSystem.MostParts;
            var end = start + system.PartCount[i];
            for (var a = start; a < end; a++)
            {
                var ja = index[a];
                var am = number[a] * mi;
                residual[ja] += am;
                side[ja] += am * slope[i];
                for (var b = start; b <= a; b++)
                {
                    var jb = index[b];
                    hessian[ja >= jb ? (ja * n) + jb : (jb * n) + ja] += am * number[b];
                }
            }
        }

        strengthResidual = (0.5 * strength) + inertStrength - IonicStrength;
        strengthByStrength = 0.5 * byStrength;
    }

    private void Molality()
    {
        var root = Math.Sqrt(IonicStrength);
        var vRoot = Vector256.Create(root);
        var vI = Vector256.Create(IonicStrength);
        var half = Vector256.Create(root > 0 ? 0.5 / root : 0);
        for (var i = 0; i < padded; i += 4)
        {
            var parts = i * AqueousSystem.MostParts;
            var sum = Vector256.Create(Sum(parts), Sum(parts + 4), Sum(parts + 8), Sum(parts + 12));
            var shield = Vector256.Create(system.Shield, i);
            var linear = Vector256.Create(system.Linear, i);
            var d = Vector256<double>.One / (Vector256<double>.One + (Vector256.Create(system.Size, i) * vRoot));
            var lnGamma = (linear * vI) - (shield * vRoot * d);
            var exponent = Vector256.Min(Vector256.Create(system.LogK, i) + sum - lnGamma, Vector256.Create(600.0));
            Vector256.Exp(exponent).CopyTo(m, i);

            // d ln m/dI = -d ln g/dI.
            ((shield * half * d * d) - linear).CopyTo(slope, i);
        }
    }

    private double Sum(int at)
    {
        var index = system.PartIndex;
        var number = system.PartNumber;
        return (number[at] * x[index[at]]) + (number[at + 1] * x[index[at + 1]]) + (number[at + 2] * x[index[at + 2]]) + (number[at + 3] * x[index[at + 3]]);
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
        return Math.Abs(residual[0]) <= Math.Max(1e-9 * hessian[0], 3e-15 * chargeScale)
            && Math.Abs(residual[0]) <= 1e-11 * (chargeScale + hessian[0])
            && Math.Abs(strengthResidual) <= Tolerance * (IonicStrength + 1e-9);
    }

    // [H c; r d] by the Cholesky factors of H and the Schur complement of d, damped.
    private bool Step()
    {
        if (!Cholesky.Factor(hessian, n))
        {
            return false;
        }

        // F_j + H dx + c dI = 0 with c = side; F_I + r dx + d dI = 0 with r_j = half the sum of z² nu m and d = strengthByStrength - 1.
        for (var j = 0; j < n; j++)
        {
            step[j] = -residual[j];
        }

        Cholesky.Solve(hessian, n, step);
        Cholesky.Solve(hessian, n, side);
        double rStep = 0, rSide = 0;
        for (var i = 0; i < system.PartCount.Length; i++)
        {
            var start = i * AqueousSystem.MostParts;
            double s = 0, t = 0;
            for (var a = start; a < start + system.PartCount[i]; a++)
            {
                s += system.PartNumber[a] * step[system.PartIndex[a]];
                t += system.PartNumber[a] * side[system.PartIndex[a]];
            }

            var w = 0.5 * system.Charge[i] * system.Charge[i] * m[i];
            rStep += w * s;
            rSide += w * t;
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
