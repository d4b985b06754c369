using Ashery.Climate.Observed;

namespace Ashery.Exchange.Weather;

/// <summary>What a weather file holds before gaps are filled.</summary>
/// <param name="Days">Days, earliest first.</param>
/// <param name="Name">Name of the station, if the file has one.</param>
/// <param name="Latitude">Degrees, if the file has it.</param>
/// <param name="Elevation">m, if the file has it.</param>
internal sealed record WeatherRecord(IReadOnlyList<ObservedDay> Days, string? Name = null, double? Latitude = null, double? Elevation = null);
