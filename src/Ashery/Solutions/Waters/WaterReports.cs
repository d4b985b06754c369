using System.Globalization;
using Ashery.Problems;

namespace Ashery.Solutions.Waters;

/// <summary>Makes a water of a report: units, balance, what is missing, conductivity.</summary>
public static class WaterReports
{
    /// <summary>A gap that is rounding only, mol/L.</summary>
    private const double Rounding = 5e-6;

    /// <summary>Reads a report; everything that is wrong comes back at once. Warnings come with the reading.</summary>
    public static Result<WaterReading> Read(WaterReport report)
    {
        var measured = MeasuredWater.Read(report);
        if (!measured.Ok)
        {
            return Result.Fail<WaterReading>(measured.Problems);
        }

        var water = measured.Value;
        var draft = water.Draft;
        var balance = BalanceMaker.Of(draft, water.Lines);
        if (balance.Verdict == BalanceVerdict.Wrong)
        {
            return Result.Fail<WaterReading>(new Problem(
                "balance", balance.Words,
                "Compare each figure, unit and formula (NO3 or NO3-N, Ca or CaCO3) with the sheet; leave out what you are not sure of, and it is estimated."));
        }

        if (water.HasMajor)
        {
            new WaterCompletion(draft, water.PH, water.PhCelsius, water.Ec).Run();
        }
        else if (water.Ec is { } ec)
        {
            RiverWater.ByEc(draft, water.PH, water.PhCelsius, ec);
        }
        else
        {
            RiverWater.BySolids(draft, water.Solids ?? 0);
        }

        var closing = Neutralise(draft);
        var notes = new List<Problem>(measured.Problems);
        if (balance.Verdict == BalanceVerdict.Off)
        {
            notes.Add(new("balance", balance.Words, closing is var (added, moles)
                ? string.Create(CultureInfo.InvariantCulture, $"To go on, {moles * 1000:0.00} meq/L of {added} are taken to close it. Ask the laboratory.")
                : "Ask the laboratory.", Severity.Warning));
        }

        return Result.Of(ReadingMaker.Make(water, balance, closing, notes), notes);
    }

    /// <summary>Makes the sides equal with chloride or sodium, the ions that are least often measured; what was added, or null.</summary>
    internal static (string Quantity, double Moles)? Neutralise(WaterDraft draft)
    {
        var gap = draft.Gap;
        if (gap == 0)
        {
            return null;
        }

        // Rounding of the printed figures: chloride takes it either way.
        if (Math.Abs(gap) <= Rounding && draft.Amount("chloride") + gap >= 0)
        {
            draft.Put("chloride", draft.Amount("chloride") + gap);
            return null;
        }

        // What was put in beyond need goes first.
        var (heavy, light) = gap > 0 ? ("sodium", "chloride") : ("chloride", "sodium");
        if (draft.Estimates.Exists(e => e.Quantity == heavy))
        {
            var taken = Math.Min(draft.Amount(heavy), Math.Abs(gap));
            draft.Put(heavy, draft.Amount(heavy) - taken);
        }

        var rest = Math.Abs(draft.Gap);
        if (draft.Gap != 0)
        {
            draft.Put(light, draft.Amount(light) + rest);
        }

        return rest > Rounding ? (light, rest) : null;
    }
}
