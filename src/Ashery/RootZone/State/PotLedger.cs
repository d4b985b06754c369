namespace Ashery.RootZone.State;

/// <summary>What went into and out of a pot since the run began: litres and moles. With the pools it closes every balance.</summary>
public struct PotLedger
{
    /// <summary>From feeds in every form but organic nitrogen, and lime.</summary>
    public Ions Fed;

    /// <summary>With the source water and the rain.</summary>
    public Ions FromWater;

    public Ions TakenUp;

    public Ions Leached;

    /// <summary>Thrown out with old medium.</summary>
    public Ions Removed;

    /// <summary>Organic nitrogen fed, and thrown out with old medium.</summary>
    public double FedOrganicN, RemovedOrganicN;

    /// <summary>Lost to the air.</summary>
    public double AmmoniaN, DenitrifiedN;

    /// <summary>Organic nitrogen that became ammonium, less what microbes took back.</summary>
    public double MineralisedN;

    public double NitrifiedN;

    /// <summary>Water, L.</summary>
    public double Rain, Irrigation, Drained, Transpired, Evaporated, WaterRemoved, WaterAdded;

    /// <summary>Days on which water was given, and on which the plant ran short of it.</summary>
    public int Waterings, DryDays;
}
