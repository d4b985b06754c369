using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Draws;

/// <summary>Writes the evenings of one draw into the table.</summary>
internal readonly struct DrawSink(DrawTable table, int draw) : IDaySink
{
    private static readonly double NitrogenMass = Ion.GramsPerMole(Ion.Nitrate);

    public void Evening(int day, PotParameters parameters, in DayForcing forcing, in PotPools pools, in PotLedger ledger, in DayFlows flows)
    {
        var extract = Salts.Extracts.FromPore(pools.PoreEc, pools.Water, parameters);
        table.Set(PotFigure.MineralN, day, draw, (pools.Solution[Ion.Nitrate] + pools.Solution[Ion.Ammonium]) * NitrogenMass * 1000);
        table.Set(PotFigure.MineralNPerLitre, day, draw, pools.Mobile.Nitrogen * NitrogenMass / parameters.Litres);
        table.Set(PotFigure.PoreEc, day, draw, pools.PoreEc);
        table.Set(PotFigure.ExtractEc, day, draw, extract);
        table.Set(PotFigure.LeachateEc, day, draw, extract / parameters.ExtractOverPore);
        table.Set(PotFigure.PH, day, draw, pools.PH);
        table.Set(PotFigure.WaterShare, day, draw, pools.Water / parameters.Capacity);
        table.Set(PotFigure.LeachedN, day, draw, ledger.Leached.Nitrogen * NitrogenMass);
        table.Set(PotFigure.UptakeN, day, draw, ledger.TakenUp.Nitrogen * NitrogenMass);
    }
}
