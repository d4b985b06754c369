using Ashery.Sources;

namespace Ashery.Climate.Sheltering;

/// <summary>A share with how far it may differ from spot to spot.</summary>
public readonly record struct Share(double Typical, double Low, double High);

/// <summary>A kind of spot, and how much of the open's weather reaches it. Rows of data/climate/shelter.json.</summary>
/// <param name="Id">Short name: <c>balcony</c>.</param>
/// <param name="Name">In words.</param>
/// <param name="Rain">Share of the rain.</param>
/// <param name="Radiation">Share of the solar radiation.</param>
/// <param name="Wind">Share of the wind.</param>
/// <param name="Note">What to know about it.</param>
/// <param name="SourceId">Key of a publication, or of our own reasoning.</param>
/// <param name="Provenance">How the shares came into the data.</param>
public sealed record Shelter(string Id, string Name, Share Rain, Share Radiation, Share Wind, string? Note, string SourceId, Provenance Provenance)
{
    private static readonly Lazy<IReadOnlyList<Shelter>> Rows = new(static () => DataRows.Read(
        "data/climate/shelter.json",
        static r => new Shelter(r.Text("id"), r.Text("name"), Shares.Of(r, "rain"), Shares.Of(r, "radiation"), Shares.Of(r, "wind"), r.TextOrNull("note"), r.Text("source"), r.Provenance())));

    /// <summary>All kinds, the open first.</summary>
    public static IReadOnlyList<Shelter> All => Rows.Value;

    /// <summary>The kind of this name, or null.</summary>
    public static Shelter? Find(string id) => Rows.Value.FirstOrDefault(s => s.Id.Equals(id, StringComparison.OrdinalIgnoreCase));

    /// <summary>Weather of a spot: rain, radiation and wind by their typical shares, evapotranspiration worked out anew. Temperature and humidity stay those of the open.</summary>
    public WeatherSeries Apply(WeatherSeries open)
    {
        var days = open.Days.ToArray();
        Apply(days, new(open.Place.Latitude, open.Place.ElevationMetres ?? 0));
        return open with { Days = days, Origin = $"{open.Origin}; {Name}" };
    }

    /// <summary>The same in place, for many draws over one buffer.</summary>
    public void Apply(Span<DailyWeather> days, Evapotranspiration.DayEt sun)
    {
        for (var i = 0; i < days.Length; i++)
        {
            ref var day = ref days[i];
            var (radiation, wind) = (day.RadiationMj * Radiation.Typical, day.WindMs * Wind.Typical);
            day = day with
            {
                RainMm = day.RainMm * Rain.Typical,
                RadiationMj = radiation,
                WindMs = wind,
                ReferenceEtMm = sun.Under(day.Date.DayOfYear, day.MaxCelsius, day.MinCelsius, radiation, day.RadiationMj, wind, day.VapourKpa),
            };
        }
    }
}
