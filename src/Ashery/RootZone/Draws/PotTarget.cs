namespace Ashery.RootZone.Draws;

/// <summary>One number for a whole forecast: what shares of variance are told of.</summary>
public enum PotTarget
{
    /// <summary>Mean EC of the saturated extract, mS/cm.</summary>
    ExtractEc,

    /// <summary>Mean of ammonium and nitrate in the pore water, mg N/L.</summary>
    MineralN,

    /// <summary>Mean pH.</summary>
    PH,

    /// <summary>Nitrogen leached, g N a pot.</summary>
    LeachedN,
}
