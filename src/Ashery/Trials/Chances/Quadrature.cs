namespace Ashery.Trials.Chances;

/// <summary>Integrals by Gauss's rule of sixteen points on equal panels, and over the spread of an estimated standard deviation.</summary>
internal static class Quadrature
{
    private static readonly (double X, double W)[] Rule = MakeRule(16);

    /// <summary>∫ f over [low, high] on so many panels.</summary>
    public static double Of(Func<double, double> f, double low, double high, int panels)
    {
        var half = (high - low) / panels / 2;
        var sum = 0.0;
        for (var p = 0; p < panels; p++)
        {
            var middle = low + (((2 * p) + 1) * half);
            foreach (var (x, w) in Rule)
            {
                sum += w * f(middle + (half * x));
            }
        }

        return sum * half;
    }

    /// <summary>The points and weights of the same rule, for repeated use.</summary>
    public static (double X, double W)[] Points(double low, double high, int panels)
    {
        var half = (high - low) / panels / 2;
        var points = new List<(double, double)>();
        for (var p = 0; p < panels; p++)
        {
            foreach (var (x, w) in Rule)
            {
                points.Add((low + (((2 * p) + 1) * half) + (half * x), w * half));
            }
        }

        return [.. points];
    }

    /// <summary>E f(S), S = √(χ²/df): what an estimated standard deviation may be of the true one.</summary>
    public static double OverScale(Func<double, double> f, double df)
    {
        if (double.IsPositiveInfinity(df))
        {
            return f(1);
        }

        var wide = 9 / Math.Sqrt(2 * df);
        var constant = Math.Log(2) + (df / 2 * Math.Log(df / 2)) - Laws.LogGamma(df / 2);
        return Of(s => f(s) * Math.Exp(constant + ((df - 1) * Math.Log(s)) - (df * s * s / 2)), Math.Max(0, 1 - wide), 1 + wide, df < 4 ? 24 : 6);
    }

    // Roots of the Legendre polynomial by Newton's method from Tricomi's guess.
    private static (double X, double W)[] MakeRule(int n)
    {
        var rule = new (double, double)[n];
        for (var i = 0; i < n; i++)
        {
            var x = Math.Cos(Math.PI * (i + 0.75) / (n + 0.5));
            var slope = 1.0;
            for (var step = 0; step < 50; step++)
            {
                double p0 = 1, p1 = x;
                for (var k = 2; k <= n; k++)
                {
                    (p0, p1) = (p1, ((((2 * k) - 1) * x * p1) - ((k - 1) * p0)) / k);
                }

                slope = n * ((x * p1) - p0) / ((x * x) - 1);
                var move = p1 / slope;
                x -= move;
                if (Math.Abs(move) < 1e-16)
                {
                    break;
                }
            }

            rule[i] = (x, 2 / ((1 - (x * x)) * slope * slope));
        }

        return rule;
    }
}
