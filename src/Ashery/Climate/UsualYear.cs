using Ashery.Problems;

namespace Ashery.Climate;

/// <summary>The usual year of a place by months: its normals, and what made weather adds to them.</summary>
public static class UsualYear
{
    /// <summary>So many made years are averaged: evapotranspiration of a month is then sure to about 1 %.</summary>
    private const int Years = 30;

    /// <summary>Twelve months; temperature and rain are the normals themselves, the rest the mean of made years. Fails as <see cref="WeatherGenerator.For"/> does.</summary>
    public static Result<IReadOnlyList<WeatherMonth>> Of(Place place)
    {
        var made = WeatherGenerator.Run(place, new(2001, 1, 1), (Years * 365) + (Years / 4), seed: 1);
        if (!made.Ok)
        {
            return Result.Fail<IReadOnlyList<WeatherMonth>>(made.Problems);
        }

        var months = new List<WeatherMonth>(12);
        foreach (var month in WeatherMonths.Of(made.Value))
        {
            var normal = place.Normals![month.Month - 1];
            months.Add(month with
            {
                MeanMax = normal.MeanMax,
                MeanMin = normal.MeanMin,
                RainMm = normal.RainMm,
                WetDays = Generation.MonthModel.WetDays(normal, month.Month),
                RadiationMj = normal.RadiationMj ?? month.RadiationMj,
            });
        }

        return Result.Of<IReadOnlyList<WeatherMonth>>(months, made.Value.Notes);
    }
}
