using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Draws;

/// <summary>Adds up the targets of one run; keeps no days.</summary>
internal struct TargetSink : IDaySink
{
    public const int Targets = 4;

    private double extract, mineral, acid, leached;
    private int days;

    public void Evening(int day, PotParameters parameters, in DayForcing forcing, in PotPools pools, in PotLedger ledger, in DayFlows flows)
    {
        extract += Salts.Extracts.FromPore(pools.PoreEc, pools.Water, parameters);
        mineral += pools.Solution[Ion.Nitrate] + pools.Solution[Ion.Ammonium];
        acid += pools.PH;
        leached = ledger.Leached.Nitrogen;
        days++;
    }

    public readonly double Of(PotTarget target) => target switch
    {
        PotTarget.ExtractEc => extract / days,
        PotTarget.MineralN => mineral / days * Ion.GramsPerMole(Ion.Nitrate) * 1000,
        PotTarget.PH => acid / days,
        _ => leached * Ion.GramsPerMole(Ion.Nitrate),
    };
}
