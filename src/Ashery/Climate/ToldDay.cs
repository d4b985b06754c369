namespace Ashery.Climate;

/// <summary>What a grower tells of a day that no instrument recorded; null where nothing is told.</summary>
/// <param name="Date">The day.</param>
/// <param name="RainMm">Rain, mm.</param>
/// <param name="MaxCelsius">Highest temperature of the air, °C.</param>
public sealed record ToldDay(DateOnly Date, double? RainMm = null, double? MaxCelsius = null)
{
    public const double MostRainMm = 500, LeastCelsius = -20, MostCelsius = 50;

    /// <summary>Days of a heat wave, all as hot.</summary>
    public static IEnumerable<ToldDay> Heat(DateOnly from, DateOnly to, double maxCelsius)
    {
        for (var day = from; day <= to; day = day.AddDays(1))
        {
            yield return new(day, null, maxCelsius);
        }
    }
}
