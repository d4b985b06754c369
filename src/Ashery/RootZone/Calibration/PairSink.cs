using Ashery.RootZone.Forcing;
using Ashery.RootZone.State;

namespace Ashery.RootZone.Calibration;

/// <summary>Two sinks of one run.</summary>
internal struct PairSink<TFirst, TSecond>(TFirst first, TSecond second) : IDaySink
    where TFirst : struct, IDaySink
    where TSecond : struct, IDaySink
{
    private TFirst first = first;
    private TSecond second = second;

    public void Evening(int day, PotParameters parameters, in DayForcing forcing, in PotPools pools, in PotLedger ledger, in DayFlows flows)
    {
        first.Evening(day, parameters, in forcing, in pools, in ledger, in flows);
        second.Evening(day, parameters, in forcing, in pools, in ledger, in flows);
    }
}
