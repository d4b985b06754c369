namespace Ashery.Solutions;

/// <summary>
/// Starting from nothing, and the way that cannot fail. At fixed activity coefficients the equilibrium is the minimum of a strictly
/// convex function of the log activities, sum of molalities minus sum of totals times x (the dual of the free energy: White, Johnson
/// and Dantzig 1958), protons included; with a line search Newton's method finds it from anywhere. The ionic strength it gives, less the one assumed, changes
/// sign between zero and that of the bare components, so that it can be bisected.
/// </summary>
public sealed partial class SpeciationSolver
{
    private readonly double[] bestX;

    // Each component with its protons only, at the pH that balances them; ion pairs are left to Newton.
    private void ColdStart()
    {
        IonicStrength = inertStrength;
        for (var j = 1; j < n; j++)
        {
            var z = system.Chemistry.Components[system.ComponentOf[j]].Charge;
            IonicStrength += 0.35 * Math.Min(z * z, 4) * totals[j];
        }

        IonicStrength = Math.Min(Math.Max(IonicStrength, 1e-7), 4);
        double low = -16 * Math.Log(10), high = 2 * Math.Log(10);
        for (var k = 0; k < 40; k++)
        {
            x[0] = (low + high) / 2;
            if (ProtonsAlone() > 0)
            {
                high = x[0];
            }
            else
            {
                low = x[0];
            }
        }
    }

    // Protons in excess at this x[0], with each component spread over its own acids and bases; leaves their activities in x.
    private double ProtonsAlone()
    {
        for (var j = 1; j < n; j++)
        {
            x[j] = 0;
        }

        Molality();
        Array.Clear(step);
        Array.Clear(side);
        var excess = -totals[0];
        for (var i = 0; i < system.Species.Count; i++)
        {
            var (component, number, protons) = Alone(i);
            if (component == 0)
            {
                excess += protons * m[i];
            }
            else if (component > 0 && number == 1)
            {
                step[component] += m[i];
                side[component] += protons * m[i];
            }
        }

        for (var j = 1; j < n; j++)
        {
            excess += totals[j] * side[j] / step[j];
            x[j] = Math.Log(totals[j] / step[j]);
        }

        return excess;
    }

    // The one component of a species besides protons: 0 when there is none, -1 when there are several.
    private (int Component, double Number, double Protons) Alone(int i)
    {
        int component = 0, start = i * AqueousSystem.MostParts;
        double number = 0, protons = 0;
        for (var a = start; a < start + system.PartCount[i]; a++)
        {
            if (system.PartIndex[a] == 0)
            {
                protons = system.PartNumber[a];
            }
            else if (component != 0)
            {
                return (-1, 0, 0);
            }
            else
            {
                component = system.PartIndex[a];
                number = system.PartNumber[a];
            }
        }

        return (component, number, protons);
    }

    private bool Bisect()
    {
        ColdStart();
        double low = 0, high = 1 + inertStrength;
        for (var j = 1; j < n; j++)
        {
            var z = Math.Abs(system.Chemistry.Components[system.ComponentOf[j]].Charge) + 1;
            high += 2 * z * z * totals[j];
        }

        for (var k = 0; k < 80 && high - low > 1e-13 * high; k++)
        {
            // Ionic strengths of feeds span four decades: halve the logarithm first.
            IonicStrength = low > 0 && high > 4 * low ? Math.Sqrt(low * high) : (low + high) / 2;
            if (low == 0)
            {
                IonicStrength = high / 8;
            }

            if (IonicStrength < 1e-12 || !Minimise())
            {
                return IonicStrength < 1e-12;
            }

            if (strengthResidual > 0)
            {
                low = IonicStrength;
            }
            else
            {
                high = IonicStrength;
            }
        }

        return true;
    }

    // The convex minimum at the present ionic strength.
    private bool Minimise()
    {
        for (var k = 0; k < 300; k++)
        {
            Iterations++;
            Residuals();
            if (Balanced())
            {
                return true;
            }

            var from = Dual();
            Slopes();
            if (!Cholesky.Solve(hessian, n, step, side))
            {
                return false;
            }

            double downhill = 0, largest = 0;
            for (var j = 0; j < n; j++)
            {
                bestX[j] = x[j];
                downhill += step[j] * residual[j];
                largest = Math.Max(largest, Math.Abs(step[j]));
            }

            var t = Math.Min(1, 4 / largest);
            for (var halved = 0; halved < 40; halved++, t /= 2)
            {
                for (var j = 0; j < n; j++)
                {
                    x[j] = bestX[j] + (t * step[j]);
                }

                Molality();
                if (Dual() <= from + (1e-4 * t * downhill) || Math.Abs(downhill) < 1e-13 * Math.Abs(from))
                {
                    break;
                }
            }
        }

        return false;
    }

    private bool Balanced()
    {
        for (var j = 1; j < n; j++)
        {
            if (!(Math.Abs(residual[j]) <= 1e-9 * totals[j]))
            {
                return false;
            }
        }

        return Math.Abs(residual[0]) <= Math.Max(1e-8 * protonDiagonal, 1e-14 * chargeScale);
    }

    private double Dual()
    {
        var sum = 0.0;
        for (var i = 0; i < padded; i++)
        {
            sum += m[i];
        }

        for (var j = 0; j < n; j++)
        {
            sum -= totals[j] * x[j];
        }

        return sum;
    }
}
