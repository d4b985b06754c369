namespace Ashery.Solutions.Waters;

/// <summary>The last resort: the mean of the world's rivers, thinned or thickened until it meets the conductivity or the dissolved solids.</summary>
internal static class RiverWater
{
    private const string How = "nothing but conductivity or solids is known: the mean of the world's rivers, scaled; a guess";

    // Of hydrogen carbonate, what stays as carbonate when a residue is dried: half of it leaves as carbon dioxide and water.
    private const double DryBicarbonate = 60.008 / (2 * 61.016), BicarbonatePerCarbonate = 2 * 61.016 / 100.087;

    public static void ByEc(WaterDraft draft, double? pH, double pHCelsius, WaterEc ec)
    {
        var bracket = new FallingBracket(Math.Log(1e-4), Miss(1e-4), Math.Log(1e4), -1e6);
        var log = 0.0;
        for (var k = 0; k < 80 && bracket.High - bracket.Low > 1e-9; k++)
        {
            log = bracket.Middle;
            bracket.Put(log, Miss(Math.Exp(log)));
        }

        Put(draft, Math.Exp(log));

        double Miss(double scale)
        {
            var trial = new WaterDraft();
            Put(trial, Math.Min(scale, 500));
            WaterReports.Neutralise(trial);
            return ec.Value - WaterEc.Of(trial, pH, pHCelsius, ec.Celsius);
        }
    }

    /// <summary>mg/L of dissolved solids.</summary>
    public static void BySolids(WaterDraft draft, double solids)
    {
        var trial = new WaterDraft();
        Put(trial, 1);
        Put(draft, solids / Solids(trial));
    }

    /// <summary>Dry residue of a water, mg/L.</summary>
    public static double Solids(WaterDraft draft)
    {
        var sum = draft.Alkalinity * 50.0435e3 * BicarbonatePerCarbonate * DryBicarbonate;
        foreach (var component in Chemistry.Default.Components)
        {
            sum += draft.Totals[component.Index] * component.MolarMass * 1000;
        }

        return sum;
    }

    private static void Put(WaterDraft draft, double scale)
    {
        foreach (var quantity in WaterDraft.Majors)
        {
            if (draft.Knows(quantity) && !draft.Estimates.Exists(e => e.Quantity == quantity))
            {
                continue;
            }

            var prior = WaterPrior.Of("river." + quantity);
            var row = WaterDraft.QuantityOf(quantity);
            var moles = scale / (row.MassOf(row.Names[0].Basis) * 1000);
            draft.Estimate(quantity, new(prior.Typical * moles, prior.Low * moles, prior.High * moles), How);
        }
    }
}
