using Ashery.Solutions;

namespace Ashery.Plain;

/// <summary>
/// The equilibrium of a closed solution by the loop of the textbooks: Newton's method on the balances from a cold start, the activity coefficients
/// of the last round, Gaussian elimination, scalars only. It shares nothing with the library's solver but the rows of data.
/// </summary>
internal sealed class PlainSpeciation
{
    private readonly AqueousSpecies[] species;
    private readonly int[] components;
    private readonly (int Unknown, double Number)[][] parts;
    private readonly double[] shield, size, linear;
    private readonly double[] logK;
    private readonly WaterProperties water;
    private readonly Chemistry chemistry;

    public PlainSpeciation(SolutionInput input)
    {
        chemistry = input.Chemistry;
        var totals = input.Totals.ToArray();
        components = [.. Enumerable.Range(0, totals.Length).Where(c => totals[c] > 0)];
        species = [.. chemistry.Species.Where(s => s.Parts.All(p => totals[p.Component] > 0))];
        water = WaterProperties.At(input.Celsius);
        logK = [.. species.Select(s => s.LogFormation(input.Celsius) * Math.Log(10))];
        parts = [.. species.Select(s => s.Parts.Select(p => (Array.IndexOf(components, p.Component), p.Number)).Append((components.Length, s.Protons)).Where(p => p.Item2 != 0).ToArray())];

        // H+ itself has neither parts nor formation.
        parts[0] = [(components.Length, 1)];
        shield = [.. species.Select(s => water.A * s.Charge * s.Charge * Math.Log(10))];
        size = [.. species.Select(s => s.Charge == 0 ? 0 : s.Size is { } size ? water.B * size : 1)];
        linear = [.. species.Select((s, i) => s.ByDavies ? s.Linear * shield[i] : s.Linear * Math.Log(10))];
        Molalities = new double[species.Length];
    }

    public int Unknowns => components.Length + 1;

    public int SpeciesCount => species.Length;

    public double[] Molalities { get; }

    public double PH { get; private set; }

    public double Strength { get; private set; }

    public int Iterations { get; private set; }

    public bool Solve(ReadOnlySpan<double> amounts)
    {
        var n = Unknowns;
        var x = new double[n];
        var residual = new double[n];
        var matrix = new double[n, n];
        for (var j = 0; j < n - 1; j++)
        {
            x[j] = Math.Log(amounts[components[j]]);
        }

        x[n - 1] = -7 * Math.Log(10);
        var strength = 0.0;
        for (Iterations = 1; Iterations <= 300; Iterations++)
        {
            var root = Math.Sqrt(strength);
            double next = 0, charge = 0, charges = 0;
            Array.Clear(residual);
            Array.Clear(matrix);
            for (var i = 0; i < species.Length; i++)
            {
                var exponent = logK[i] + (shield[i] * root / (1 + (size[i] * root))) - (linear[i] * strength);
                foreach (var (j, number) in parts[i])
                {
                    exponent += number * x[j];
                }

                var m = Math.Exp(Math.Min(exponent, 50));
                var z = species[i].Charge;
                Molalities[i] = m;
                next += 0.5 * z * z * m;
                charge += z * m;
                charges += Math.Abs(z) * m;
                foreach (var (j, number) in parts[i])
                {
                    // The last row is the charge in place of a balance of protons.
                    var row = j < n - 1 ? number * m : 0;
                    residual[j] += row;
                    foreach (var (k, other) in parts[i])
                    {
                        matrix[j, k] += row * other;
                    }

                    matrix[n - 1, j] += z * number * m;
                }
            }

            var worst = Math.Abs(charge) / charges;
            for (var j = 0; j < n - 1; j++)
            {
                residual[j] -= amounts[components[j]];
                worst = Math.Max(worst, Math.Abs(residual[j]) / amounts[components[j]]);
            }

            residual[n - 1] = charge;
            if (worst < 1e-12 && Math.Abs(next - strength) < 1e-12 * next)
            {
                PH = -x[n - 1] / Math.Log(10);
                Strength = next;
                return true;
            }

            strength = Math.Min(next, 10);
            if (!Eliminate(matrix, residual))
            {
                return false;
            }

            var largest = residual.Max(Math.Abs);
            for (var j = 0; j < n; j++)
            {
                x[j] -= residual[j] * Math.Min(1, 2 / largest);
            }
        }

        return false;
    }

    // Gauss with row exchange; the right side becomes the answer.
    private static bool Eliminate(double[,] a, double[] b)
    {
        var n = b.Length;
        for (var p = 0; p < n; p++)
        {
            var row = p;
            for (var i = p + 1; i < n; i++)
            {
                row = Math.Abs(a[i, p]) > Math.Abs(a[row, p]) ? i : row;
            }

            if (!(Math.Abs(a[row, p]) > 0))
            {
                return false;
            }

            for (var k = p; k < n; k++)
            {
                (a[p, k], a[row, k]) = (a[row, k], a[p, k]);
            }

            (b[p], b[row]) = (b[row], b[p]);
            for (var i = p + 1; i < n; i++)
            {
                var f = a[i, p] / a[p, p];
                for (var k = p; k < n; k++)
                {
                    a[i, k] -= f * a[p, k];
                }

                b[i] -= f * b[p];
            }
        }

        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < n; k++)
            {
                b[i] -= a[i, k] * b[k];
            }

            b[i] /= a[i, i];
        }

        return true;
    }
}
