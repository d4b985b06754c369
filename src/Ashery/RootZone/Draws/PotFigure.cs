namespace Ashery.RootZone.Draws;

/// <summary>Figures of a pot of which bands are kept by day.</summary>
public enum PotFigure
{
    /// <summary>Ammonium and nitrate in the pore water, mg N/L.</summary>
    MineralN,

    /// <summary>Urea, ammonium and nitrate in the pot, held ones too, g N a litre of medium.</summary>
    MineralNPerLitre,

    /// <summary>EC of the pore water at its content of water, mS/cm.</summary>
    PoreEc,

    /// <summary>EC the saturated extract would show, mS/cm.</summary>
    ExtractEc,

    /// <summary>EC of what runs out below when water is poured on: pore water thinned to container capacity, mS/cm.</summary>
    LeachateEc,

    /// <summary>pH of the pore water.</summary>
    PH,

    /// <summary>Water in the medium as a share of container capacity.</summary>
    WaterShare,

    /// <summary>Nitrogen leached since the first day, g N a pot.</summary>
    LeachedN,

    /// <summary>Nitrogen taken up since the first day, g N a pot.</summary>
    UptakeN,
}
