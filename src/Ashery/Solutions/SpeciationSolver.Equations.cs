using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ashery.Solutions;

/// <summary>The equations at the present point: molalities, what the balances lack, and their slopes. All in vectors of eight.</summary>
public sealed partial class SpeciationSolver
{
    // ln m = ln K + sum of nu x - ln g, with its slope in ionic strength: d ln m/dI = -d ln g/dI.
    private void Molality()
    {
        var root = Math.Sqrt(IonicStrength);
        var vRoot = Vector512.Create(root);
        var vI = Vector512.Create(IonicStrength);
        var half = Vector512.Create(root > 0 ? 0.5 / root : 0);
        var columns = system.Columns;
        for (var i = 0; i < padded; i += 8)
        {
            var exponent = Vector512.Create(system.LogK, i);
            for (int j = 0, at = i; j < n; j++, at += padded)
            {
                exponent = Vector512.MultiplyAddEstimate(Vector512.Create(columns, at), Vector512.Create(x[j]), exponent);
            }

            var shield = Vector512.Create(system.Shield, i);
            var linear = Vector512.Create(system.Linear, i);
            var d = Vector512<double>.One / Vector512.MultiplyAddEstimate(Vector512.Create(system.Size, i), vRoot, Vector512<double>.One);
            var lnGamma = (linear * vI) - (shield * vRoot * d);
            var molality = Vector512.Exp(Vector512.Min(exponent - lnGamma, Vector512.Create(600.0)));
            molality.CopyTo(m, i);
            ((shield * half * d * d) - linear).CopyTo(slope, i);
        }
    }

    // What each balance has too much of, the ionic strength too, and the diagonal of the protons.
    private void Residuals()
    {
        Molality();
        var width = system.Width;
        ref var rows = ref MemoryMarshal.GetArrayDataReference(system.Rows);
        for (var j = 0; j < width; j += 8)
        {
            // Two sums side by side, so that one does not wait for the other.
            var even = -Vector512.Create(totals, j);
            var odd = Vector512<double>.Zero;
            for (var i = 0; i < padded; i += 2)
            {
                even = Vector512.MultiplyAddEstimate(Vector512.LoadUnsafe(ref rows, (nuint)((i * width) + j)), Vector512.Create(m[i]), even);
                odd = Vector512.MultiplyAddEstimate(Vector512.LoadUnsafe(ref rows, (nuint)(((i + 1) * width) + j)), Vector512.Create(m[i + 1]), odd);
            }

            (even + odd).CopyTo(residual, j);
        }

        var strength = Vector512<double>.Zero;
        var protons = Vector512<double>.Zero;
        for (var i = 0; i < padded; i += 8)
        {
            var molality = Vector512.Create(m, i);
            var number = Vector512.Create(system.Columns, i);
            strength += Vector512.Create(system.HalfChargeSquared, i) * molality;
            protons += number * number * molality;
        }

        strengthResidual = Vector512.Sum(strength) + inertStrength - IonicStrength;
        protonDiagonal = Vector512.Sum(protons);
    }

    // The Hessian with its right sides, laid out for Cholesky, and the border of the ionic strength.
    private void Slopes()
    {
        var pairs = system.Pairs;
        var entries = pairs.Places;
        var starts = pairs.Starts;
        var species = pairs.Species;
        var products = pairs.Products;
        Array.Clear(hessian);
        for (var p = 0; p < entries.Length; p++)
        {
            double sum = 0;
            for (var t = starts[p]; t < starts[p + 1]; t++)
            {
                sum += products[t] * m[species[t]];
            }

            hessian[entries[p]] = sum;
        }

        var byStrength = Vector512<double>.Zero;
        for (var i = 0; i < padded; i += 8)
        {
            var molality = Vector512.Create(m, i);
            var weight = Vector512.Create(system.HalfChargeSquared, i) * molality;
            var moving = molality * Vector512.Create(slope, i);
            weight.CopyTo(weights, i);
            moving.CopyTo(movings, i);
            byStrength += weight * Vector512.Create(slope, i);
        }

        strengthByStrength = Vector512.Sum(byStrength);
        var width = system.Width;
        ref var rows = ref MemoryMarshal.GetArrayDataReference(system.Rows);
        for (var j = 0; j < width; j += 8)
        {
            var s = Vector512<double>.Zero;
            var b = Vector512<double>.Zero;
            for (var i = 0; i < padded; i++)
            {
                var row = Vector512.LoadUnsafe(ref rows, (nuint)((i * width) + j));
                s = Vector512.MultiplyAddEstimate(row, Vector512.Create(movings[i]), s);
                b = Vector512.MultiplyAddEstimate(row, Vector512.Create(weights[i]), b);
            }

            s.CopyTo(side, j);
            b.CopyTo(border, j);
        }

        for (int j = 0, at = n; j < n; j++, at += stride)
        {
            hessian[at] = -residual[j];
            hessian[at + 1] = side[j];
        }
    }
}
