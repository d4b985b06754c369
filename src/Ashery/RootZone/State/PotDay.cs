namespace Ashery.RootZone.State;

/// <summary>One day of a pot as the grower would measure it that evening.</summary>
/// <param name="Date">The day.</param>
/// <param name="Water">Water in the medium, L.</param>
/// <param name="WaterShare">The same as a share of container capacity.</param>
/// <param name="Rain">Rain that entered, L.</param>
/// <param name="Irrigation">Water given, L.</param>
/// <param name="Drained">Run out below, L.</param>
/// <param name="Transpired">Used by the plant, L.</param>
/// <param name="Evaporated">Lost from the surface, L.</param>
/// <param name="WaterStress">1 none, 0 no water to be had.</param>
/// <param name="RootCelsius">Mean temperature of the root zone, °C.</param>
/// <param name="PH">pH of the pore water.</param>
/// <param name="PoreEc">EC of the pore water at its content of water, mS/cm at 25 °C.</param>
/// <param name="ExtractEc">EC the saturated extract would show, mS/cm.</param>
/// <param name="NitrateN">Nitrate in the pore water, mg N/L.</param>
/// <param name="AmmoniumN">Ammonium in the pore water, mg N/L.</param>
/// <param name="MineralN">Urea, ammonium and nitrate in the pot, g N.</param>
/// <param name="StoredN">Nitrogen still to come: coated and organic, g N.</param>
/// <param name="UptakeN">Taken up since the start, g N.</param>
/// <param name="LeachedN">Leached since the start, g N.</param>
/// <param name="Phosphorus">In the pore water, mg P/L.</param>
/// <param name="Potassium">In the pore water, mg K/L.</param>
/// <param name="Canopy">Ground covered, m².</param>
/// <param name="Biomass">Dry matter, g.</param>
/// <param name="NitrogenStatus">Nitrogen in the plant against what it wants: 1 enough, below 0.5 poor.</param>
public readonly record struct PotDay(
    DateOnly Date,
    double Water,
    double WaterShare,
    double Rain,
    double Irrigation,
    double Drained,
    double Transpired,
    double Evaporated,
    double WaterStress,
    double RootCelsius,
    double PH,
    double PoreEc,
    double ExtractEc,
    double NitrateN,
    double AmmoniumN,
    double MineralN,
    double StoredN,
    double UptakeN,
    double LeachedN,
    double Phosphorus,
    double Potassium,
    double Canopy,
    double Biomass,
    double NitrogenStatus);
