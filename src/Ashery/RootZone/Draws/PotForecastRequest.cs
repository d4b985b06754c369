namespace Ashery.RootZone.Draws;

/// <summary>Wish for a forecast of one pot with its bands.</summary>
public sealed record PotForecastRequest
{
    public const int MostDraws = 20_000, MostDays = 3660;

    public required PotScenario Scenario { get; init; }

    public required DrawnWeather Weather { get; init; }

    /// <summary>First day.</summary>
    public required DateOnly From { get; init; }

    public int Days { get; init; } = 365;

    public int Draws { get; init; } = 500;

    /// <summary>The same seed gives the same answer, whatever the number of threads.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>0 for as many as the machine has.</summary>
    public int Threads { get; init; }

    /// <summary>What is uncertain; null for all that <see cref="DrawSpace.Of"/> finds.</summary>
    public DrawSpace? Space { get; init; }

    /// <summary>EC of the saturated extract that the crop bears, mS/cm; null for the plant's threshold.</summary>
    public double? EcLimit { get; init; }
}
