using Ashery.RootZone.Forcing;
using Ashery.RootZone.Plant;
using Ashery.RootZone.State;

namespace Ashery.RootZone;

/// <summary>Keeps every day of a run and the worst residual of its balances.</summary>
internal struct DayRecorder(DateOnly start, PotDay[] days, PotPools first) : IDaySink
{
    private const double Milligrams = 1000;

    private readonly PotPools first = first;

    public BalanceResiduals Worst { get; private set; } = new(0, 0, Balance.Elements[0]);

    public void Evening(int day, PotParameters parameters, in DayForcing forcing, in PotPools pools, in PotLedger ledger, in DayFlows flows)
    {
        days[day] = Of(start.AddDays(day), parameters, in forcing, in pools, in ledger, in flows);
        var residuals = Balance.Of(in first, in pools, in ledger);
        Worst = new(
            Math.Max(Worst.Water, residuals.Water),
            Math.Max(Worst.Elements, residuals.Elements),
            residuals.Elements > Worst.Elements ? residuals.WorstElement : Worst.WorstElement);
    }

    /// <summary>A day as it is shown.</summary>
    public static PotDay Of(DateOnly date, PotParameters p, in DayForcing f, in PotPools s, in PotLedger l, in DayFlows flows)
    {
        var grams = Ion.GramsPerMole(Ion.Nitrate);
        return new(
            date,
            s.Water,
            s.Water / p.Capacity,
            flows.Rain,
            flows.Irrigation,
            flows.Drained,
            flows.Transpired,
            flows.Evaporated,
            flows.Stress,
            f.RootCelsius,
            s.PH,
            s.PoreEc,
            s.ExtractEc,
            s.Solution[Ion.Nitrate] * grams * Milligrams,
            s.Solution[Ion.Ammonium] * grams * Milligrams,
            s.Mobile.Nitrogen * grams,
            (s.Coated.Nitrogen + s.OrganicN) * grams,
            l.TakenUp.Nitrogen * grams,
            l.Leached.Nitrogen * grams,
            s.Solution[Ion.Phosphate] * Ion.GramsPerMole(Ion.Phosphate) * Milligrams,
            s.Solution[Ion.Potassium] * Ion.GramsPerMole(Ion.Potassium) * Milligrams,
            s.Canopy,
            s.Biomass,
            Growth.NitrogenStatus(in s, p));
    }
}
