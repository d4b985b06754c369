namespace Ashery.RootZone.Draws;

/// <summary>Unknowns that belong together: variance is shared out among these.</summary>
public enum UncertainGroup
{
    /// <summary>Which of the likely years comes.</summary>
    Weather,

    /// <summary>What is in the feed against its label.</summary>
    FeedAnalysis,

    /// <summary>What is given against what was meant.</summary>
    Scoop,

    /// <summary>How fast organic and coated feeds come free.</summary>
    Release,

    /// <summary>Urea to ammonium to nitrate.</summary>
    Nitrification,

    /// <summary>Nitrogen lost to the air.</summary>
    GasLoss,

    /// <summary>What the medium holds of water and salts.</summary>
    Medium,

    /// <summary>What is in the source water.</summary>
    Water,

    /// <summary>How the grower waters.</summary>
    Watering,

    /// <summary>Roof, walls, wind and how warm the pot gets.</summary>
    Place,

    /// <summary>Size, growth and wants of the plant.</summary>
    Plant,

    /// <summary>How the pot is on the first day.</summary>
    Start,

    /// <summary>From pore water to the saturated extract the limit is told for.</summary>
    Extract,
}
