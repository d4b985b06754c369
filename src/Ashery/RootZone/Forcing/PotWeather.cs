using Ashery.Climate;

namespace Ashery.RootZone.Forcing;

/// <summary>Weather of the open turned into what reaches a pot: roof, shade, walls, and roots that lag behind the air.</summary>
public sealed class PotWeather
{
    private readonly TemperatureFactors factors;
    private readonly double radiationShare, warming, lag;

    public PotWeather(RootZoneConstants c)
    {
        factors = new(c);
        radiationShare = c["radiation-share"];
        warming = c["root-warming"];
        lag = c["root-lag"];
    }

    /// <summary>Days of weather into days of a pot; nothing is allocated.</summary>
    /// <param name="weather">Consecutive days.</param>
    /// <param name="exposure">Where the pot stands.</param>
    /// <param name="litres">Its volume: big pots follow the air slowly.</param>
    /// <param name="days">Where they go, as long as the weather.</param>
    public void Fill(ReadOnlySpan<DailyWeather> weather, Exposure exposure, double litres, Span<DayForcing> days)
    {
        var sun = 1 - Math.Clamp(exposure.Shade, 0, 1);
        var entering = 1 - Math.Clamp(exposure.RainKeptOff, 0, 1);
        var drying = exposure.Drying * (1 - (radiationShare * (1 - sun)));
        var heat = warming * exposure.Warming;

        // Root zone follows the air as a store with a time constant that grows with the depth of the medium, volume to the 2/3.
        var follow = 1 / (1 + (lag * Math.Pow(litres, 2.0 / 3)));
        var root = double.NaN;
        for (var i = 0; i < weather.Length; i++)
        {
            ref readonly var day = ref weather[i];
            ref var to = ref days[i];
            var radiation = day.RadiationMj * sun;
            var air = day.MeanCelsius;
            var target = air + (heat * radiation);
            root = double.IsNaN(root) ? target : root + (follow * (target - root));
            to.RainMm = day.RainMm * entering;
            to.EtMm = day.ReferenceEtMm * drying;
            to.Radiation = radiation;
            to.AirCelsius = air;
            factors.Set(ref to, root);
        }
    }
}
