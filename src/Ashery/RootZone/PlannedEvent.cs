using Ashery.RootZone.Feeding;
using Ashery.RootZone.State;

namespace Ashery.RootZone;

/// <summary>An event ready for a run: by day, amounts worked out.</summary>
public struct PlannedEvent
{
    /// <summary>Days since the start.</summary>
    public int Day;

    /// <summary>Dry feed, mol a pot.</summary>
    public FeedContents Dry;

    /// <summary>Feed from the can, mol in all, and its litres.</summary>
    public Ions Liquid;

    public double LiquidLitres;

    /// <summary>Plain water besides, L.</summary>
    public double FlushLitres;

    /// <summary>Share of the plant taken away.</summary>
    public double Pruned;

    /// <summary>The pot from now on; null when it is not repotted.</summary>
    public PotParameters? Repotted;

    /// <summary>Share of the old medium kept, and what the fresh part brings.</summary>
    public double OldKept;

    /// <summary>Litres of the pot it stood in.</summary>
    public double OldLitres;

    public PotPools Fresh;
}
