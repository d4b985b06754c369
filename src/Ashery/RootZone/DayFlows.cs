namespace Ashery.RootZone;

/// <summary>What moved in one day, L.</summary>
public struct DayFlows
{
    public double Rain, Irrigation, Drained, Transpired, Evaporated;

    /// <summary>Least part of the wanted water the plant had in the steps of the day.</summary>
    public double Stress;
}

/// <summary>Takes the evening of each day of a run. A struct, so that the call costs nothing.</summary>
public interface IDaySink
{
    /// <summary>One evening.</summary>
    /// <param name="day">Days since the start.</param>
    /// <param name="parameters">The pot of that day.</param>
    /// <param name="forcing">Its weather.</param>
    /// <param name="pools">What it holds.</param>
    /// <param name="ledger">Sums since the start.</param>
    /// <param name="flows">What moved.</param>
    void Evening(int day, PotParameters parameters, in Forcing.DayForcing forcing, in State.PotPools pools, in State.PotLedger ledger, in DayFlows flows);
}

/// <summary>Keeps nothing: for runs of which only the end counts.</summary>
public struct NoSink : IDaySink
{
    public readonly void Evening(int day, PotParameters parameters, in Forcing.DayForcing forcing, in State.PotPools pools, in State.PotLedger ledger, in DayFlows flows)
    {
        // Nothing is kept.
    }
}
