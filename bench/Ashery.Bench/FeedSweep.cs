using Ashery.Solutions;

namespace Ashery.Bench;

/// <summary>Ammonium sulfate, monoammonium phosphate and potassium sulfate 8:1:6 in a hard water, at any strength.</summary>
internal sealed class FeedSweep
{
    // A hard tap water, mmol/kg: 100 mg/L Ca, 22 Mg, 35 Na, 4 K, 70 SO4, alkalinity 250 as CaCO3 at pH 7.5; chloride closes the balance.
    private static readonly (string Component, double Millimoles)[] Water =
        [("calcium", 2.4951), ("magnesium", 0.9052), ("sodium", 1.5224), ("potassium", 0.1023), ("sulfate", 0.7287), ("chloride", 1.9723), ("carbonate", 5.2782)];

    private readonly double[] start;
    private readonly double[] aGram;
    private readonly double[] totals;

    public FeedSweep()
    {
        var water = SolutionInput.Pure();
        foreach (var (component, millimoles) in Water)
        {
            water = water.With(component, millimoles / 1000);
        }

        var can = new Dissolving(water);
        foreach (var (formula, parts) in new[] { ("(NH4)2SO4", 8), ("NH4H2PO4", 1), ("K2SO4", 6) })
        {
            can.Add(Salt.TryFind(formula, out var salt) ? salt : throw new InvalidOperationException(formula), parts / 15.0);
        }

        Input = can.Input();
        start = water.Totals.ToArray();
        totals = new double[start.Length];
        aGram = [.. Input.Totals.ToArray().Zip(start, (with, without) => with - without)];
    }

    /// <summary>At one gram a kilogram of water.</summary>
    public SolutionInput Input { get; }

    /// <summary>Amounts at a strength in g/kg; the same array each time.</summary>
    public double[] At(double strength)
    {
        for (var c = 0; c < totals.Length; c++)
        {
            totals[c] = start[c] + (strength * aGram[c]);
        }

        return totals;
    }
}
