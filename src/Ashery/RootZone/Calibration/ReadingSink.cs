using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Calibration;

/// <summary>Predicts readings from the evenings of a run, on the scale they are compared on.</summary>
internal struct ReadingSink(ReadingSet set, double[] into, int at) : IDaySink
{
    private int next;

    public void Evening(int day, PotParameters parameters, in DayForcing forcing, in PotPools pools, in PotLedger ledger, in DayFlows flows)
    {
        for (; next < set.Count && set.DayOf(next) <= day; next++)
        {
            into[at + next] = set.Kind(next) switch
            {
                ReadingKind.LeachateEc => ReadingSet.Scale(ReadingKind.LeachateEc, pools.PoreEc * pools.Water / parameters.Capacity),
                ReadingKind.LeachatePh => pools.PH,
                _ => parameters.Capacity - pools.Water,
            };
        }
    }
}
