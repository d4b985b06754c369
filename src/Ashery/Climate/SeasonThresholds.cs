namespace Ashery.Climate;

/// <summary>From which figures on a month counts as hot, rainy or resting.</summary>
/// <param name="HotMeanMax">Mean daily maximum, °C, from which a month is hot.</param>
/// <param name="RainyMm">Rain, mm a month, from which a month is rainy.</param>
/// <param name="RestingMean">Mean temperature, °C, below which plants rest.</param>
public sealed record SeasonThresholds(double HotMeanMax = 33, double RainyMm = 150, double RestingMean = 12);
