using System.Runtime.Intrinsics;

namespace Ashery.Solutions;

/// <summary>
/// Where a warm solve starts. Amounts often move along a straight line (a sweep over strengths, a titration, a solid that settles): there the answers
/// so far, less the logarithm of the totals, are a smooth function of the place on the line, and a polynomial through the last four foretells the next. Newton's method
/// then corrects it to the same tolerance as any start.
/// </summary>
public sealed partial class SpeciationSolver
{
    private const int Memory = 4;

    // More would magnify the rounding of the answers; four even steps ahead come to 15.
    private const double MostMagnified = 16;

    private readonly double[][] answers;
    private readonly double[] places = new double[Memory];
    private readonly double[] shares = new double[Memory];
    private readonly double[] origin;
    private readonly double[] direction;
    private readonly double[] lastTotals;
    private readonly double[] logTotals;
    private double bareStrength;
    private double place;
    private int pivot;
    private int known;

    private void LogTotals()
    {
        var protons = totals[0];
        totals[0] = 1;
        for (var j = 0; j < system.Width; j += 8)
        {
            Vector512.Log(Vector512.Create(totals, j)).CopyTo(logTotals, j);
        }

        totals[0] = protons;
    }

    // Puts x and the ionic strength where the next answer should be.
    private void Foretell()
    {
        LogTotals();
        if (!OnLine())
        {
            NewLine();
        }

        var used = Shares(known);
        for (var j = 0; j < n; j++)
        {
            double sum = logTotals[j];
            for (var k = 0; k < used; k++)
            {
                sum += shares[k] * answers[k][j];
            }

            x[j] = sum;
        }

        double strength = 0;
        for (var k = 0; k < used; k++)
        {
            strength += shares[k] * answers[k][n];
        }

        IonicStrength = Math.Max(strength, 0.1 * answers[0][n]) * bareStrength;
    }

    // Weights of the polynomial through as many answers as do not magnify their rounding too much; the last first.
    private int Shares(int count)
    {
        for (; count > 1; count--)
        {
            var magnified = 0.0;
            for (var k = 0; k < count; k++)
            {
                var share = 1.0;
                for (var other = 0; other < count; other++)
                {
                    if (other != k)
                    {
                        share *= (place - places[other]) / (places[k] - places[other]);
                    }
                }

                shares[k] = share;
                magnified += Math.Abs(share);
            }

            if (magnified <= MostMagnified)
            {
                return count;
            }
        }

        shares[0] = 1;
        return 1;
    }

    private bool OnLine()
    {
        place = (totals[pivot] - origin[pivot]) / direction[pivot];
        if (known < 2 || !double.IsFinite(place))
        {
            return false;
        }

        for (var j = 1; j < n; j++)
        {
            if (!(Math.Abs(totals[j] - origin[j] - (place * direction[j])) <= 1e-9 * totals[j]))
            {
                return false;
            }
        }

        return true;
    }

    // From the last answer to here; the step is the unit of length.
    private void NewLine()
    {
        var largest = -1.0;
        for (var j = 1; j < n; j++)
        {
            origin[j] = lastTotals[j];
            direction[j] = totals[j] - lastTotals[j];
            var part = Math.Abs(direction[j]) / totals[j];
            if (part > largest)
            {
                largest = part;
                pivot = j;
            }
        }

        known = 1;
        places[0] = 0;
        place = 1;
    }

    private void Remember(bool afresh)
    {
        if (afresh)
        {
            LogTotals();
            known = 0;
            place = 0;
        }

        if (known > 0 && place == places[0])
        {
            known--;
        }
        else
        {
            var oldest = answers[Memory - 1];
            for (var k = Memory - 1; k > 0; k--)
            {
                answers[k] = answers[k - 1];
                places[k] = places[k - 1];
            }

            answers[0] = oldest;
        }

        places[0] = place;
        for (var j = 0; j < n; j++)
        {
            answers[0][j] = x[j] - logTotals[j];
            lastTotals[j] = totals[j];
        }

        answers[0][n] = IonicStrength / bareStrength;
        known = Math.Min(known + 1, Memory);
    }
}
