namespace Ashery.RootZone;

/// <summary>A scenario worked out for running: parameters, first state and events. Made once, run often.</summary>
/// <param name="Parameters">Of the first day.</param>
/// <param name="Start">State on the first morning.</param>
/// <param name="Events">By day, earliest first.</param>
public sealed record PotPlan(PotParameters Parameters, State.PotPools Start, PlannedEvent[] Events)
{
    /// <summary>Works out a scenario for a run that begins on a day.</summary>
    public static PotPlan Of(PotScenario scenario, DateOnly start, RootZoneConstants constants)
    {
        var parameters = RootZone.Parameters.Of(scenario, constants);
        return new(parameters, StartPools.Of(scenario, parameters), PlannedEvents.Of(scenario, start, constants));
    }
}
