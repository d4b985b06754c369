using Ashery.RootZone.State;

namespace Ashery.RootZone.Calibration;

/// <summary>Where the water and the nitrogen of a run came from and went: litres and g N a pot.</summary>
/// <param name="Rain">Rain that entered.</param>
/// <param name="Irrigation">Water given, feed from the can too.</param>
/// <param name="Drained">Run out below.</param>
/// <param name="Transpired">Used by the plant.</param>
/// <param name="Evaporated">Dried off the surface.</param>
/// <param name="StartN">In the pot on the first morning.</param>
/// <param name="FedN">From feeds.</param>
/// <param name="WaterN">With the source water.</param>
/// <param name="UptakeN">Taken up.</param>
/// <param name="LeachedN">Run out below.</param>
/// <param name="AirN">Lost to the air.</param>
/// <param name="RemovedN">Thrown out with old medium.</param>
/// <param name="LeftN">In the pot on the last evening, organic too.</param>
/// <param name="Residual">Worst relative gap of any balance of water or an element on any day.</param>
public sealed record PotBudget(
    double Rain, double Irrigation, double Drained, double Transpired, double Evaporated, double StartN, double FedN, double WaterN, double UptakeN, double LeachedN, double AirN, double RemovedN,
    double LeftN, double Residual)
{
    internal static PotBudget Of(PotRun run)
    {
        var (l, grams) = (run.Ledger, Ion.GramsPerMole(Ion.Nitrate));
        var left = Balance.Stored(run.End, 0);
        var (fed, water) = (l.Fed.Nitrogen + l.FedOrganicN, l.FromWater.Nitrogen);
        var (uptake, leached, air, removed) = (l.TakenUp.Nitrogen, l.Leached.Nitrogen, l.AmmoniaN + l.DenitrifiedN, l.Removed.Nitrogen + l.RemovedOrganicN);

        // What was there at first is what closes the balance, which Residual says holds.
        var start = left + uptake + leached + air + removed - fed - water;
        return new(
            l.Rain, l.Irrigation, l.Drained, l.Transpired, l.Evaporated, start * grams, fed * grams, water * grams, uptake * grams, leached * grams, air * grams, removed * grams, left * grams,
            Math.Max(run.Balance.Water, run.Balance.Elements));
    }
}
