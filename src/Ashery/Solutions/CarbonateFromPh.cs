namespace Ashery.Solutions;

/// <summary>
/// Inorganic carbon of a water whose ions and pH were measured. The alkalinity is fixed by the other ions (their charge), so that carbon
/// dioxide alone sets the pH: more of it, lower.
/// </summary>
public static class CarbonateFromPh
{
    private const double Least = 1e-10, Most = 2;

    /// <summary>
    /// mol/kg of inorganic carbon that brings a closed water to this pH, with the reached pH beside it: where no amount does,
    /// the nearest end of the range and the pH there.
    /// </summary>
    public static (double Carbonate, double PH) Find(SolutionInput water, double pH)
    {
        var carbonate = water.Chemistry.Known("carbonate");
        var totals = water.Totals.ToArray();
        totals[carbonate] = Least;
        var system = AqueousSystem.For(water.Chemistry, totals, water.Celsius, Air.Closed);
        var solver = new SpeciationSolver(system);
        double low = Math.Log(Least), high = Math.Log(Most);
        var atLow = PhAt(low) - pH;
        var atHigh = PhAt(high) - pH;
        if (atLow <= 0)
        {
            return (Least, atLow + pH);
        }

        if (atHigh >= 0)
        {
            return (Most, atHigh + pH);
        }

        var bracket = new FallingBracket(low, atLow, high, atHigh);
        double mid = low, at = atLow;
        for (var k = 0; k < 100 && Math.Abs(at) > 1e-10; k++)
        {
            mid = bracket.Crossing;
            at = PhAt(mid) - pH;
            bracket.Put(mid, at);
        }

        return (Math.Exp(mid), at + pH);

        double PhAt(double log)
        {
            totals[carbonate] = Math.Exp(log);
            return solver.Solve(totals) ? solver.PH : throw new InvalidOperationException("The equilibrium of a water was not found; this is a fault of the library.");
        }
    }
}
