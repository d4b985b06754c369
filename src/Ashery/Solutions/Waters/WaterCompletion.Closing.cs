namespace Ashery.Solutions.Waters;

/// <summary>The last ions: what closes the balance, and sodium with its anions where both sides are open.</summary>
internal sealed partial class WaterCompletion
{
    /// <summary>Ends the words of what was split between two anions: what one gains the other loses.</summary>
    internal const string ByShare = "; chloride and sulfate share it";

    private void Close(bool sodium)
    {
        var anions = new List<string>();
        foreach (var quantity in (ReadOnlySpan<string>)["chloride", "sulfate", "alkalinity"])
        {
            if (!draft.Knows(quantity))
            {
                anions.Add(quantity);
            }
        }

        // Alkalinity is left for last: chloride and sulfate close what they can.
        if (anions.Count > 1)
        {
            anions.Remove("alkalinity");
        }

        var slack = Slack;
        var gap = draft.Gap;
        var closing = anions.Count > 0 && gap > 0 ? gap : 0;
        var sodiumClosing = sodium && gap < 0 ? -gap : 0;
        double extra = 0, extraLow = 0, extraHigh = 0;
        if (sodium && anions.Count > 0)
        {
            if (ec is { } measured)
            {
                extra = ExtraByEc(anions, closing, sodiumClosing, measured);
                (extraLow, extraHigh) = (Math.Max(0, extra - (2 * slack)), extra + (2 * slack));
            }
            else
            {
                var prior = WaterPrior.Of("sodiumShare");
                (extra, extraLow, extraHigh) = (prior.Typical * Hardness, prior.Low * Hardness, prior.High * Hardness);
            }
        }

        var how = anions.Count > 0 && sodium ? (ec is null ? $"{ByBalance}, with {ByPrior}" : ByEc) : ByBalance;
        if (sodium)
        {
            draft.Estimate("sodium", new(sodiumClosing + extra, Math.Max(0, sodiumClosing + extraLow - slack), sodiumClosing + extraHigh + slack), how);
        }

        Anions(anions, new(closing + extra, Math.Max(0, closing + extraLow - slack), closing + extraHigh + slack), how);
    }

    private void Anions(List<string> anions, WaterRange charge, string how)
    {
        var share = WaterPrior.Of("chlorideShare");
        foreach (var quantity in anions)
        {
            var (part, low, high) = anions.Count == 1 ? (1, 1, 1)
                : quantity == "chloride" ? (share.Typical, share.Low, share.High) : (1 - share.Typical, 1 - share.High, 1 - share.Low);
            var z = WaterDraft.Charge(quantity);
            draft.Estimate(quantity, new(charge.Typical * part / z, charge.Low * low / z, charge.High * high / z), anions.Count == 1 ? how : how + ByShare);
        }
    }

    // Sodium and anions in equal charge raise the conductivity until it is the measured one.
    private double ExtraByEc(List<string> anions, double closing, double sodiumClosing, WaterEc measured) => ToMeet(measured, (trial, amount) =>
    {
        trial.Put("sodium", sodiumClosing + amount);
        var share = WaterPrior.Of("chlorideShare");
        foreach (var quantity in anions)
        {
            var part = anions.Count == 1 ? 1 : quantity == "chloride" ? share.Typical : 1 - share.Typical;
            trial.Put(quantity, (closing + amount) * part / WaterDraft.Charge(quantity));
        }
    });

    /// <summary>How much has to be put in to meet a conductivity, mol/L of charge; nothing when it is met already.</summary>
    private double ToMeet(WaterEc measured, Action<WaterDraft, double> put)
    {
        var atNil = Miss(0);
        if (atNil <= 0)
        {
            return 0;
        }

        double high = 0.001, atHigh = Miss(high);
        while (atHigh > 0 && high < 1)
        {
            high *= 2;
            atHigh = Miss(high);
        }

        var bracket = new FallingBracket(0, atNil, high, atHigh);
        var x = 0.0;
        for (var k = 0; k < 60 && bracket.High - bracket.Low > 1e-9; k++)
        {
            x = bracket.Next(k);
            var at = Miss(x);
            if (Math.Abs(at) < 1e-7)
            {
                break;
            }

            bracket.Put(x, at);
        }

        return x;

        double Miss(double amount)
        {
            var trial = draft.Copy();
            put(trial, amount);
            WaterReports.Neutralise(trial);
            return measured.Value - WaterEc.Of(trial, pH, pHCelsius, measured.Celsius);
        }
    }
}
